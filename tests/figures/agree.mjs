// The script of the page of figures against the program: reads dials with settings and answers, works the answers out
// again with the theme's own script, and ends with 1 when any differs by more than 1e-9 of itself.
import { readFileSync } from "node:fs";
import { runInNewContext } from "node:vm";

const module = { exports: {} };
runInNewContext(readFileSync(process.argv[2], "utf8"), { module, Math });
const answers = module.exports;
const { vans } = JSON.parse(readFileSync(0, "utf8"));

let compared = 0;
let worst = 0;
function compare(what, ours, theirs) {
  if (Array.isArray(ours) && Array.isArray(theirs) && ours.length === theirs.length) {
    ours.forEach((one, at) => compare(`${what}[${at}]`, one, theirs[at]));
    return;
  }
  compared += 1;
  const off = ours === theirs ? 0 : Math.abs(ours - theirs) / Math.max(1, Math.abs(theirs));
  if (typeof ours !== typeof theirs || !(off <= 1e-9)) {
    console.log(`${what}: the script says ${JSON.stringify(ours)}, the program ${JSON.stringify(theirs)}`);
    process.exitCode = 1;
  }
  worst = Math.max(worst, off);
}

for (const { van, dials, cases } of vans) {
  for (const { set, answers: expected } of cases) {
    const given = answers(dials, set);
    for (const name of Object.keys(expected)) {
      compare(`${van}, ${JSON.stringify(set)}, ${name}`, given[name] ?? null, expected[name]);
    }
  }
}
console.log(`${compared} answers compared, worst difference ${worst.toExponential(1)}`);

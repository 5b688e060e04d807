// search.mjs FOLDER: asks each guide below FOLDER what owners would ask (search.json), with the guide's own scripts and
// index, and ranks the section that is wanted. Each wanted section must be there on its page; all must be among the
// first five, with a mean reciprocal rank of 0.85 or more, and an index must be below 40 kB compressed.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { createContext, runInContext } from 'node:vm';
import { gzipSync } from 'node:zlib';

const [folder, verbose] = process.argv.slice(2);
const rows = JSON.parse(readFileSync(new URL('search.json', import.meta.url)));
const problems = [];
const finders = new Map();

async function finder(van) {
  if (!finders.has(van)) {
    const context = createContext({ setTimeout });
    for (const name of ['minisearch.js', 'wording.js', 'finder.js', 'search-index.js']) runInContext(readFileSync(join(folder, van, name), 'utf8'), context);
    finders.set(van, await runInContext('makeFinder(guideSearch, MiniSearch, guideWording)', context));
  }
  return finders.get(van);
}

const address = ({ page, anchor }) => (anchor ? `${page}#${anchor}` : page);

function isThere(van, wanted) {
  const [page, anchor] = wanted.split('#');
  try {
    const html = readFileSync(join(folder, van, page, 'index.html'), 'utf8');
    return !anchor || html.includes(` id="${anchor}"`);
  } catch {
    return false;
  }
}

let reciprocal = 0;
let slowest = 0;
for (const { van, ask, want } of rows) {
  const there = want.filter((wanted) => isThere(van, wanted));
  if (!there.length) problems.push(`${van} "${ask}": none of ${want.join(', ')} is on its page`);
  const search = await finder(van);
  const began = performance.now();
  const found = search.find(ask);
  slowest = Math.max(slowest, performance.now() - began);
  const rank = found.findIndex((one) => want.includes(address(one))) + 1;
  reciprocal += rank ? 1 / rank : 0;
  if (!rank || rank > 5) problems.push(`${van} "${ask}": ${rank ? `rank ${rank}` : 'not found'}; first is ${found[0] ? address(found[0]) : 'nothing'}`);
  if (verbose) console.log(`${String(rank || '-').padStart(2)}  ${ask.padEnd(40)} ${found.slice(0, rank > 1 || !rank ? 5 : 1).map((one) => `${address(one)} ${one.score.toFixed(1)}`).join('  ')}`);
}
const mean = reciprocal / rows.length;
if (mean < 0.85) problems.push(`the mean reciprocal rank is ${mean.toFixed(3)}`);
if (rows.length < 60) problems.push(`only ${rows.length} queries`);
let largest = 0;
for (const van of readdirSync(folder).filter((name) => /^[0-9A-Z]{8}$/.test(name))) largest = Math.max(largest, gzipSync(readFileSync(join(folder, van, 'search-index.js')), { level: 9 }).length);
if (!largest || largest >= 40000) problems.push(`an index has ${largest} bytes compressed`);
for (const problem of problems) console.log(problem);
console.log(`search: ${rows.length} queries, mean reciprocal rank ${mean.toFixed(3)}, slowest ${slowest.toFixed(1)} ms, largest index ${(largest / 1000).toFixed(1)} kB compressed, ${problems.length} problems`);
process.exit(problems.length ? 1 : 0);

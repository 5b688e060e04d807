// secure.mjs INSTRUMENTS CHROMIUM FOLDER HOSTILE: opens every page of the guides below FOLDER, and of HOSTILE, a book whose
// manifests are full of markup, in a real browser, served. The policy of no page may be broken, a script that is planted
// in a page must not run, and markup from a manifest must be shown as the characters that it is.
import { createRequire } from 'node:module';
import { readdirSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { BASE, serve } from './served.mjs';

const [instruments, executablePath, folder, hostile] = process.argv.slice(2);
const { chromium } = createRequire(join(instruments, 'node_modules/'))('playwright-core');
const problems = [];
const files = (dir) => readdirSync(dir).sort().flatMap((name) => {
  const path = join(dir, name);
  return statSync(path).isDirectory() ? files(path) : [path];
});
const html = (dir) => files(dir).filter((path) => path.endsWith('.html')).map((path) => relative(dir, path));
const state = { folder };
const server = await serve(state);
const home = `http://127.0.0.1:${server.port}${BASE}`;
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'] });
const context = await browser.newContext();
await context.addInitScript(() => {
  window.broken = [];
  document.addEventListener('securitypolicyviolation', (event) => window.broken.push(`${event.violatedDirective} ${event.blockedURI} ${event.sample}`));
  // The worker has tests of its own; here it would only fetch everything over and over.
  Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined });
});
const page = await context.newPage();
page.on('dialog', (dialog) => { problems.push(`${page.url()}: a script of a manifest runs: ${dialog.message()}`); dialog.dismiss(); });
page.on('pageerror', (error) => problems.push(`${page.url()}: ${error}`));

async function look(path) {
  await page.goto(home + path);
  for (const broken of await page.evaluate(() => window.broken)) problems.push(`${path}: breaks its policy: ${broken}`);
  const inline = await page.evaluate(() => document.querySelectorAll('[style], script:not([src]), style').length + [...document.querySelectorAll('*')].filter((element) => [...element.attributes].some((attribute) => attribute.name.startsWith('on'))).length);
  if (inline) problems.push(`${path}: has ${inline} inline styles or scripts`);
  const metas = await page.evaluate(() => ['robots', 'referrer'].map((name) => document.querySelector(`meta[name=${name}]`)?.content).join(' '));
  if (metas !== 'noindex, nofollow no-referrer') problems.push(`${path}: says ${metas}`);
}

const pages = html(folder);
for (const path of pages) await look(path);

// A policy that stops nothing would pass all of this.
state.change = (path, read) => (path.endsWith('index.html') ? Buffer.from(read().toString().replace('<main', '<script>window.planted = 1</script><p style="color: red" onclick="1"></p><main')) : undefined);
await page.goto(home + pages.find((path) => path.includes('/part/')));
const planted = await page.evaluate(() => [window.planted, window.broken.length]);
if (planted[0] !== undefined || planted[1] < 2) problems.push(`a planted script: ${planted}`);
state.change = undefined;

state.folder = hostile;
const theirs = html(hostile);
let shown = 0;
for (const path of theirs) {
  await look(path);
  const grown = await page.evaluate(() => document.querySelectorAll('[data-hostile], hostile-element').length);
  if (grown) problems.push(`${path}: ${grown} elements grew from a manifest`);
  shown += (await page.evaluate(() => document.body.textContent.includes('<hostile-element') && document.body.textContent.includes('{{ 7 * 7 }}'))) ? 1 : 0;
}
const part = theirs.find((path) => path.includes('/part/'));
await page.goto(home + part);
await page.fill('#_find', 'locker');
await page.waitForSelector('.search-found a');
if (await page.locator('.search-found [data-hostile], .search-found hostile-element').count()) problems.push('an element grew in what search found');
if (!shown) problems.push('nothing of the hostile manifests is shown, so nothing was tried');
await browser.close();
await server.stop();
for (const problem of problems.slice(0, 30)) console.log(problem);
console.log(`security: ${pages.length} pages and ${theirs.length} of hostile manifests, which show on ${shown}, ${problems.length} problems`);
process.exit(problems.length ? 1 : 0);

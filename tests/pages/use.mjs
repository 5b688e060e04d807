// use.mjs INSTRUMENTS CHROMIUM FOLDER: uses a guide as a reader would: search by keyboard from a folder and without
// script, ticks and text size that are remembered and refused, share, print, ringing and writing; with results and the
// saved notice open, axe-core finds nothing.
import { createRequire } from 'node:module';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { BASE, serve } from './served.mjs';

const [instruments, executablePath, folder] = process.argv.slice(2);
const require = createRequire(join(instruments, 'node_modules/'));
const { chromium } = require('playwright-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const problems = [];
let looked = 0;
const expect = (holds, says) => { looked += 1; if (!holds) problems.push(says); };
const key = readdirSync(folder).find((name) => /^[0-9A-Z]{8}$/.test(name));
const routine = readdirSync(join(folder, key, 'routine'))[0];
const server = await serve({ folder });
const home = `http://127.0.0.1:${server.port}${BASE}${key}/`;
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'] });

async function open(path, options = {}, before) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, ...options });
  const page = await context.newPage();
  page.on('pageerror', (error) => problems.push(`${path}: ${error}`));
  await before?.(page);
  await page.goto(path);
  return page;
}
const file = (path) => pathToFileURL(join(folder, key, path)).href;

async function accessible(page, when) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => window.axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], rules: { 'target-size': { enabled: true } }, preload: false }));
  for (const violation of violations) problems.push(`${when}: ${violation.id}: ${violation.nodes[0].html.slice(0, 160)}`);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(wide <= 0, `${when}: scrolls sideways by ${wide} px`);
}

// Search by keyboard, from a folder, at phone and narrow size, light and dark.
for (const options of [{}, { colorScheme: 'dark' }, { viewport: { width: 320, height: 640 } }, { viewport: { width: 1280, height: 800 } }]) {
  const page = await open(file('about/index.html'), { bypassCSP: true, ...options });
  await page.fill('#_find', 'gas bottel');
  await page.waitForSelector('.search-found a');
  const when = `results at ${page.viewportSize().width}${options.colorScheme ?? ''}`;
  await accessible(page, when);
  expect(/\d/.test(await page.locator('.search [role=status]').textContent()), `${when}: their number is not told`);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowUp');
  const first = await page.evaluate(() => document.activeElement === document.querySelector('.search-found a'));
  expect(first, `${when}: arrows do not reach the first result`);
  await page.keyboard.press('Escape');
  expect(await page.evaluate(() => !document.querySelector('.search-found') && document.activeElement.id === '_find'), `${when}: Escape does not close`);
  await page.fill('#_find', 'zzzzzz');
  await page.waitForFunction(() => document.querySelector('.search-panel')?.textContent.includes('Nothing'));
  await page.fill('#_find', 'gas bottle');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.closest('.search-found'));
  await page.keyboard.press('Enter');
  await page.waitForURL(/part\//);
  expect(await page.evaluate(() => document.querySelector('h1').textContent.length > 0), `${when}: a result does not open`);
  await page.context().close();
}

// Without script the box leads to the page from A to Z, from a folder and from a server, and nothing is offered that does not work.
for (const path of [file('about/index.html'), `${home}about/`]) {
  const page = await open(path, { javaScriptEnabled: false });
  await page.locator('#_find').fill('loo');
  await page.locator('.search-go').click();
  await page.waitForURL(/words\/index\.html\?find=loo/);
  expect((await page.locator('.saved').isHidden()) && (await page.locator('.tools-size').isHidden()), 'without script something is offered that does not work');
  expect((await page.locator('.tools-tell').getAttribute('href')).startsWith('mailto:'), 'without script the dealer cannot be told');
  await page.context().close();
}

// Ticks and text size, remembered and refused.
const refuse = (page) => page.addInitScript(() => Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } }));
for (const refused of [false, true]) {
  const page = await open(`${home}routine/${routine}/`, {}, refused ? refuse : undefined);
  const box = page.locator('.step-tick').first();
  await box.check();
  expect(/: 1 /.test(await page.locator('.steps-count').textContent()), `a tick is not counted, refused ${refused}`);
  await page.locator('[value=largest]').check();
  const size = () => page.evaluate(() => parseFloat(getComputedStyle(document.documentElement).fontSize));
  expect((await size()) === 24, `the largest text has ${await size()} px`);
  await page.reload();
  await page.waitForSelector('.steps-state');
  expect((await box.isChecked()) === !refused && ((await size()) === 24) === !refused, `after a reload, refused ${refused}: ticked ${await box.isChecked()}, ${await size()} px`);
  if (!refused) {
    await accessible(await open(`${home}routine/${routine}/`, { bypassCSP: true, storageState: await page.context().storageState() }), 'the largest text');
    await page.locator('.steps-state button').click();
    await page.reload();
    expect(!(await box.isChecked()), 'a tick comes back');
  }
  await page.context().close();
}

// Share, print, ring, write, and the saved notice.
const page = await open(`${home}emergency/`, { bypassCSP: true, permissions: ['clipboard-read', 'clipboard-write'] }, (it) => it.addInitScript(() => {
  window.print = () => { window.printed = true; };
  delete Navigator.prototype.share;
}));
await page.waitForSelector('.saved-whole', { timeout: 60000 });
await accessible(page, 'the saved notice');
await page.locator('[data-do=print]').click();
expect(await page.evaluate(() => window.printed), 'print does not print');
await page.locator('[data-do=share]').click();
await page.waitForFunction(() => document.querySelector('.tools [role=status]').textContent);
expect((await page.evaluate(() => navigator.clipboard.readText())) === page.url(), 'the address that is copied is another');
const rings = await page.locator('main a[href^="tel:"]').evaluateAll((links) => links.map((link) => link.getAttribute('href')));
expect(rings.includes('tel:112') && rings.length > 1, `an emergency rings ${rings.join(', ')}`);
await page.waitForFunction(() => document.querySelector('.tools-tell').href.includes('Fingerprint'));
const message = decodeURIComponent(await page.locator('.tools-tell').getAttribute('href'));
await page.goto(`${home}about/`);
const fingerprint = (await page.locator('main code').allTextContents()).find((text) => /^[0-9a-f]{4}-/.test(text));
expect(fingerprint && message.includes(fingerprint) && message.includes(`/${key}/emergency/`), `the message says ${message}, and the guide is ${fingerprint}`);
await browser.close();
await server.stop();
for (const problem of problems.slice(0, 30)) console.log(problem);
console.log(`use: ${looked} things tried, ${problems.length} problems`);
process.exit(problems.length ? 1 : 0);

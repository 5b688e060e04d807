// browse.mjs INSTRUMENTS CHROMIUM FOLDER: opens every page below FOLDER in a real browser, without script, from a
// folder, at phone and desk size. No page scrolls sideways, asks another host for anything, complains, or fails WCAG
// 2.2 AA as far as axe-core can tell; the label pages of one van open from a server under another base path too.
import { createRequire } from 'node:module';
import { createServer } from 'node:http';
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { extname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';

const [instruments, executablePath, folder] = process.argv.slice(2);
const require = createRequire(join(instruments, 'node_modules/'));
const { chromium } = require('playwright-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const flags = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];

const files = (dir) => readdirSync(dir).sort().flatMap((name) => {
  const path = join(dir, name);
  return statSync(path).isDirectory() ? files(path) : [path];
});
const pages = files(folder).filter((path) => path.endsWith('.html'));
const problems = [];
const browser = await chromium.launch({ executablePath, args: flags });

async function look(width, height, check) {
  const context = await browser.newContext({ viewport: { width, height }, bypassCSP: true });
  const page = await context.newPage();
  let current = '';
  page.on('console', (message) => ['error', 'warning'].includes(message.type()) && problems.push(`${current}: ${message.text()}`));
  page.on('request', (request) => /^(file|data|blob):/.test(request.url()) || problems.push(`${current}: asks for ${request.url()}`));
  for (const path of pages) {
    current = `${relative(folder, path)} at ${width}`;
    await page.goto(pathToFileURL(path).href);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    if (wide > 0) problems.push(`${current}: scrolls sideways by ${wide} px`);
    await check?.(page, current);
  }
  await context.close();
}

async function accessible(page, current) {
  await page.evaluate(axe);
  const found = await page.evaluate(() => window.axe.run(document, {
    runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
    rules: { 'target-size': { enabled: true } },
    preload: false,
  }));
  for (const violation of found.violations) problems.push(`${current}: ${violation.id}: ${violation.nodes[0].html.slice(0, 160)}`);
}

// A page that is known to be wrong must be found wrong, or the checks prove nothing.
async function proveTheChecks() {
  const before = problems.length;
  const page = await browser.newPage({ bypassCSP: true });
  await page.setContent('<html lang="en"><title>x</title><img src="data:image/gif;base64,R0lGODlhAQABAAAAACw="><p style="color:#999;background:#fff">faint</p>');
  await accessible(page, 'a page with mistakes');
  const found = problems.splice(before);
  if (!found.some((text) => text.includes('image-alt')) || !found.some((text) => text.includes('color-contrast'))) problems.push('axe-core finds nothing on a page with mistakes');
  await page.close();
}

async function underAnotherPath() {
  const types = { '.html': 'text/html; charset=utf-8', '.css': 'text/css', '.js': 'text/javascript', '.svg': 'image/svg+xml' };
  const server = createServer((request, response) => {
    const path = new URL(request.url, 'http://x').pathname.replace(/^\/some\/base\//, '').replace(/\/$/, '/index.html');
    try {
      const body = readFileSync(join(folder, path));
      response.writeHead(200, { 'content-type': types[extname(path)] ?? 'application/octet-stream' }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((done) => server.listen(0, '127.0.0.1', done));
  const page = await browser.newPage({ javaScriptEnabled: false });
  page.on('response', (answer) => answer.status() >= 400 && problems.push(`${answer.url()}: ${answer.status()}`));
  const labels = pages.map((path) => relative(folder, path)).filter((path) => /^[0-9A-Z]{8}\/[A-Z]{1,2}[0-9]{1,2}\/index\.html$/.test(path));
  for (const label of labels) {
    await page.goto(`http://127.0.0.1:${server.address().port}/some/base/${label.replace('index.html', '')}`);
    if (!(await page.locator('h1').innerText()).trim()) problems.push(`${label}: no heading`);
  }
  server.close();
  return labels.length;
}

await proveTheChecks();
const narrowAndWide = async () => {
  await look(320, 640);
  await look(1280, 800);
};
await Promise.all([look(390, 844, accessible), narrowAndWide()]);
const labels = await underAnotherPath();
await browser.close();
for (const problem of problems.slice(0, 30)) console.log(problem);
console.log(`Chromium: ${pages.length} pages at 320, 390 and 1280 px, ${labels} label addresses served, ${problems.length} problems`);
process.exit(problems.length || !pages.length || !labels ? 1 : 0);

// marks.mjs INSTRUMENTS CHROMIUM PAGES: the marks of a Dates page by the reader's own date. On the day before, on and
// after each day that falls due the word is right, in zones of time on both sides of the date line that know no summer time, and without script
// there is none; the link to the calendar leads to a file.
import { createRequire } from 'node:module';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const [instruments, executablePath, folder] = process.argv.slice(2);
const require = createRequire(join(instruments, 'node_modules/'));
const { chromium } = require('playwright-core');
const problems = [];
let checked = 0;
const van = readdirSync(folder).find((name) => existsSync(join(folder, name, 'dates.ics')));
const address = pathToFileURL(join(folder, van, 'dates/index.html')).href;
const day = (iso, more) => new Date(Date.parse(`${iso}T00:00:00Z`) + more * 864e5).toISOString().slice(0, 10);
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });

async function open(options, at) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  if (at) await page.clock.setFixedTime(at);
  await page.goto(address);
  return { context, page };
}

const rows = (page) => page.$$eval('.date-when', (all) => all.map((row) => [row.querySelector('time')?.dateTime, row.querySelector('.date-mark')?.textContent]).filter(([due]) => due));

const expected = (due, today) => (due < today ? 'Overdue' : due <= day(today, 60) ? 'Due within 60 days' : 'Later');

async function hold(today, timezoneId, clock) {
  const { context, page } = await open({ timezoneId }, new Date(`${today}T${clock}`));
  for (const [due, word] of await rows(page)) {
    checked += 1;
    if (word !== expected(due, today)) problems.push(`on ${today} in ${timezoneId}, ${due} is marked ${word}`);
  }
  const line = await page.textContent('.dates-today');
  if (!line.includes(`Overdue: ${(await rows(page)).filter(([due]) => due < today).length}.`)) problems.push(`on ${today}: ${line}`);
  await context.close();
}

const plain = await open({ javaScriptEnabled: false });
const known = await plain.page.locator('.date-when time').evaluateAll((all) => all.map((time) => time.dateTime));
if (await plain.page.locator('.date-mark, .dates-today').count()) problems.push('there are marks without script');
const link = await plain.page.locator('a[type="text/calendar"]').evaluate((a) => a.href);
if (!readFileSync(fileURLToPath(link), 'utf8').startsWith('BEGIN:VCALENDAR\r\n')) problems.push('the link leads to no calendar');
await plain.context.close();

for (const due of new Set(known.slice(0, 3))) {
  for (const more of [-61, -60, -1, 0, 1]) {
    await hold(day(due, more), 'Pacific/Kiritimati', '00:30:00+14:00');
    await hold(day(due, more), 'Pacific/Pago_Pago', '23:30:00-11:00');
  }
}
await browser.close();
problems.slice(0, 20).forEach((problem) => console.log(problem));
console.log(`marks of dates: ${checked} held against the day, ${problems.length} problems`);
process.exit(problems.length || !checked ? 1 : 0);

// Looks at one page in a headless browser; started by page-check, which
// installs what is imported here. Arguments: browser, page, printed pages at
// most. Exit code 1 when anything is found.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const [executablePath, page, most] = process.argv.slice(2);
const address = pathToFileURL(page).href;
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const faults = [];
const fault = (text) => faults.push(text);

// pages counts the leaves of a PDF's page tree.
const pages = (pdf) => (pdf.toString('latin1').match(/\/Type\s*\/Page(?![a-zA-Z])/g) || []).length;

const browser = await chromium.launch({
  executablePath,
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
    '--disable-background-networking', '--disable-component-update', '--disable-sync'],
});
try {
  for (const colorScheme of ['light', 'dark']) {
    for (const width of [1280, 400]) {
      const view = `${colorScheme}, ${width} px`;
      const tab = await browser.newPage({ colorScheme, viewport: { width, height: 900 } });
      tab.on('console', (m) => { if (['error', 'warning'].includes(m.type())) fault(`${view}: console: ${m.text()}`); });
      tab.on('pageerror', (e) => fault(`${view}: error: ${e.message}`));
      tab.on('request', (r) => { if (r.url() !== address) fault(`${view}: request: ${r.url()}`); });
      await tab.goto(address, { waitUntil: 'load' });
      if (await tab.evaluate(() => document.documentElement.scrollWidth > innerWidth)) {
        fault(`${view}: the page is wider than the window`);
      }
      for (const open of [false, true]) {
        await tab.evaluate((o) => { for (const d of document.querySelectorAll('details')) d.open = o; }, open);
        await tab.evaluate(axe);
        const found = await tab.evaluate(() => window.axe.run(document, {
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
        }));
        for (const v of found.violations) {
          const text = `${view}, log ${open ? 'open' : 'closed'}: axe: ${v.impact}: ${v.id}: ${v.help}: ${v.nodes.map((n) => n.target).slice(0, 3).join('; ')}`;
          if (v.impact === 'serious' || v.impact === 'critical') fault(text);
          else console.log(`note: ${text}`);
        }
        console.log(`${view}, log ${open ? 'open' : 'closed'}: axe ${found.testEngine.version}: ${found.passes.length} rules passed, ${found.violations.length} violated, ${found.incomplete.length} not decided (${found.incomplete.map((i) => i.id).join(', ')})`);
      }
      await tab.close();
    }
  }
  for (const format of ['A4', 'Letter']) {
    const tab = await browser.newPage();
    await tab.goto(address, { waitUntil: 'load' });
    const n = pages(await tab.pdf({ format }));
    console.log(`${format}: ${n} pages`);
    if (n < 1 || n > Number(most)) fault(`${format}: ${n} printed pages, want ${most} at most`);
    await tab.close();
  }
} finally {
  await browser.close();
}
for (const f of faults) console.error(`page-check: ${f}`);
if (faults.length > 0) process.exit(1);
console.log('page-check: nothing found');

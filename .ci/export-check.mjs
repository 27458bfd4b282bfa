// Compares exported tables; started by export-check, which makes them and
// installs what is imported here. Argument: the spreadsheet program, or "".
// Exit code 1 when anything differs.
import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { DuckDBInstance } from '@duckdb/node-api';

const spreadsheet = process.argv[2];
const faults = [];
const fault = (text) => faults.push(text);
const tables = readdirSync('flat-csv').filter((n) => n.endsWith('.csv')).map((n) => n.slice(0, -4));
if (tables.length < 6) fault(`only ${tables.length} tables`);

// rows takes a file of RFC 4180 apart.
function rows(text) {
  const out = [[]];
  for (const m of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    out.at(-1).push(m[1] === undefined ? m[2] : m[1].replaceAll('""', '"'));
    if (m[3] !== ',') out.push([]);
  }
  out.pop();
  return out;
}

// An engine that reads partitions takes the folder as it stands: the same
// rows as the flat files, the day from the folder's name, every row's call
// there, and only the day's files read for a day.
const db = await (await DuckDBInstance.create(':memory:')).connect();
const ask = async (q) => (await db.runAndReadAll(q)).getRowsJson();
let counted = 0;
for (const table of tables) {
  const flat = rows(readFileSync(`flat-csv/${table}.csv`, 'utf8')).slice(1);
  const head = rows(readFileSync(`flat-csv/${table}.csv`, 'utf8'))[0];
  const texts = `all_varchar = true, delim = ',', quote = '"', escape = '"'`;
  const csv = `read_csv('days-csv/table=${table}/*/*.csv', hive_partitioning = true, hive_types_autocast = false, header = true, ${texts})`;
  const cols = head.map((c) => `coalesce("${c}", '')`).join(', ');
  const got = (await ask(`SELECT ${cols} FROM ${csv}`)).map((r) => JSON.stringify(r.map((x) => (x === '__HIVE_DEFAULT_PARTITION__' ? '' : x)))).sort();
  const want = flat.map((r) => JSON.stringify(r)).sort();
  counted += got.length;
  if (JSON.stringify(got) !== JSON.stringify(want)) fault(`${table}: the days hold other rows than the flat file`);
  const [[n]] = await ask(`SELECT count(*) FROM read_json('days-jsonl/table=${table}/*/*.jsonl', hive_partitioning = true, union_by_name = true)`);
  if (Number(n) !== flat.length) fault(`${table}: ${n} rows of JSON, ${flat.length} of CSV`);
  if (table !== 'calls') {
    const [[orphans]] = await ask(`SELECT count(*) FROM ${csv} AS r LEFT JOIN read_csv('days-csv/table=calls/*/*.csv', hive_partitioning = true, ${texts}) AS c USING (call_id) WHERE c.call_id IS NULL`);
    if (Number(orphans) !== 0) fault(`${table}: ${orphans} rows without their call`);
  }
}
const [[mean]] = await ask(`SELECT avg(value) FROM read_csv('days-csv/table=readings/*/*.csv', hive_partitioning = true, union_by_name = true) WHERE kind = 'temp' AND date = '2026-05-04'`);
if (mean !== -18.5) fault(`the day's temperature is ${mean}, want -18.5`);
console.log(`SQL engine: ${tables.length} tables, ${counted} rows`);

// A spreadsheet shows every cell as it stands in the file, and computes none.
const unescape = (s) => s.replace(/<text:s(?: text:c="(\d+)")?\/>/g, (_, n) => ' '.repeat(Number(n ?? 1))).replace(/<[^>]*>/g, '')
  .replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&apos;', "'").replaceAll('&amp;', '&');
if (spreadsheet) {
  let cells = 0;
  for (const table of tables) {
    execFileSync(spreadsheet, ['-env:UserInstallation=file://' + process.cwd() + '/profile', '--headless', '--convert-to', 'fods', '--outdir', 'sheets',
      // comma, double quote, UTF-8, as a spreadsheet proposes for such a file
      '--infilter=CSV:44,34,76,1', `flat-csv/${table}.csv`], { stdio: 'ignore' });
    const xml = readFileSync(`sheets/${table}.fods`, 'utf8');
    if (xml.includes('table:formula')) fault(`${table}: the spreadsheet takes a cell for a formula`);
    const sheet = xml.slice(xml.indexOf('<table:table '), xml.indexOf('</table:table>')).split('<table:table-row').slice(1).map((row) => {
      const line = [];
      for (const m of row.matchAll(/<table:(?:covered-)?table-cell([^>]*?)(?:\/>|>(.*?)<\/table:table-cell>)/gs)) {
        const times = Number(/number-columns-repeated="(\d+)"/.exec(m[1])?.[1] ?? 1);
        const paragraphs = [...(m[2] ?? '').matchAll(/<text:p>(.*?)<\/text:p>|<text:p\/>/gs)].map((p) => unescape(p[1] ?? ''));
        for (let i = 0; i < Math.min(times, 200); i++) line.push({ text: paragraphs.join('\n'), value: /office:value="([^"]*)"/.exec(m[1])?.[1], boolean: /office:boolean-value="([^"]*)"/.exec(m[1])?.[1] });
      }
      return line;
    });
    const file = rows(readFileSync(`flat-csv/${table}.csv`, 'utf8'));
    file.forEach((row, i) => row.forEach((want, k) => {
      const got = sheet[i]?.[k] ?? { text: '' };
      cells++;
      if (got.text === want) return;
      if (got.boolean !== undefined && got.boolean === want) return;
      // A number may be shown with fewer digits as long as it is the same.
      if (got.value !== undefined && want !== '' && Number(got.value) === Number(want) && !/^[+-]?0\d|^'/.test(want)) return;
      fault(`${table}, line ${i + 1}, ${file[0][k]}: ${JSON.stringify(want)} is shown as ${JSON.stringify(got.text)}`);
    }));
  }
  console.log(`spreadsheet: ${cells} cells`);
  if (cells < 500) fault(`only ${cells} cells`);
}

for (const f of faults.slice(0, 20)) console.error(`export-check: ${f}`);
process.exit(faults.length > 0 ? 1 : 0);

import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { accuracyBench } from './accuracyBench.js';
import { specsOf } from './accuracyParts.js';
import { accuracyReport } from './accuracyReport.js';
import { worstSheet } from './accuracyWorst.js';
import { uniformPlot } from './uniformPlot.js';

// Run from the project's root: `npm run bench:accuracy [-- --quick] [--rounds N] [--only part,part]`.
// --only measures those parts and takes the others from the last run, kept in out/bench.
const quick = process.argv.includes('--quick');
const option = (name: string) => process.argv[process.argv.indexOf(name) + 1];
const only = process.argv.includes('--only') ? option('--only').split(',') : [];
const rounds = process.argv.includes('--rounds') ? Number(option('--rounds')) : quick ? 1 : 2;
const store = join('out', 'bench', quick ? 'accuracy-quick' : 'accuracy');
mkdirSync(store, { recursive: true });
const fileOf = (part: string) => join(store, `${part}.json`);
const from = performance.now();
const say = (what: string) =>
  process.stderr.write(`${((performance.now() - from) / 1000).toFixed(0)} s ${what}\n`);
const { rows, notes, nullP, errors, worst } = await accuracyBench(
  rounds,
  only,
  (part) =>
    existsSync(fileOf(part)) ? JSON.parse(readFileSync(fileOf(part), 'utf8'), revive) : null,
  (part, measured) => writeFileSync(fileOf(part), JSON.stringify(measured, keepNumber)),
  say,
);
const machine = `${cpus()[0]?.model ?? 'an unknown processor'}, ${cpus().length} cores, one used`;
const seconds = (performance.now() - from) / 1000;
const report = accuracyReport(rows, notes, { quick, only, rounds, seconds, machine });
// A quick run is a look, not the record: it leaves docs/ alone.
const folder = quick ? join('out', 'bench') : 'docs';
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'accuracy.md'), report);
writeFileSync(
  join(folder, 'accuracy-null-p.svg'),
  uniformPlot(nullP, {
    x: 'p of the strongest line',
    y: 'share of panels with p this small or smaller',
    banded: true,
  }),
);
writeFileSync(
  join(folder, 'accuracy-errors.svg'),
  uniformPlot(errors, {
    x: 'chance of the error by its stated standard error',
    y: 'share of errors this unlikely or more so',
    banded: false,
  }),
);
writeFileSync(join(folder, 'accuracy-worst.jpg'), await worstSheet(worst, specsOf(rounds)));
process.stdout.write(report);

/** JSON has no word for numbers without end or without value. */
function keepNumber(_: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;
}

function revive(_: string, value: unknown): unknown {
  return value === 'NaN' || value === 'Infinity' || value === '-Infinity' ? Number(value) : value;
}

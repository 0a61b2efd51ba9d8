import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { accuracyBench } from './accuracyBench.js';
import { nullPlot } from './accuracyPlot.js';
import { accuracyReport } from './accuracyReport.js';

// Run from the project's root: `npm run bench:accuracy [-- --quick]`.
const quick = process.argv.includes('--quick');
const from = performance.now();
const say = (what: string) =>
  process.stderr.write(`${((performance.now() - from) / 1000).toFixed(0)} s ${what}\n`);
const { rows, notes, nullP } = await accuracyBench(quick, say);
const machine = `${cpus()[0]?.model ?? 'an unknown processor'}, ${cpus().length} cores, one used`;
const seconds = (performance.now() - from) / 1000;
const report = accuracyReport(rows, notes, { quick, seconds, machine });
// A quick run is a look, not the record: it leaves docs/ alone.
const folder = quick ? join('out', 'bench') : 'docs';
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'accuracy.md'), report);
writeFileSync(join(folder, 'accuracy-null-p.svg'), nullPlot(nullP));
process.stdout.write(report);

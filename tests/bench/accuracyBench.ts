import {
  crosscutSpecs,
  frontSpecs,
  mixedSpecs,
  type NamedSpec,
  ripSpecs,
  seamlessSpecs,
  shamSpecs,
} from './accuracyDrawn.js';
import { accuracyGrain } from './accuracyGrain.js';
import { strongestP, uniformDistance } from './accuracyNull.js';
import { drawBench } from './accuracyPanels.js';
import { placedRows, placedSeams, shamRows } from './accuracyPlaced.js';
import { type AccuracyRow, accuracyRow } from './accuracyRow.js';
import {
  falseAlarmRow,
  recallRow,
  type SeamTrial,
  seamlessTrial,
  seamTrial,
} from './accuracySeams.js';
import { bareRingContrast } from './accuracyTruth.js';

/** Scale of the panels whose offsets are measured, px/mm. */
const placedPxPerMm = 6;

/** Everything that the bench measures. */
export async function accuracyBench(quick: boolean, say: (what: string) => void) {
  const rounds = (full: number) => (quick ? 1 : full);
  const few = (specs: NamedSpec[]) => (quick ? specs.filter((_, i) => i % 4 === 0) : specs);
  const notes: string[] = [];
  const rows: AccuracyRow[] = [];

  say('grain angle');
  rows.push(...accuracyGrain(rounds(2)));

  say('seamless panels and shams');
  const p: number[] = [];
  const seamless = few(seamlessSpecs(9000, 3)).map(({ name, spec }) => {
    const { photo } = drawBench(spec);
    p.push(strongestP(photo));
    return seamlessTrial(name, photo);
  });
  const shamPlaced = [];
  const shams: SeamTrial[] = [];
  for (const { name, spec } of few(shamSpecs(9100, 3))) {
    const panel = drawBench(spec);
    p.push(strongestP(panel.photo));
    shams.push(seamlessTrial(name, panel.photo));
    if (shamPlaced.length < 36) shamPlaced.push(...placedSeams(panel));
  }

  say('rips');
  const rips: SeamTrial[] = [];
  const placed = few(ripSpecs(9200, 3)).flatMap(({ name, spec }) => {
    const panel = drawBench(spec, placedPxPerMm);
    rips.push(seamTrial(name, panel, bareRingContrast));
    return placedSeams(panel);
  });

  const trials = (what: string, specs: NamedSpec[]) => {
    say(what);
    return few(specs).map(({ name, spec }) => seamTrial(name, drawBench(spec), bareRingContrast));
  };
  const crosscuts = trials('crosscuts', crosscutSpecs(9300, 1));
  const mixed = trials('mixed boards', mixedSpecs(9400, 1));
  const fronts = trials('drawer fronts', frontSpecs(9500, 1));

  const all = [...rips, ...crosscuts, ...mixed, ...fronts];
  const section = 'Seams found';
  for (const [what, own] of [
    ['all', all],
    ['rips', rips],
    ['crosscuts', crosscuts],
    ['mixed boards', mixed],
    ['drawer fronts', fronts],
  ] as const) {
    rows.push(recallRow(section, what, own, 1.5, { least: 95 }));
    rows.push(recallRow(section, what, own, 3, { least: 90 }));
  }
  rows.push(
    falseAlarmRow(section, 'seamless', seamless),
    falseAlarmRow(section, 'sham', shams),
    falseAlarmRow(section, 'seamless and sham', [...seamless, ...shams], { most: 2 }),
    falseAlarmRow(section, 'panels with seams', all),
  );
  const { distance, critical } = uniformDistance(p);
  const figure = { value: distance, low: Number.NaN, high: Number.NaN };
  rows.push(
    accuracyRow(
      section,
      'null p against the uniform law, Kolmogorov-Smirnov distance',
      p.length,
      figure,
      3,
      { most: Number(critical.toFixed(3)) },
    ),
  );
  rows.push(...placedRows(placed, placedPxPerMm), ...shamRows(shamPlaced, 'Placed shams, 5 px/mm'));
  for (const trial of [...seamless, ...shams]) {
    if (trial.falseSeams > 0) notes.push(`False seam: ${trial.name}, p ${trial.p.join(', ')}.`);
  }
  return { rows, notes, nullP: [{ name: 'seamless and sham', colour: '#8a4b14', p }] };
}

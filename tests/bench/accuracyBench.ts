import { errorSeries } from './accuracyErrors.js';
import { accuracyCellRows } from './accuracyGrain.js';
import { uniformDistance } from './accuracyNull.js';
import { benchPxPerMm, settings } from './accuracyPanels.js';
import { type Measured, type Part, parts } from './accuracyParts.js';
import { placedRows, shamRows } from './accuracyPlaced.js';
import { type AccuracyRow, accuracyRow } from './accuracyRow.js';
import { falseAlarmRow, recallRow, unmaskedRecallRow } from './accuracySeams.js';
import { visibilityRows } from './accuracyVisibility.js';
import { worstTrials } from './accuracyWorst.js';

/**
 * Measures the parts asked for and takes the others from `kept`.
 *
 * @param rounds boards of each setting and cut per part.
 */
export async function accuracyBench(
  rounds: number,
  only: readonly string[],
  kept: (part: Part) => Measured | null,
  keep: (part: Part, measured: Measured) => void,
  say: (what: string) => void,
) {
  const all = new Map<Part, Measured>();
  for (const [name, measure] of Object.entries(parts) as [Part, (typeof parts)[Part]][]) {
    const old = only.length > 0 && !only.includes(name) ? kept(name) : null;
    if (only.length > 0 && !only.includes(name) && !old) continue;
    if (!old) say(name);
    const measured = old ?? (await measure(rounds));
    const dated = { rounds, ...measured };
    if (!old) keep(name, dated);
    all.set(name, dated);
  }
  return accuracyTable((name) => all.get(name) ?? {});
}

function accuracyTable(part: (name: Part) => Measured) {
  const trials = (...names: Part[]) => names.flatMap((name) => part(name).trials ?? []);
  const section = 'Seams found';
  const rows: AccuracyRow[] = [...accuracyCellRows(part('seamless').faces ?? [])];
  for (const [what, names] of [
    ['all', ['rips', 'crosscuts', 'mixed', 'fronts']],
    ['rips', ['rips']],
    ['crosscuts', ['crosscuts']],
    ['mixed boards', ['mixed']],
    ['drawer fronts', ['fronts']],
  ] as const) {
    rows.push(recallRow(section, what, trials(...names), 1.5, { least: 95 }));
    rows.push(recallRow(section, what, trials(...names), 3, { least: 90 }));
    rows.push(unmaskedRecallRow(section, what, trials(...names), 3));
  }
  for (const setting of settings) {
    const own = trials('rips').filter(({ name }) => name.includes(setting));
    rows.push(recallRow(section, `rips, ${setting}`, own, 1.5, { least: 95 }));
  }
  const alongGrain = 'rips within 2 deg of the grain';
  rows.push(recallRow(section, alongGrain, trials('rips'), 1.5, undefined, 'along the grain'));
  rows.push(
    falseAlarmRow(section, 'seamless', trials('seamless')),
    falseAlarmRow(section, 'sham', trials('shams')),
    falseAlarmRow(section, 'seamless and sham', trials('seamless', 'shams'), { most: 2 }),
    falseAlarmRow(section, 'with seams', trials('rips', 'crosscuts', 'mixed', 'fronts')),
  );
  const p = [...(part('seamless').p ?? []), ...(part('shams').p ?? [])];
  const { distance, critical } = uniformDistance(p.length > 0 ? p : [Number.NaN]);
  rows.push(
    accuracyRow(
      section,
      'null p against the uniform law, Kolmogorov-Smirnov distance',
      p.length,
      { value: distance, low: Number.NaN, high: Number.NaN },
      3,
      { most: Number(critical.toFixed(3)) },
    ),
    ...placedRows(part('rips').placed ?? [], benchPxPerMm),
    ...shamRows(part('shams').placed ?? [], `Placed shams, ${benchPxPerMm} px/mm`),
    ...visibilityRows('rips', part('rips').pairs ?? []),
    ...visibilityRows('crosscuts', part('crosscuts').pairs ?? []),
    ...slopedRows(trials('sloped'), trials('slopedSeamless')),
    ...(part('trade').rows ?? []),
    recallRow(
      'Second wood model',
      'mixed boards, whatever their colours',
      trials('second').filter(({ name }) => name.includes('mixed')),
      0,
    ),
    ...drawnApart('Second wood model', trials('second'), trials('secondSeamless'), 4),
    ...drawnApart(
      'Through a camera, lamp to one side',
      trials('camera'),
      trials('cameraSeamless'),
      2,
    ),
    ...(part('real').rows ?? []),
  );
  const sizes = (Object.keys(parts) as Part[]).map((name) => {
    const { rounds } = part(name);
    return `${name} ${rounds === undefined ? 'not measured' : Number(rounds.toFixed(2))}`;
  });
  const notes = [`Rounds (9 boards each; half as many for some parts): ${sizes.join(', ')}.`];
  notes.push(...(Object.keys(parts) as Part[]).flatMap((name) => part(name).notes ?? []));
  const uncut = [
    'seamless',
    'shams',
    'slopedSeamless',
    'secondSeamless',
    'cameraSeamless',
  ] as const;
  for (const trial of trials(...uncut)) {
    if (trial.falseSeams > 0) notes.push(`False seam: ${trial.name}, p ${trial.p.join(', ')}.`);
  }
  const nullP = (['seamless', 'shams'] as const).map((name) => ({ name, p: part(name).p ?? [] }));
  const errors = errorSeries(part('seamless').faces ?? [], part('rips').placed ?? []);
  const worst = worstTrials(
    (['rips', 'sloped', 'crosscuts', 'mixed', 'fronts', 'seamless', 'shams'] as const).flatMap(
      (name) => part(name).trials ?? [],
    ),
  );
  return { rows, notes, nullP, errors, worst };
}

type Trials = Parameters<typeof recallRow>[2];

/** Rings at the angles at which no saw cut is looked for, and which are themselves straight lines. */
function slopedRows(seams: Trials, seamless: Trials) {
  const section = 'Straight grain, 5 to 10 deg off the edge';
  return [
    recallRow(section, 'rips', seams, 1.5, { least: 95 }),
    falseAlarmRow(section, 'rips', seams, { most: 2 }),
    falseAlarmRow(section, 'seamless', seamless, { most: 2 }),
  ];
}

function drawnApart(section: string, seams: Trials, seamless: Trials, most: number) {
  return [
    recallRow(section, 'rips', seams, 1.5, { least: 90 }),
    recallRow(section, 'rips', seams, 3, { least: 85 }),
    falseAlarmRow(section, 'seamless', seamless, { most }),
  ];
}

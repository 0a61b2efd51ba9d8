import type { EndgrainRow } from './endgrainRow.js';

/** Rows of one wood and place of the pith. */
export interface EndgrainGroup {
  readonly name: string;
  readonly inside: boolean;
  readonly marked: boolean;
  readonly rows: readonly EndgrainRow[];
}

const clearOfPithMm = 10;
const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / Math.max(1, values.length));
const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const share = (values: readonly boolean[]) =>
  values.length === 0
    ? '-'
    : `${Math.round((100 * values.filter(Boolean).length) / values.length)} %`;

/** Both tables of the drawn ends, clean and marked. */
export function endgrainTables(groups: readonly EndgrainGroup[]): string {
  return [false, true]
    .map((marked) => {
      const part = groups.filter((group) => group.marked === marked);
      return [
        marked ? '### Saw marks, stain and four cracks drawn in' : '### Clean ends',
        '',
        '| pith | wood | ring angle RMSE, deg | within 2 of its errors | pith told | pith error, median | rms | within the goal | within 1 of its errors | within 2 | least possible rms | within 10 % at that |',
        '|---|---|---|---|---|---|---|---|---|---|---|---|',
        ...part.map(rowText),
        '',
        anglesText(part),
      ].join('\n');
    })
    .join('\n\n');
}

function rowText({ name, inside, marked, rows }: EndgrainGroup): string {
  const twice = marked ? 2 : 1;
  const angles = rows.flatMap((row) => row.angles).filter((a) => a.nearMm >= clearOfPithMm);
  const told = rows.filter((row) => row.pithErrorMm !== null);
  const size = (row: EndgrainRow, mm: number) => (inside ? mm : (100 * mm) / row.distanceMm);
  const goal = inside ? 2 : 10;
  const errors = told.map((row) => size(row, row.pithErrorMm!));
  const limits = rows.flatMap(({ limit }) => limit ?? []);
  const unit = inside ? 'mm' : '%';
  return [
    `| ${name}`,
    rms(angles.map((a) => a.off)).toFixed(2),
    share(angles.map((a) => Math.abs(a.off) < 2 * a.se)),
    `${told.length} of ${rows.length}`,
    ...(errors.length === 0
      ? ['-', '-']
      : [`${median(errors).toFixed(1)} ${unit}`, `${rms(errors).toFixed(1)} ${unit}`]),
    share(errors.map((e) => e <= twice * goal)),
    share(told.map((row) => row.pithErrorMm! < row.pithSeMm!)),
    share(told.map((row) => row.pithErrorMm! < 2 * row.pithSeMm!)),
    ...(limits.length === 0
      ? ['', ' |']
      : [
          `${(100 * rms(limits.map(({ least }) => least))).toFixed(0)} %`,
          `${percent(mean(limits.map(({ least }) => chanceWithin(0.1 / least))))} |`,
        ]),
  ].join(' | ');
}

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const percent = (part: number) => `${Math.round(100 * part)} %`;

/** Chance that a normal error is within so many of its standard deviations (Simpson's rule). */
function chanceWithin(deviations: number): number {
  const steps = 200;
  const h = (2 * deviations) / steps;
  let sum = 0;
  for (let k = 0; k <= steps; k++) {
    const x = -deviations + k * h;
    const weight = k === 0 || k === steps ? 1 : k % 2 === 1 ? 4 : 2;
    sum += weight * Math.exp((-x * x) / 2);
  }
  return (sum * h) / 3 / Math.sqrt(2 * Math.PI);
}

/** What is claimed of piths outside the ends and what it is worth, over all those ends. */
export function pithClaims(groups: readonly EndgrainGroup[]): string {
  const rows = groups.filter(({ inside }) => !inside).flatMap((group) => group.rows);
  const told = rows.filter((row) => row.pithErrorMm !== null);
  const sure = told.filter((row) => row.pithSeMm! <= 0.1 * row.pithToldMm!);
  const limits = rows.flatMap(({ limit }) => limit ?? []);
  const worse = mean(limits.map(({ ours, least }) => ours / least)) - 1;
  return [
    `Outside the end, all ${rows.length}: told as a figure (claimed error at most a quarter) in ${told.length}; off by no more than the error claimed in ${share(told.map((row) => row.pithErrorMm! <= row.pithSeMm!))} of these (68 % would be right), by no more than twice in ${share(told.map((row) => row.pithErrorMm! <= 2 * row.pithSeMm!))} (95 %).`,
    `Of the ${sure.length} whose claimed error is at most 10 % of the distance told, ${share(sure.map((row) => row.pithErrorMm! <= 0.1 * row.distanceMm))} are within 10 %.`,
    `The tool's weighing of directions would come within ${percent(worse)} of the least possible error, on average.`,
  ].join(' ');
}

function anglesText(groups: readonly EndgrainGroup[]): string {
  const rows = groups.flatMap((group) => group.rows);
  const all = rows.flatMap((row) => row.angles);
  const clear = all.filter((a) => a.nearMm >= clearOfPithMm).map((a) => a.off);
  const perEnd = rows
    .map((row) => rms(row.angles.filter((a) => a.nearMm >= clearOfPithMm).map((a) => a.off)))
    .sort((a, b) => a - b);
  const far = rows.filter((row) => row.atLeastMm !== null);
  const held = far.filter((row) => row.distanceMm >= row.atLeastMm!);
  const least = far.length ? ` 'At least so far' held for ${held.length} of ${far.length}.` : '';
  const ratios = rows.flatMap((row) => (row.widthRatio === null ? [] : [row.widthRatio - 1]));
  const saw = rows.filter((row) => row.sawMarks).length;
  return `All ends: ring angle RMSE ${rms(clear).toFixed(2)} deg clear of the pith (10 mm), ${rms(all.map((a) => a.off)).toFixed(2)} deg with what lies nearer; worst end ${perEnd.at(-1)!.toFixed(1)} deg; unread ${rows.filter((row) => row.angles.length === 0).length} of ${rows.length}.${least} Saw marks found in ${saw} of ${rows.length}. Median ring width off the model's by ${(100 * rms(ratios)).toFixed(0)} % rms (${ratios.length} of ${rows.length} told). Median time ${median(rows.map((row) => row.seconds)).toFixed(1)} s an end.`;
}

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
        '| pith | wood | ring angle RMSE, deg | within 2 of its errors | pith told | pith error, median | rms | within the goal | within 2 of its errors | exact directions, median | within the goal |',
        '|---|---|---|---|---|---|---|---|---|---|---|',
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
  const exact = rows.map((row) => size(row, row.exactPithErrorMm));
  const unit = inside ? 'mm' : '%';
  return [
    `| ${name}`,
    rms(angles.map((a) => a.off)).toFixed(2),
    share(angles.map((a) => Math.abs(a.off) < 2 * a.se)),
    `${told.length} of ${rows.length}`,
    `${median(errors).toFixed(1)} ${unit}`,
    `${rms(errors).toFixed(1)} ${unit}`,
    share(errors.map((e) => e <= twice * goal)),
    share(told.map((row) => row.pithErrorMm! < 2 * row.pithSeMm!)),
    `${median(exact).toFixed(1)} ${unit}`,
    `${share(exact.map((e) => e <= goal))} |`,
  ].join(' | ');
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

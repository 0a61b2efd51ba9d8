import { visibilityWord } from '../../src/core/visibility/visibilityWord.js';
import { rankCorrelation } from './forecastStatistics.js';

/** A joint of the sheet: scored, and marked by eye before the score was seen. */
interface EyeRow {
  readonly what: string;
  readonly v: number;
  readonly cue: string | null;
  /** 0 nothing there, 10 jumps out. */
  readonly eye: number;
}

/** docs/eye.md as text. */
export function eyeReport(rows: readonly EyeRow[]): string {
  const rank = rankCorrelation(
    rows.map(({ eye }) => eye),
    rows.map(({ v }) => v),
  );
  const ranked = (pick: (row: EyeRow) => number) => {
    const order = rows.map((_, i) => i).sort((a, b) => pick(rows[a]) - pick(rows[b]));
    return rows.map((_, i) => order.indexOf(i));
  };
  const [byEye, byV] = [ranked((r) => r.eye), ranked((r) => r.v)];
  const table = rows
    .map((row, i) => ({ ...row, number: i + 1, apart: byV[i] - byEye[i] }))
    .sort((a, b) => a.v - b.v)
    .map(
      ({ number, what, v, cue, eye, apart }) =>
        `| ${number} | ${what} | ${v.toFixed(2)} | ${visibilityWord(v)} | ${cue ?? '-'} | ${eye} | ${apart > 0 ? '+' : ''}${apart} |`,
    );
  return `# V against the eye

Written by \`npm run bench:eye -- --compare\`. ${rows.length} joints, drawn and real, at life size for 600 mm on a
screen of 96 px to the inch, in random order and without V (\`npm run bench:eye\` draws the sheets into
out/eye). Marks, 0 nothing there to 10 jumps out, were given before V was read and are kept in
eye-marks.json. One looker, not a person at a bench: a first check of the order, no calibration.

**Rank correlation of mark and V: ${rank.toFixed(2)}** (n = ${rows.length}).

| no. | joint | V | word | strongest cue | mark | rank by V less rank by eye |
|---|---|---|---|---|---|---|
${table.join('\n')}
`;
}

import type { AccuracyRow } from './accuracyRow.js';

/** docs/accuracy.md as text. */
export function accuracyReport(
  rows: readonly AccuracyRow[],
  notes: readonly string[],
  how: {
    readonly quick: boolean;
    readonly only: readonly string[];
    readonly rounds: number;
    readonly seconds: number;
    readonly machine: string;
  },
): string {
  const missed = rows.filter((row) => row.target && row.n > 0 && !row.target.met);
  const told = rows.filter((row) => row.target && row.n > 0);
  const lines = [
    '# Accuracy',
    '',
    'Written by `npm run bench:accuracy` (after `npm ci`; `--rounds N` boards of each setting and',
    'cut, `--quick` for a look, `--only rips,real` for some parts). This run: '.concat(
      `${how.only.length > 0 ? `parts from several runs with --only, sizes at the end of this page` : `${how.rounds} rounds of all parts, ${how.seconds.toFixed(0)} s`}, on`,
    ),
    `${how.machine}. Drawn panels are 400 x 200 mm at 6 px/mm. Held-out seeds from 9000 on.`,
    'Shares carry Wilson 95 % intervals, other figures bootstrap 95 % intervals over whole panels.',
    'Truth comes from the wood model itself, never from the picture. "V by truth" is the closed',
    "form of the break from the model's ring lines (10 mm windows, cubic mean, 600 mm away), masked",
    "by lines near the joint's direction and by the board's own figure as the method says (what its",
    "lines differ by where nothing was cut, along the model's exact ring lines), or the colour step",
    'over its threshold between different boards. Seams within 2 deg of the grain stand apart: nothing',
    'crosses them. "Nothing masked" is the closed form alone. A target counts as reached when the',
    'figure keeps it, whatever its interval.',
    '',
    `**${told.length - missed.length} of ${told.length} targets reached.**`,
    ...(missed.length > 0
      ? ['', 'Missed:', '', ...missed.map((row) => `- ${missedText(row)}`)]
      : []),
    '',
    '| | what | n | figure | 95 % interval | target | |',
    '|---|---|---|---|---|---|---|',
    ...rows.filter((row) => row.n > 0).map(line),
    '',
    '![p of the strongest line of seamless panels against the uniform law](accuracy-null-p.svg)',
    '',
    'Error bars: how unlikely each error is by its own stated standard error. On the diagonal they are',
    'honest, above it too short, below it too long.',
    '',
    '![Chance of each error by its stated standard error, against the uniform law](accuracy-errors.svg)',
    '',
    'The five worst cases on panels of the first wood model: false seams, then seams missed that truth calls',
    'most visible; ticks show where they run.',
    '',
    '![The five worst cases](accuracy-worst.jpg)',
    '',
    ...notes.map((note) => `- ${note}`),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

const text = (value: number, digits: number) =>
  Number.isNaN(value) ? '-' : value.toFixed(digits).replace(/^-(0(\.0+)?)$/, '$1');

function line(row: AccuracyRow): string {
  const { section, what, n, value, low, high, digits, target } = row;
  const interval = Number.isNaN(low) ? '-' : `${text(low, digits)} to ${text(high, digits)}`;
  const verdict = !target ? '' : n === 0 ? 'not measured' : target.met ? 'reached' : '**missed**';
  return `| ${section} | ${what} | ${n} | ${text(value, digits)} | ${interval} | ${target?.text ?? '-'} | ${verdict} |`;
}

function missedText({ section, what, value, digits, target }: AccuracyRow): string {
  return `${section}, ${what}: ${text(value, digits)}, asked ${target?.text}`;
}

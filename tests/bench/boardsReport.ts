import type { WoodCut } from '../../src/core/wood/woodSetting.js';
import type { Exactness } from './boardsExact.js';
import type { Recovered } from './boardsRecovery.js';

export interface BoardsMeasured {
  readonly sets: number;
  readonly jointed: readonly Recovered[];
  readonly sawn: readonly Recovered[];
  readonly mixed: readonly Exactness[];
  readonly speed: { readonly arrangeS: number; readonly scoreS: number };
}

/** docs/boards-bench.md. */
export function boardsReport({ sets, jointed, sawn, mixed, speed }: BoardsMeasured): string {
  const equal = mixed.filter(({ cost, bruteCost }) => Math.abs(cost - bruteCost) < 1e-9);
  const two = mixed.filter(({ isTwoFaced }) => isTwoFaced).length;
  return `# Arranging boards, measured

\`npm run bench:boards -- --sets ${sets}\` wrote this. Seeds from 9000 on, which nothing was tuned on.

Drawn faces, 900 mm long, cut into 4 to 8 boards of 45 to 75 mm, shuffled, about half of them
turned, each photographed by itself (5 px/mm, soft focus, noise). Right: the order and every way as
grown; the whole panel turned half round counts.

| lost between boards | cut | sets | right | right by least V alone |
| --- | --- | --- | --- | --- |
${rows('0.8 mm (jointing 0.4 mm an edge)', jointed)}
${rows('4.0 mm (a 1/8 in saw cut and jointing)', sawn)}

Not right, with what was lost 0.8 mm: ${list(jointed)}. With 4.0 mm: ${list(sawn)}.
Sum of V^3, median: ${median(jointed.map(({ cost }) => cost)).toFixed(1)} as laid, ${median(jointed.map(({ leastCost }) => leastCost)).toFixed(1)} for the least of any order.

Boards from different trees, 4 to 6 of them (${two} of the sets with both faces): the chosen order's
cost equals that of trying every order and way in ${equal.length} of ${mixed.length} sets; taken for one face by mistake:
${mixed.filter(({ isTakenForOne }) => isTakenForOne).length} of ${mixed.length}.

Time: 8 boards, both faces photographed (four ways each), 32 MP of squared-up photos in all:
${speed.arrangeS.toFixed(1)} s. One 12 MP panel scored: ${speed.scoreS.toFixed(1)} s. Ratio ${(speed.arrangeS / speed.scoreS).toFixed(1)}. Processor time; decoding and squaring
up are in neither.
`;
}

function rows(lost: string, all: readonly Recovered[]): string {
  return (['flatsawn', 'rift'] as WoodCut[])
    .map((cut) => {
      const these = all.filter((one) => one.cut === cut);
      const right = these.filter(({ isRight }) => isRight).length;
      const byV = these.filter(({ isRightByV }) => isRightByV).length;
      return `| ${lost} | ${cut} | ${these.length} | ${right} | ${byV} |`;
    })
    .join('\n');
}

function list(all: readonly Recovered[]): string {
  const wrong = all.filter(({ isRight }) => !isRight);
  if (wrong.length === 0) return 'none';
  return wrong
    .map(
      ({ name, laid }) => `${name}${laid === 'leastSeen' ? ' (not recognised as one face)' : ''}`,
    )
    .join('; ');
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
}

import type { CutFacts, SlopeFacts } from './forecastFacts.js';
import type { PlaceResult } from './forecastPlaces.js';
import type { RealResult } from './forecastReal.js';
import type { SlideResult } from './forecastSlides.js';
import type { SpeedResult } from './forecastSpeed.js';
import type { Agreement } from './forecastStatistics.js';
import type { TruthResult } from './forecastTruth.js';

/** Everything that the bench measured. */
export interface ForecastBench {
  readonly truth: TruthResult;
  readonly real: RealResult | null;
  readonly places: readonly PlaceResult[];
  readonly slides: SlideResult;
  readonly facts: readonly CutFacts[];
  readonly slopes: readonly SlopeFacts[];
  readonly speed: SpeedResult;
}

const reached = (yes: boolean) => (yes ? 'reached' : '**missed**');
const fixed = (value: number, places = 2) => value.toFixed(places);
const percent = (share: number) => `${Math.round(100 * share)} %`;

/** The figures as Markdown; whether an aim is reached is worked out, never written by hand. */
export function forecastReport({
  truth,
  real,
  places,
  slides,
  facts,
  slopes,
  speed,
}: ForecastBench): string {
  const row = (what: string, { rips, rank, lnAll, lnSeen, seen }: Agreement) =>
    `| ${what} | ${rips} | ${fixed(rank, 3)} | ${fixed(lnAll)} | ${fixed(lnSeen)} (${seen}) |`;
  const verdict = (a: Agreement) =>
    `rank ${reached(a.rank >= 0.9)}, ln V ${reached(a.lnAll <= 0.25 && a.lnSeen <= 0.25)}`;
  const over = (p: PlaceResult) =>
    p.least > 0 ? p.chosen / p.least : p.chosen === 0 ? 1 : Infinity;
  const within = places.filter((place) => over(place) <= 1.02).length;
  return `## Forecast against the score after the cut

Aims: at least 60 rips, rank correlation at least 0.9, median |ln V - ln V'| at most 0.25.
V below 0.25 counts as 0.25 in "all"; "seen" takes pairs with both V at least 0.5.

| against the score of the cut panel | rips | rank | ln V, all | ln V, seen (n) |
|---|---|---|---|---|
${row('forecast by picture, a rip asked for', truth.forecast)}
${row('forecast by picture, quick reading of the curve', truth.curve)}
${row('forecast by angle alone', truth.byAngle)}
${row('a second photo of the same cut panel, scored', truth.again)}
${real ? `${row('real photographs, a rip asked for', real.forecast)}\n${row('the same, quick reading of the curve', real.curve)}\n${row('the same, another copy of the cut photograph, scored', real.again)}` : '| real photographs | not run: the photographs are not there | | | |'}

Drawn panels: ${verdict(truth.forecast)}. ${real ? `Real photographs: ${verdict(real.forecast)}.` : ''}

## The place of the front

Aim: the chosen place costs at most 2 % more than the cheapest of all places, each scored by picture:
the strips taken out of the photo, the rest joined, every joint read and judged as a score does.

| board | places | cheapest | chosen | chosen / cheapest | middle place | rank, search against brute force |
|---|---|---|---|---|---|---|
${places.map((p) => `| ${p.seed} | ${p.places} | ${fixed(p.least, 4)} | ${fixed(p.chosen, 4)} | ${fixed(over(p), 3)} | ${fixed(p.middle)} | ${fixed(p.rank, 3)} |`).join('\n')}

Within 2 % on ${within} of ${places.length} boards: ${reached(within === places.length)}.

## Slides

Aim: of the slides advised on drawn flatsawn panels at least 90 % lower the true V^3.

${slides.rips} rips, ${slides.claims} slides advised, ${slides.kept} lowered the true V^3 (${percent(slides.kept / Math.max(1, slides.claims))}): ${reached(slides.kept >= 0.9 * slides.claims)}.
Median of the true V^3 left over: ${percent(slides.left)}. Even straight grain (u* = k cot theta to 0.5 mm)
is a unit test: tests/core/rip/evenGrain.test.ts.

## Facts of the trade

Rips of 1/8 in through drawn faces, 600 mm away, medians over boards. Breaks are expected on
flatsawn faces, where the grain moves quickly over an eighth of an inch; quartered and rift faces
should lose nothing visible (V below 1).

| wood | rings to the face | V of the middle rip | rips below V = 1 | worst rip |
|---|---|---|---|---|
${facts.map((f) => `| ${f.setting} | ${f.ringAngleDeg} deg | ${fixed(f.vMedian)} | ${percent(f.unseen)} | ${fixed(f.worst)} |`).join('\n')}

Middle rip below V = 1 on every rift and quartered face: ${reached(facts.every((f) => f.ringAngleDeg < 30 || f.vMedian < 1))}.
Every rip below V = 1 there: ${reached(facts.every((f) => f.ringAngleDeg < 30 || f.worst < 1))}.

Quartered softwood drawn with even, straight lines 2 mm apart, by their slope to the rip:

| slope | V of the middle rip | by the closed form |
|---|---|---|
${slopes.map((s) => `| ${s.slopeDeg} deg | ${fixed(s.v)} | ${fixed(s.vByAngle)} |`).join('\n')}

## Time

Aim: curve, slides and search on a 12 MP photo in at most 5 times the time of \`score\`.

\`score\` ${fixed(speed.scoreS, 1)} s, \`forecast --rip --front\` ${fixed(speed.forecastS, 1)} s of processor time: ${fixed(speed.forecastS / speed.scoreS, 1)} times, ${reached(speed.forecastS <= 5 * speed.scoreS)}.
`;
}

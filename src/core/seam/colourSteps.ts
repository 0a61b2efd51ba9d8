import { ciede2000 } from '../colour/ciede2000.js';
import type { Lab } from '../colour/lab.js';
import { bandMeans, type ColourSide, type Stretch } from './bandMeans.js';
import { alongStretches, commonShift } from './commonShift.js';
import { clearMm, figureColour } from './figureColour.js';
import { meanColour, steadyColours } from './steadyColours.js';

/** Widths of the bands compared, mm: half a degree at 0.3, 0.6, 1.2, 2.3 and 3.4 m. */
export const colourBandsMm: readonly number[] = [2.6, 5.2, 10.5, 20, 30];

/**
 * Along the figure the step is read close to the line, in this share of the band: the figure's own
 * colours differ the less the nearer two bands lie, another board's do not.
 */
const edgeShare = 0.4;
/** Where those bands begin, mm from the line: clear of a glue line and the lens. */
const edgeFromMm = 0.5;

/** So many neighbours, which share most of what they are read from, have their step in common. */
const alike = 5;

/** A step of colour, and its parts along and beside the boards' own figure (`figureColour`), CIEDE2000. */
export interface ColourStep {
  readonly deltaE: number;
  readonly alongDeltaE: number;
  readonly besideDeltaE: number;
}

/**
 * Colour difference (CIEDE2000) between the bands on the two sides of a joint, for each stretch of
 * it and each band width.
 *
 * Neighbouring stretches are taken together before they are compared: between boards the step is
 * the same all along and stays, the figure's own steps (a band of latewood that the line grazes)
 * come and go. Along the figure's own line of colour only the step that light and dark wood have in
 * common counts (`commonShift`), beside it the means. How far an eye follows an edge is an assumption.
 *
 * A line of a glued panel beside its joint (eta = 0) is read on its own board only: a band that
 * reached over the joint would take the joint's own step for the board's figure.
 *
 * @param a, b the colours and the line where each side ends. @param slideMm how far side A has moved
 *   along the joint.
 * @returns the step of a stretch for an entry of `colourBandsMm`, worked out when first asked for; a
 *   band cut off by the board's edge is as wide as the board allows.
 */
export function colourSteps(
  a: ColourSide,
  b: ColourSide,
  stretches: readonly Stretch[],
  slideMm: number,
): (stretch: number, band: number) => ColourStep {
  const oneLine = a.lab === b.lab && a.etaMm === b.etaMm;
  const deepestMm = (side: -1 | 1) =>
    oneLine && a.etaMm * side < 0 ? Math.abs(a.etaMm) - clearMm : Number.POSITIVE_INFINITY;
  const { plane, pxPerMm } = a.lab[0];
  // Where side A has been slid away there is nothing beside B to compare it with.
  const beside = stretches.map(
    ({ fromMm, toMm }) => fromMm >= slideMm && toMm - slideMm <= plane.width / pxPerMm + 1,
  );
  const figure = figureColour(a.lab, b.lab);
  const known = new Map<number, ColourStep[]>();
  const colours = (fromMm: number, widthMm: number) => {
    const band = (side: -1 | 1) => ({ fromMm, toMm: Math.min(fromMm + widthMm, deepestMm(side)) });
    return {
      above: bandMeans(a, -1, band(-1), stretches, slideMm),
      below: bandMeans(b, 1, band(1), stretches, 0),
    };
  };
  return (stretch, band) => {
    const bandMm = colourBandsMm[band];
    const steps =
      known.get(band) ??
      stepsBetween(
        colours(clearMm, bandMm),
        colours(edgeFromMm, edgeShare * bandMm),
        beside,
        figure,
      );
    known.set(band, steps);
    return steps[stretch];
  };
}

/** Colours of the stretches on the two sides of a line. */
interface BesideLine {
  readonly above: readonly Lab[];
  readonly below: readonly Lab[];
}

/** The step in every stretch, from all that count of those about it; none count, none is told. */
function stepsBetween(
  wide: BesideLine,
  edge: BesideLine,
  counts: readonly boolean[],
  figure: Lab,
): ColourStep[] {
  const [above, below] = [steadyColours(wide.above, counts), steadyColours(wide.below, counts)];
  const along = (colours: readonly Lab[]) =>
    Float64Array.from(
      colours.filter((_, i) => counts[i]),
      ([l, a, b]) => l * figure[0] + a * figure[1] + b * figure[2],
    );
  const [edgeAbove, edgeBelow] = [along(edge.above), along(edge.below)];
  const stepAbout = (k: number) => {
    const from = Math.max(0, k - alongStretches);
    const to = Math.min(counts.length, k + alongStretches + 1);
    const [first, end] = [above.before[from], above.before[to]];
    if (first === end) return { deltaE: 0, alongDeltaE: 0, besideDeltaE: 0 };
    return partedStep(
      meanColour(above, from, to),
      meanColour(below, from, to),
      commonShift(edgeAbove.subarray(first, end), edgeBelow.subarray(first, end)),
      figure,
    );
  };
  const middles = counts.flatMap((_, k) => (k % alike === 0 ? [k + (alike >> 1)] : []));
  const steps = middles.map((k) => stepAbout(Math.min(k, counts.length - 1)));
  return counts.map((_, k) => steps[Math.floor(k / alike)]);
}

function partedStep(a: Lab, b: Lab, alongStep: number, figure: Lab): ColourStep {
  const step = b.map((x, c) => x - a[c]);
  const part = step.reduce((sum, x, c) => sum + x * figure[c], 0);
  const middle = a.map((x, c) => (x + b[c]) / 2);
  const differing = (d: (c: number) => number) =>
    ciede2000(
      [middle[0] - d(0) / 2, middle[1] - d(1) / 2, middle[2] - d(2) / 2],
      [middle[0] + d(0) / 2, middle[1] + d(1) / 2, middle[2] + d(2) / 2],
    );
  return {
    deltaE: ciede2000(a, b),
    alongDeltaE: differing((c) => alongStep * figure[c]),
    besideDeltaE: differing((c) => step[c] - part * figure[c]),
  };
}

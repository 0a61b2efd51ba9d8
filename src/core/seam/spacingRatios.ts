import type { BandPair } from './bandAmplitudes.js';
import { commonShift } from './commonShift.js';
import { spacingMm } from './spacingMm.js';

/** A ratio is followed over so many stretches to either side (a decimetre each way at 600 mm). */
const alongStretches = 10;
/** Fewer lines than this that cross on the way do not tell how far apart lines are. */
const fewestLines = 3;

/** One stretch of a joint as its lines cross it. */
export interface CrossingLines {
  /** Octaves of the lines; none where no line crosses. */
  readonly bands: readonly BandPair[];
  /** Where the stretch begins and ends in the across-grain coordinate, mm. */
  readonly fromUMm: number;
  readonly toUMm: number;
}

/**
 * How far apart the lines are on B over A in every stretch of a joint: the ratio that narrow and wide
 * lines along it have in common (`commonShift` of the logarithms).
 *
 * Rings differ in width by a third from one to the next, so the lines that meet at one place mostly
 * differ though nothing was cut; another board, or wood nearer the pith, has them closer all along.
 *
 * @returns null where no line crosses, or fewer than three on the way.
 */
export function spacingRatios(stretches: readonly CrossingLines[]): (number | null)[] {
  const [a, b] = (['A', 'B'] as const).map((side) =>
    stretches.map(({ bands }) => (bands.length > 0 ? Math.log(spacingMm(bands, side)) : null)),
  );
  return stretches.map(({ bands }, k) => {
    if (bands.length === 0) return null;
    const from = Math.max(0, k - alongStretches);
    const about = stretches.slice(from, k + alongStretches + 1);
    const told = (values: readonly (number | null)[]) =>
      values.slice(from, k + alongStretches + 1).filter((value) => value !== null);
    const [here, there] = [told(a), told(b)];
    const spacing = Math.exp([...here, ...there].reduce((s, x) => s + x, 0) / (2 * here.length));
    const crossedMm = about.reduce(
      (sum, { bands, fromUMm, toUMm }) => sum + (bands.length > 0 ? toUMm - fromUMm : 0),
      0,
    );
    return crossedMm < fewestLines * spacing ? null : Math.exp(commonShift(here, there));
  });
}

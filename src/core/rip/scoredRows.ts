import { jointMeasures, lineMeasures } from '../seam/lineMeasures.js';
import { type ReadSide, readSide } from '../seam/readSide.js';
import type { SeamWood } from '../seam/seamWood.js';
import { joinedWood } from './joinedWood.js';
import type { PanelRows } from './panelRows.js';
import { withThinLine } from './thinLine.js';

/** The two edges of a joint and the wood behind them. */
interface Joined {
  readonly wood: SeamWood;
  readonly above: ReadSide;
  readonly below: ReadSide;
}

/** Joints whose wood is kept at hand: each takes some megabytes. */
const mostKept = 12;

/**
 * The reading of a score: for every joint the picture is put together and read as that of a
 * finished panel is, the boards' own lines too. A few times slower than `panelRows`, which reads
 * what many joints share once.
 *
 * @param quick the quick reading of the same panel.
 */
export function scoredRows(wood: SeamWood, windowMm: number, quick: PanelRows): PanelRows {
  const known = new Map<string, Joined>();
  const joinedAt = (a: number, b: number): Joined => {
    const key = `${a.toFixed(4)} ${b.toFixed(4)}`;
    const joined = known.get(key) ?? joinedOf(joinedWood(wood, a, b));
    // The one used last goes to the end; the one longest unused is let go.
    known.delete(key);
    known.set(key, joined);
    const [oldest] = known.keys();
    if (known.size > mostKept && oldest !== undefined) known.delete(oldest);
    return joined;
  };
  return {
    joint(a, b, slideMm) {
      const { wood: joined, above, below } = joinedAt(a, b);
      const measures = jointMeasures(above, below, windowMm, slideMm, joined.strip);
      return slideMm === 0 ? measures : withThinLine(measures, wood.strip, a, b, slideMm);
    },
    uncutAngles: quick.uncutAngles,
    beside: (a, b, awayMm) => lineMeasures(joinedAt(a, b).wood, awayMm, windowMm),
    besideName: (a, b, awayMm) => `${a.toFixed(4)} ${b.toFixed(4)} ${awayMm}`,
  };
}

function joinedOf(wood: SeamWood): Joined {
  return { wood, above: readSide(wood, 0, -1), below: readSide(wood, 0, 1) };
}

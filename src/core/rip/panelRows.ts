import { carriedProfile } from '../seam/carriedProfile.js';
import { jointMeasures, type LineMeasures, type WindowMeasures } from '../seam/lineMeasures.js';
import type { ReadSide } from '../seam/readSide.js';
import type { SeamWood } from '../seam/seamWood.js';
import { defaultSideWindow, type SideAngles, sideField } from '../seam/sideField.js';
import { withThinLine } from './thinLine.js';

/**
 * Lines of an uncut panel as the joints that cuts would make take them. The frame is a seam's: for
 * crosscuts "rows" are columns of the panel.
 */
export interface PanelRows {
  /**
   * The joint that the edges at etaA and etaB make: side A keeps what has the smaller eta. Half a
   * ring line left at the joint is a thin line.
   *
   * @param slideMm how far side A is moved in +xi.
   */
  joint(etaAMm: number, etaBMm: number, slideMm: number): LineMeasures;
  /**
   * Grain directions beside the same two edges while the panel is whole, per stretch: steadier than
   * what each piece alone shows of it.
   */
  uncutAngles(line: LineMeasures, etaAMm: number, etaBMm: number): UncutAngles[];
  /**
   * A line of the board by itself, beside a joint that would be.
   *
   * @param awayMm how far from the joint's edge: + the line lies on side B of it, - on side A. The
   *   side that faces the joint is read up to the edge only, as in a score of the glued panel.
   */
  beside(etaAMm: number, etaBMm: number, awayMm: number): LineMeasures;
  /** Joints with the same name of such a line share it. */
  besideName(etaAMm: number, etaBMm: number, awayMm: number): string;
}

/** Grain directions of one stretch above and below a cut, rad. */
export type UncutAngles = Pick<WindowMeasures, 'angleARad' | 'angleBRad'>;

/** Wood this near to the joint is not looked at, mm; `readSide` keeps the same distance. */
const clearOfJointMm = 1.2;
/** Beyond this the joint is out of sight: such a line serves joints on either side, mm. */
const outOfSightMm = 16.2;

const wayOf = { a: -1, b: 1 } as const;
type SideName = keyof typeof wayOf;
type Reading = Pick<ReadSide, 'field' | 'profile'>;

/**
 * The quick reading: each side of a line is read once, however many joints it takes part in, on the
 * panel as it lies uncut. The wood beyond an edge so has a say in the direction read beside it,
 * which it has not in a photo of the joint: V differs by about a tenth from `scoredRows`.
 *
 * @param wood the panel as one strip: its reach A is where eta = 0 lies. @param windowMm length of
 *   a stretch, mm: a degree of the eye's view.
 */
export function panelRows(wood: SeamWood, windowMm: number): PanelRows {
  const known = new Map<string, Reading>();
  const once = (key: string, read: () => Reading): Reading => {
    const reading = known.get(key) ?? read();
    known.set(key, reading);
    return reading;
  };
  const nameOf = (etaMm: number) => Math.round(etaMm * 1e4);
  const side = (name: SideName, etaMm: number, roomMm = Number.POSITIVE_INFINITY): ReadSide => {
    const deepestMm = Math.min(defaultSideWindow.deepestMm, roomMm);
    const read = once(`${name} ${nameOf(etaMm)} ${deepestMm.toFixed(2)}`, () => {
      const window = { ...defaultSideWindow, deepestMm };
      const field = sideField(wood.blocks, wood.strip.reachAMm, etaMm, wayOf[name], window);
      const profile = carriedProfile(wood.strip, field, etaMm, wayOf[name]);
      return { field, profile };
    });
    return { ...read, lab: wood.lab, etaMm };
  };
  return {
    joint(a, b, slideMm) {
      const glued = a === b ? wood.strip : undefined;
      const measures = jointMeasures(side('a', a), side('b', b), windowMm, slideMm, glued);
      return withThinLine(measures, wood.strip, a, b, slideMm);
    },
    uncutAngles(line, a, b) {
      const [above, below] = [side('a', a).field, side('b', b).field];
      const at = ({ angleRad, stepMm }: SideAngles, atMm: number) =>
        angleRad[Math.min(angleRad.length - 1, Math.floor(atMm / stepMm))];
      return line.windows.map(({ atMm }) => ({
        angleARad: at(above, atMm),
        angleBRad: at(below, atMm),
      }));
    },
    beside(etaAMm, etaBMm, awayMm) {
      const etaMm = besideMm(etaAMm, etaBMm, awayMm);
      const roomMm = Math.abs(awayMm) - clearOfJointMm;
      const a = side('a', etaMm, awayMm > 0 ? roomMm : undefined);
      const b = side('b', etaMm, awayMm < 0 ? roomMm : undefined);
      return jointMeasures(a, b, windowMm, 0, wood.strip);
    },
    besideName: (a, b, awayMm) =>
      `${nameOf(besideMm(a, b, awayMm))} ${Math.abs(awayMm) > outOfSightMm ? '' : awayMm}`,
  };
}

/** Where on the uncut panel a line so far from the joint lies, mm. */
export function besideMm(etaAMm: number, etaBMm: number, awayMm: number): number {
  return (awayMm < 0 ? etaAMm : etaBMm) + awayMm;
}

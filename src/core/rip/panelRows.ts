import { carriedProfile } from '../seam/carriedProfile.js';
import { glueRidge } from '../seam/glueRidge.js';
import { jointMeasures, type LineMeasures, type WindowMeasures } from '../seam/lineMeasures.js';
import type { LineSide, SeamWood, SideReading } from '../seam/seamWood.js';
import { defaultSideWindow, type SideField, sideField } from '../seam/sideField.js';
import { edgeReading } from './edgeReading.js';
import { joinedStrip } from './joinedStrip.js';

/**
 * Lines of an uncut panel, each side of each read once, however many joints it takes part in.
 * The frame is a seam's: for crosscuts "rows" are columns of the panel.
 */
export interface PanelRows {
  readonly wood: SeamWood;
  /** Length of a stretch, mm: a degree of the eye's view. */
  readonly windowMm: number;
  /**
   * The joint that the edges at etaA and etaB make: side A keeps what has the smaller eta. Each
   * edge is read from its own piece alone; half a ring line left at the joint is a thin line.
   *
   * @param slideMm how far side A is moved in +xi.
   */
  joint(etaAMm: number, etaBMm: number, slideMm?: number): LineMeasures;
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
  beside(etaMm: number, awayMm: number): LineMeasures;
}

/** Grain directions of one stretch above and below a cut, rad. */
export type UncutAngles = Pick<WindowMeasures, 'angleARad' | 'angleBRad'>;

/** Wood this near to the joint is not looked at, mm; `readSide` keeps the same distance. */
const clearOfJointMm = 1.2;

const wayOf = { a: -1, b: 1 } as const;
type SideName = keyof typeof wayOf;

/** @param wood the panel as one strip: its reach A is where eta = 0 lies. */
export function panelRows(wood: SeamWood, windowMm: number): PanelRows {
  const known = new Map<string, SideReading>();
  const once = (key: string, read: () => SideReading): SideReading => {
    const reading = known.get(key) ?? read();
    known.set(key, reading);
    return reading;
  };
  const nameOf = (etaMm: number) => Math.round(etaMm * 1e4);
  const edge = (name: SideName, etaMm: number): LineSide => {
    const read = () => edgeReading(wood.strip, etaMm, wayOf[name]);
    return { wood, etaMm, reading: once(`edge ${name} ${nameOf(etaMm)}`, read) };
  };
  const fieldOf = (name: SideName, etaMm: number, deepestMm = defaultSideWindow.deepestMm) => {
    const window = { ...defaultSideWindow, deepestMm };
    return sideField(wood.blocks, wood.strip.reachAMm, etaMm, wayOf[name], window);
  };
  const side = (name: SideName, etaMm: number, roomMm = Number.POSITIVE_INFINITY): LineSide => {
    const deepestMm = Math.min(defaultSideWindow.deepestMm, roomMm);
    const reading = once(`${name} ${nameOf(etaMm)} ${deepestMm.toFixed(2)}`, () => {
      const field = fieldOf(name, etaMm, deepestMm);
      return { field, profile: carriedProfile(wood.strip, field, etaMm, wayOf[name]) };
    });
    return { wood, etaMm, reading };
  };
  return {
    wood,
    windowMm,
    joint(a, b, slideMm = 0) {
      const measures = jointMeasures(edge('a', a), edge('b', b), windowMm, slideMm);
      return withThinLine(measures, joinedStrip(wood.strip, a, b, slideMm));
    },
    uncutAngles(line, a, b) {
      const [above, below] = [fieldOf('a', a), fieldOf('b', b)];
      const at = ({ angleRad, stepMm }: SideField, atMm: number) =>
        angleRad[Math.min(angleRad.length - 1, Math.floor(atMm / stepMm))];
      return line.windows.map(({ atMm }) => ({
        angleARad: at(above, atMm),
        angleBRad: at(below, atMm),
      }));
    },
    beside(eta, awayMm) {
      const roomMm = Math.abs(awayMm) - clearOfJointMm;
      const a = side('a', eta, awayMm > 0 ? roomMm : undefined);
      const b = side('b', eta, awayMm < 0 ? roomMm : undefined);
      return jointMeasures(a, b, windowMm);
    },
  };
}

/** The thin line that a score would read along the joint, from the picture put together. */
function withThinLine(line: LineMeasures, picture: SeamWood['strip']): LineMeasures {
  const stretchMm = (line.u.length * line.profileA.stepMm) / line.windows.length;
  const windows = line.windows.map((window, k) => ({
    ...window,
    ridge: glueRidge(picture, 0, k * stretchMm, (k + 1) * stretchMm),
  }));
  return { ...line, windows };
}

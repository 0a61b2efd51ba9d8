import { carriedProfile } from '../seam/carriedProfile.js';
import { jointMeasures, type LineMeasures } from '../seam/lineMeasures.js';
import type { LineSide, SeamWood, SideReading } from '../seam/seamWood.js';
import { defaultSideWindow, sideField } from '../seam/sideField.js';

/**
 * Lines of an uncut panel, each side of each read once, however many joints it takes part in.
 * The frame is a seam's: for crosscuts "rows" are columns of the panel.
 */
export interface PanelRows {
  readonly wood: SeamWood;
  /** Length of a stretch, mm: a degree of the eye's view. */
  readonly windowMm: number;
  /**
   * The joint that the edges at etaA and etaB make: side A keeps what has the smaller eta.
   *
   * @param slideMm how far side A is moved in +xi.
   */
  joint(etaAMm: number, etaBMm: number, slideMm?: number): LineMeasures;
  /**
   * A line of the board by itself, beside a joint that would be.
   *
   * @param awayMm how far from the joint's edge: + the line lies on side B of it, - on side A. The
   *   side that faces the joint is read up to the edge only, as in a score of the glued panel.
   */
  beside(etaMm: number, awayMm: number): LineMeasures;
}

/** Wood this near to the joint is not looked at, mm; `readSide` keeps the same distance. */
const clearOfJointMm = 1.2;

/** @param wood the panel as one strip: its reach A is where eta = 0 lies. */
export function panelRows(wood: SeamWood, windowMm: number): PanelRows {
  const read = { a: new Map<string, SideReading>(), b: new Map<string, SideReading>() };
  const deepestOf = (roomMm: number) => Math.min(defaultSideWindow.deepestMm, roomMm);
  const side = (name: 'a' | 'b', etaMm: number, roomMm = Number.POSITIVE_INFINITY): LineSide => {
    const deepestMm = deepestOf(roomMm);
    const key = `${Math.round(etaMm * 1e4)} ${deepestMm.toFixed(2)}`;
    let reading = read[name].get(key);
    if (!reading) {
      const way = name === 'a' ? -1 : 1;
      const window = { ...defaultSideWindow, deepestMm };
      const field = sideField(wood.blocks, wood.strip.reachAMm, etaMm, way, window);
      reading = { field, profile: carriedProfile(wood.strip, field, etaMm, way) };
      read[name].set(key, reading);
    }
    return { wood, etaMm, reading };
  };
  return {
    wood,
    windowMm,
    joint: (a, b, slideMm = 0) => jointMeasures(side('a', a), side('b', b), windowMm, slideMm),
    beside(eta, awayMm) {
      const roomMm = Math.abs(awayMm) - clearOfJointMm;
      const a = side('a', eta, awayMm > 0 ? roomMm : undefined);
      const b = side('b', eta, awayMm < 0 ? roomMm : undefined);
      return jointMeasures(a, b, windowMm);
    },
  };
}

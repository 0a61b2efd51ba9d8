import { jointMeasures, type LineMeasures, readSide } from '../seam/lineMeasures.js';
import type { LineSide, SeamWood, SideReading } from '../seam/seamWood.js';

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
  /** The line itself, uncut: the board's own figure there. */
  uncut(etaMm: number): LineMeasures;
}

/** @param wood the panel as one strip: its reach A is where eta = 0 lies. */
export function panelRows(wood: SeamWood, windowMm: number): PanelRows {
  const read = { a: new Map<number, SideReading>(), b: new Map<number, SideReading>() };
  const side = (name: 'a' | 'b', etaMm: number): LineSide => {
    const key = Math.round(etaMm * 1e4);
    let reading = read[name].get(key);
    if (!reading) {
      reading = readSide({ wood, etaMm }, name === 'a' ? -1 : 1, false);
      read[name].set(key, reading);
    }
    return { wood, etaMm, reading };
  };
  return {
    wood,
    windowMm,
    joint: (a, b, slideMm = 0) => jointMeasures(side('a', a), side('b', b), windowMm, slideMm),
    uncut: (eta) => jointMeasures(side('a', eta), side('b', eta), windowMm),
  };
}

import type { LabPlanes } from '../colour/labPlanes.js';
import type { Plane } from '../image/plane.js';
import { blockRowsPx, type CarriedBlocks, carriedBlocks } from './carriedBlocks.js';
import type { SeamFrame } from './seamFrame.js';
import { type SeamStrip, seamStrip } from './seamStrip.js';

/** The panel's planes that a seam is measured on; made by `panelPlanes`. */
export interface PanelPlanes {
  readonly pxPerMm: number;
  readonly logLuminance: Plane;
  /** L*, a*, b* in patches of about a millimetre. */
  readonly lab: LabPlanes;
}

/** The wood on both sides of one seam, read once and measured at many lines. */
export interface SeamWood {
  readonly frame: SeamFrame;
  readonly strip: SeamStrip;
  readonly blocks: CarriedBlocks;
  readonly lab: readonly [SeamStrip, SeamStrip, SeamStrip];
}

/**
 * Reads the wood beside a seam.
 *
 * @param reachAMm, reachBMm how far each board goes from the seam, mm; capped at `maxReachMm`.
 * @param maxReachMm default 32 mm: half a degree at 3.7 m.
 */
export function seamWood(
  planes: PanelPlanes,
  frame: SeamFrame,
  reachAMm: number,
  reachBMm: number,
  maxReachMm = 32,
): SeamWood {
  const unit = blockRowsPx(planes.pxPerMm);
  const whole = (mm: number) => (Math.floor((mm * planes.pxPerMm) / unit) * unit) / planes.pxPerMm;
  const a = whole(Math.min(reachAMm, maxReachMm));
  const b = whole(Math.min(reachBMm, maxReachMm));
  const strip = seamStrip(planes.logLuminance, planes.pxPerMm, frame, planes.pxPerMm, a, b);
  const blocks = sideBlocks(strip);
  const labPxPerMm = planes.pxPerMm / planes.lab.reduceBy;
  const colour = (plane: Plane) => seamStrip(plane, labPxPerMm, frame, labPxPerMm, a, b);
  const { lightness, a: aStar, b: bStar } = planes.lab;
  return { frame, strip, blocks, lab: [colour(lightness), colour(aStar), colour(bStar)] };
}

/** Each side's own gradient products, one above the other. */
export function sideBlocks({ plane, pxPerMm, reachAMm }: SeamStrip): CarriedBlocks {
  const seamRow = Math.round(reachAMm * pxPerMm);
  const sides = [rowsOf(plane, 0, seamRow), rowsOf(plane, seamRow, plane.height)]
    .filter((side) => side.height >= blockRowsPx(pxPerMm))
    .map((side) => carriedBlocks(side, pxPerMm));
  const joined = (pick: (side: CarriedBlocks) => Float32Array) => {
    const out = new Float32Array(sides.reduce((n, side) => n + pick(side).length, 0));
    let at = 0;
    for (const side of sides) {
      out.set(pick(side), at);
      at += pick(side).length;
    }
    return out;
  };
  return {
    width: sides[0].width,
    height: sides.reduce((n, side) => n + side.height, 0),
    stepMm: sides[0].stepMm,
    jxx: joined((side) => side.jxx),
    jxy: joined((side) => side.jxy),
    jyy: joined((side) => side.jyy),
    uncarried: joined((side) => side.uncarried),
  };
}

function rowsOf({ width, data }: Plane, from: number, to: number): Plane {
  return { width, height: to - from, data: data.subarray(from * width, to * width) };
}

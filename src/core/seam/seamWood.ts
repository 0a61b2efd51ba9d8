import type { LabPlanes } from '../colour/labPlanes.js';
import { gaussianGradient } from '../filter/gaussianGradient.js';
import { type BlockTensor, blockTensor } from '../grain/blockTensor.js';
import type { Plane } from '../image/plane.js';
import type { CarriedProfile } from './carriedProfile.js';
import type { SeamFrame } from './seamFrame.js';
import { type SeamStrip, seamStrip } from './seamStrip.js';
import type { SideField } from './sideField.js';

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
  readonly blocks: BlockTensor;
  readonly lab: readonly [SeamStrip, SeamStrip, SeamStrip];
}

/** What one side says at its line: its grain, and its wood carried to the line. */
export interface SideReading {
  readonly field: SideField;
  readonly profile: CarriedProfile;
}

/** Where one side of a joint ends: a line of some wood; side A keeps what has the smaller eta. */
export interface LineSide {
  readonly wood: SeamWood;
  readonly etaMm: number;
  /** This side as `readSide` read it before, for a line that takes part in many joints. */
  readonly reading?: SideReading;
}

/** Scale at which grain direction is read: the ring lines need no more. */
const grainPxPerMm = 3.5;

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
  const a = Math.min(reachAMm, maxReachMm);
  const b = Math.min(reachBMm, maxReachMm);
  const strip = seamStrip(planes.logLuminance, planes.pxPerMm, frame, planes.pxPerMm, a, b);
  const blockPx = Math.max(1, Math.round(planes.pxPerMm));
  const sigmaPx = Math.max(1, (1.2 / grainPxPerMm) * planes.pxPerMm);
  const blocks = blockTensor(gaussianGradient(strip.plane, sigmaPx), blockPx, planes.pxPerMm);
  const labPxPerMm = planes.pxPerMm / planes.lab.reduceBy;
  const colour = (plane: Plane) => seamStrip(plane, labPxPerMm, frame, labPxPerMm, a, b);
  const { lightness, a: aStar, b: bStar } = planes.lab;
  return { frame, strip, blocks, lab: [colour(lightness), colour(aStar), colour(bStar)] };
}

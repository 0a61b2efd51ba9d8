import { createRandom } from '../../src/core/random/createRandom.js';
import { acrossGrainCoordinate } from '../../src/core/seam/acrossGrainCoordinate.js';
import type { CarriedProfile } from '../../src/core/seam/carriedProfile.js';
import type { LineMeasures } from '../../src/core/seam/lineMeasures.js';
import type { SeamFrame } from '../../src/core/seam/seamFrame.js';
import type { SideField } from '../../src/core/seam/sideField.js';
import { wrapHalfTurnRad } from '../../src/core/units/wrapHalfTurnRad.js';
import type { PanelTruth } from '../../src/core/wood/panelTruth.js';

/** Age along one edge of a joint, with its slopes along the joint and across it (A to B). */
export interface EdgeTruth {
  readonly ageMm: Float64Array;
  readonly along: Float64Array;
  readonly across: Float64Array;
  readonly ring: Float64Array;
}

/** The model's exact rings along one edge, one entry per profile sample. */
export function edgeTruth(
  truth: PanelTruth,
  piece: number,
  frame: SeamFrame,
  stepMm: number,
): EdgeTruth {
  const at = (xi: number, eta: number) => {
    const [x, y] = [frame.originXMm + xi * frame.ex, frame.originYMm + xi * frame.ey];
    return truth.ringLineOfPiece(piece, x + eta * frame.nx, y + eta * frame.ny);
  };
  const n = Math.floor(frame.lengthMm / stepMm);
  const h = 0.05;
  const each = (f: (xi: number) => number) =>
    Float64Array.from({ length: n }, (_, i) => f((i + 0.5) * stepMm));
  return {
    ageMm: each((xi) => at(xi, 0).ageMm),
    along: each((xi) => (at(xi + h, 0).ageMm - at(xi - h, 0).ageMm) / (2 * h)),
    across: each((xi) => (at(xi, h).ageMm - at(xi, -h).ageMm) / (2 * h)),
    ring: each((xi) => at(xi, 0).ring),
  };
}

/** What of a joint's reading is put in place of what the photo gave. */
export interface Exact {
  readonly directions: boolean;
  readonly lines: boolean;
}

/** Noise in exact lines, as a share of what two strangers would differ by. */
const discord = 0.05;
/** An exact direction's stated error, rad (0.1 deg). */
const exactSeRad = 0.1 * (Math.PI / 180);

/** A joint as read, with exact directions or exact lines in the place of those read. */
export function exactLine(
  read: LineMeasures,
  a: EdgeTruth,
  b: EdgeTruth,
  exact: Exact,
): LineMeasures {
  const fieldA = exact.directions ? exactField(read.fieldA, read.profileA.stepMm, a) : read.fieldA;
  const fieldB = exact.directions ? exactField(read.fieldB, read.profileA.stepMm, b) : read.fieldB;
  const profileA = exact.lines ? exactProfile(read.profileA, a, 1) : read.profileA;
  const profileB = exact.lines ? exactProfile(read.profileB, b, 2) : read.profileB;
  const u = acrossGrainCoordinate(fieldA, fieldB, profileA.value.length, profileA.stepMm);
  return { ...read, fieldA, fieldB, profileA, profileB, u };
}

/** Uncut wood read as exactly: edge A against itself. */
export function exactOwn(line: LineMeasures, a: EdgeTruth): LineMeasures {
  return { ...line, profileB: exactProfile(line.profileA, a, 3) };
}

function exactField(read: SideField, stepMm: number, edge: EdgeTruth): SideField {
  const last = edge.along.length - 1;
  const angleRad = read.angleRad.map((_, i) => {
    const k = Math.min(last, Math.round(((i + 0.5) * read.stepMm) / stepMm - 0.5));
    return wrapHalfTurnRad(Math.atan2(edge.along[k], -edge.across[k]));
  });
  return { ...read, angleRad, angleSeRad: angleRad.map(() => exactSeRad) };
}

function exactProfile(read: CarriedProfile, edge: EdgeTruth, seed: number): CarriedProfile {
  const random = createRandom(seed);
  const tone = read.value.map((_, i) => toneOf(edge.ring[Math.min(i, edge.ring.length - 1)]));
  const mean = tone.reduce((sum, v) => sum + v, 0) / tone.length;
  const variance = tone.reduce((sum, v) => sum + (v - mean) ** 2, 0) / tone.length;
  const sd = Math.sqrt((variance * discord) / (1 - discord));
  return { ...read, value: tone.map((v) => v + random.normal(0, sd)) };
}

/** A ring pales and darkens towards its end; each is as dark as its own number says. */
function toneOf(ring: number): number {
  const k = Math.floor(ring);
  return (0.6 + 0.5 * createRandom(k + 5000).next()) * (ring - k) ** 3;
}

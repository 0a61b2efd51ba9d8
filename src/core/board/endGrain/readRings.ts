import type { Plane } from '../../image/plane.js';
import { bandBelow } from './arcShare.js';
import { coarsePiths } from './coarsePith.js';
import { fitFamily } from './fitFamily.js';
import { type FittedRings, fitRings } from './fitRings.js';
import { type RingCell, ringCells } from './ringCells.js';
import type { RingFamily } from './ringFamily.js';
import { slopeSamples } from './slopeSamples.js';

/** The rings of an end, read from a picture that is free of saw marks. */
export interface RingReading {
  readonly fitted: FittedRings;
  readonly cells: readonly RingCell[];
}

const rounds = 4;
const leastShare = 0.15;
/** Cells farther off the family than this (34 deg) are not rings; most cells must be nearer. */
const mostOffRad = 0.6;
const leastAlong = 0.65;
/** Rings that stray more than this are not rings (or a knot), rad. */
const mostWaveRad = 0.2;
/** Slower changes (stain, uneven light) are no rings' borders, mm. */
const slowMm = 1;

/**
 * Finds where the ring normals meet, from the whole picture down: a vote among tried piths out to
 * forty widths, robust least squares on single slopes, then mean directions of cells against
 * circles plus waviness (`fitRings`), until the circles stay.
 */
export function readRings(plane: Plane, pxPerMm: number): RingReading | null {
  const rings = bandBelow(plane, slowMm * pxPerMm);
  const start = roughFamily(rings, pxPerMm);
  const reading = start && settle(rings, pxPerMm, start);
  return reading && isRings(reading) ? reading : null;
}

/**
 * In a ringless picture cells point anywhere: few along the best family, and half of them have a
 * share near 0.
 */
function isRings({ cells, fitted }: RingReading): boolean {
  const shares = cells.map((cell) => cell.share).sort((a, b) => a - b);
  const along = cells.filter(runsAlong).length / Math.max(1, cells.length);
  return (
    shares[shares.length >> 1] > leastShare && along > leastAlong && fitted.waveRad < mostWaveRad
  );
}

/** A crack, a kerf or a smear across the rings is no ring. */
const runsAlong = (cell: RingCell) => Math.abs(cell.offRad) < mostOffRad;

/** Where most slopes point to. */
export function roughFamily(plane: Plane, pxPerMm: number): RingFamily | null {
  const samples = slopeSamples(plane, pxPerMm);
  const candidates = coarsePiths(
    samples,
    samples.weight,
    plane.width / pxPerMm,
    plane.height / pxPerMm,
  );
  const fits = candidates.map(({ family }) => fitFamily(samples, samples.weight, family));
  fits.sort((a, b) => b.share - a.share);
  return fits[0]?.family ?? null;
}

function settle(plane: Plane, pxPerMm: number, start: RingFamily): RingReading | null {
  let family = start;
  const cellMm = Math.max(5, Math.sqrt((plane.width * plane.height) / pxPerMm ** 2 / 320));
  for (let round = 0; ; round++) {
    const cells = ringCells(plane, pxPerMm, family, { cellMm, sigmaMm: 0.3 });
    const fitted = fitRings(cells.filter(runsAlong), family);
    if (!fitted) return null;
    if (round === rounds - 1) return { fitted, cells };
    family = fitted.family;
  }
}

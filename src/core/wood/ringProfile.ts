import { createRandom } from '../random/createRandom.js';
import type { RingTable } from './ringTable.js';
import type { WoodSetting } from './woodSetting.js';

/**
 * Optical density of the wood along the age radius, 0 (palest) to about 1 (darkest), kept as its
 * running integral so that any pixel's footprint is averaged exactly, and the early-wood zone.
 */
export interface RingProfile {
  readonly fromMm: number;
  readonly stepMm: number;
  /** integral[k] = density integrated from fromMm to fromMm + k step, mm. */
  readonly integral: Float64Array;
  /** Share of early wood (0 or 1, soft borders) at each step. */
  readonly early: Float32Array;
}

interface RingShape {
  readonly widthMm: number;
  readonly strength: number;
  readonly lateShare: number;
  readonly earlyMm: number;
  readonly lineMm: number;
}

const smoothStep = (from: number, to: number, x: number) => {
  const t = Math.min(1, Math.max(0, (x - from) / (to - from)));
  return t * t * (3 - 2 * t);
};

/** Density at `x` mm into a ring of the given shape; early wood comes first. */
const densityIn: Readonly<Record<WoodSetting, (x: number, ring: RingShape) => number>> = {
  // Pores open suddenly with the year's first wood and thin out; late wood is even and tan.
  'ring-porous': (x, ring) => {
    const pores =
      smoothStep(0, 0.06, x) * (1 - smoothStep(ring.earlyMm * 0.7, ring.earlyMm * 1.7, x));
    const lateTan = 0.28 * smoothStep(ring.earlyMm, ring.widthMm, x);
    return ring.strength * pores + lateTan;
  },
  // Nearly even wood, a slow darkening, and a thin line where growth stopped.
  'diffuse-porous': (x, ring) => {
    const line = smoothStep(ring.widthMm - 1.6 * ring.lineMm, ring.widthMm - 0.3 * ring.lineMm, x);
    return ring.strength * (0.3 * (x / ring.widthMm) ** 2 + 0.7 * line);
  },
  // Pale early wood shading into dark late wood, which ends at a sharp edge.
  softwood: (x, ring) => {
    const lateMm = ring.lateShare * ring.widthMm;
    const start = ring.widthMm - lateMm;
    const shade = smoothStep(start - 0.4 * ring.widthMm, start + 0.5 * lateMm, x);
    const band = smoothStep(start, start + 0.35 * lateMm, x);
    return ring.strength * (0.3 * shade + 0.7 * band);
  },
};

/**
 * Draws the year-by-year shape of the rings: how sharp, how dark and how wide the dark part is
 * varies from ring to ring, as weather does.
 */
export function ringProfile(rings: RingTable, setting: WoodSetting, seed: number): RingProfile {
  const { innerMm } = rings;
  const fromMm = innerMm[0]!;
  const stepMm = 0.02;
  const count = Math.floor((innerMm[innerMm.length - 1]! - fromMm) / stepMm);
  const integral = new Float64Array(count + 1);
  const early = new Float32Array(count + 1);
  const random = createRandom(seed);
  const density = densityIn[setting];
  let ring = -1;
  let shape: RingShape = { widthMm: 1, strength: 1, lateShare: 0.3, earlyMm: 0.4, lineMm: 0.15 };
  for (let k = 0; k < count; k++) {
    const age = fromMm + (k + 0.5) * stepMm;
    while (ring < 0 || age >= innerMm[ring + 1]!) {
      ring++;
      const widthMm = innerMm[ring + 1]! - innerMm[ring]!;
      shape = {
        widthMm,
        strength: Math.min(1.3, Math.max(0.35, 0.85 + random.normal(0, 0.2))),
        lateShare: Math.min(0.5, Math.max(0.1, random.normal(0.26, 0.08))),
        earlyMm: Math.min(0.5 * widthMm, random.uniform(0.3, 0.6)),
        lineMm: Math.min(0.3 * widthMm, random.uniform(0.12, 0.26)),
      };
    }
    const x = age - innerMm[ring]!;
    integral[k + 1] = integral[k]! + density(x, shape) * stepMm;
    early[k] = 1 - smoothStep(shape.earlyMm * 0.8, shape.earlyMm * 1.2, x);
  }
  return { fromMm, stepMm, integral, early };
}

/** Mean density over ages age - span/2 .. age + span/2, mm. */
export function meanRingDensity(profile: RingProfile, ageMm: number, spanMm: number): number {
  const { integral, stepMm, fromMm } = profile;
  const last = integral.length - 1;
  const span = Math.max(spanMm, stepMm);
  const a = Math.min(last, Math.max(0, (ageMm - span / 2 - fromMm) / stepMm));
  const b = Math.min(last, Math.max(0, (ageMm + span / 2 - fromMm) / stepMm));
  const ia = Math.min(last - 1, a | 0);
  const ib = Math.min(last - 1, b | 0);
  const atA = integral[ia]! + (integral[ia + 1]! - integral[ia]!) * (a - ia);
  const atB = integral[ib]! + (integral[ib + 1]! - integral[ib]!) * (b - ib);
  return (atB - atA) / span;
}

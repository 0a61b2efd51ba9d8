import type { PanelPhoto } from '../../src/core/image/panelPhoto.js';
import { throughCamera } from './accuracyCamera.js';
import {
  crosscutSpecs,
  frontSpecs,
  mixedSpecs,
  type NamedSpec,
  ripSpecs,
  seamlessSpecs,
  shamSpecs,
  slopedRipSpecs,
  slopedSeamlessSpecs,
} from './accuracyDrawn.js';
import { cellErrors, type FaceErrors } from './accuracyGrain.js';
import { strongestP } from './accuracyNull.js';
import { type BenchPanel, benchPxPerMm, drawBench, photoOf } from './accuracyPanels.js';
import { type PlacedSeam, placedSeams } from './accuracyPlaced.js';
import { accuracyReal } from './accuracyReal.js';
import type { AccuracyRow } from './accuracyRow.js';
import { type SeamTrial, seamlessTrial, seamTrial } from './accuracySeams.js';
import { accuracyTrade } from './accuracyTrade.js';
import { type VisibilityPair, visibilityPairs } from './accuracyVisibility.js';
import { drawSecondPanel } from './truth/secondWoodModel.js';

/** What one part of the bench measured. */
export interface Measured {
  /** Rounds that were asked for when this part was measured. */
  readonly rounds?: number;
  readonly faces?: readonly FaceErrors[];
  readonly trials?: readonly SeamTrial[];
  readonly placed?: readonly PlacedSeam[];
  /** V by truth and as scored, panel by panel. */
  readonly pairs?: readonly (readonly VisibilityPair[])[];
  readonly p?: readonly number[];
  readonly rows?: readonly AccuracyRow[];
  readonly notes?: readonly string[];
}

/** Held-out panels of the first wood model. */
const drawn = {
  seamless: (rounds: number) => seamlessSpecs(9000, rounds),
  shams: (rounds: number) => shamSpecs(9100, rounds),
  rips: (rounds: number) => ripSpecs(9200, rounds),
  crosscuts: (rounds: number) => crosscutSpecs(9300, rounds),
  mixed: (rounds: number) => mixedSpecs(9400, rounds),
  fronts: (rounds: number) => frontSpecs(9500, rounds),
  sloped: (rounds: number) => slopedRipSpecs(9600, rounds),
  slopedSeamless: (rounds: number) => slopedSeamlessSpecs(9650, rounds),
};

/** All of them that a run of so many rounds may have drawn, to draw one again. */
export const specsOf = (rounds: number): NamedSpec[] =>
  Object.values(drawn).flatMap((specs) => specs(rounds));

/** Every part, by name; rounds = boards of each setting and cut. */
export const parts = {
  seamless: (rounds: number) => seamless(rounds),
  shams: (rounds: number) => shams(rounds),
  rips: (rounds: number) => cutAndPlaced(drawn.rips(rounds)),
  crosscuts: (rounds: number) => cutAndPlaced(drawn.crosscuts(half(rounds))),
  mixed: (rounds: number) => found(drawn.mixed(half(rounds))),
  fronts: (rounds: number) => found(drawn.fronts(half(rounds))),
  sloped: (rounds: number) => found(drawn.sloped(rounds)),
  slopedSeamless: (rounds: number) => found(drawn.slopedSeamless(rounds)),
  trade: (rounds: number): Measured => ({ rows: accuracyTrade(rounds) }),
  second: (rounds: number) =>
    drawnSecond([...ripSpecs(9700, rounds), ...mixedSpecs(9750, half(rounds))]),
  secondSeamless: (rounds: number) => drawnSecond(seamlessSpecs(9800, rounds)),
  camera: (rounds: number) => seenAslant(ripSpecs(9200, half(rounds))),
  cameraSeamless: (rounds: number) => seenAslant(seamlessSpecs(9000, half(rounds))),
  real: (rounds: number): Promise<Measured> => accuracyReal(Math.max(3, Math.round(3 * rounds))),
} satisfies Record<string, (rounds: number) => Measured | Promise<Measured>>;

export type Part = keyof typeof parts;

const half = (rounds: number) => Math.max(1 / 3, rounds / 2);

function seamless(rounds: number): Measured {
  const [faces, trials, p] = [[] as FaceErrors[], [] as SeamTrial[], [] as number[]];
  for (const { name, spec } of drawn.seamless(rounds)) {
    const panel = drawBench(spec);
    const { cut = 'flatsawn', setting } = spec.boards[0];
    faces.push({ cut, setting, cells: cellErrors(panel) });
    p.push(strongestP(panel.photo));
    trials.push(seamlessTrial(name, panel.photo));
  }
  return { faces, trials, p };
}

function shams(rounds: number): Measured {
  const [placed, trials, p] = [[] as PlacedSeam[], [] as SeamTrial[], [] as number[]];
  for (const { name, spec } of drawn.shams(rounds)) {
    const panel = drawBench(spec);
    p.push(strongestP(panel.photo));
    trials.push(seamlessTrial(name, panel.photo));
    placed.push(...placedSeams(panel));
  }
  return { placed, trials, p };
}

/** Found by the finder, and scored once more with the true seams placed by hand. */
function cutAndPlaced(specs: readonly NamedSpec[]): Measured {
  const [placed, trials] = [[] as PlacedSeam[], [] as SeamTrial[]];
  const pairs: VisibilityPair[][] = [];
  for (const { name, spec } of specs) {
    const panel = drawBench(spec);
    const trial = seamTrial(name, panel);
    const own = placedSeams(panel);
    trials.push(trial);
    placed.push(...own);
    pairs.push(visibilityPairs(trial, own));
  }
  return { placed, trials, pairs };
}

function found(specs: readonly NamedSpec[]): Measured {
  return {
    trials: specs.map(({ name, spec }) => seamTrial(name, drawBench(spec))),
  };
}

function drawnSecond(specs: readonly NamedSpec[]): Measured {
  const trials = specs.map(({ name, spec }) => {
    const { image, truth } = drawSecondPanel(spec, { pxPerMm: benchPxPerMm });
    const panel = { photo: photoOf(image, benchPxPerMm), truth, spec };
    return trialOf(`second model, ${name}`, panel, panel.photo);
  });
  return { trials };
}

async function seenAslant(specs: readonly NamedSpec[]): Promise<Measured> {
  const trials: SeamTrial[] = [];
  for (const [i, { name, spec }] of specs.entries()) {
    const panel = drawBench(spec);
    const photo = await throughCamera(panel, 9900 + i);
    trials.push(trialOf(`camera, ${name}`, panel, photo));
  }
  return { trials };
}

function trialOf(name: string, panel: BenchPanel, photo: PanelPhoto): SeamTrial {
  return panel.truth.seams.length > 0 ? seamTrial(name, panel, photo) : seamlessTrial(name, photo);
}

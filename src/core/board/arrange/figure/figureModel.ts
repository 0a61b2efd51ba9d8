import type { FigureWindow } from './figureWindows.js';

/** How one kind of agreement is spread in one class of stretches. */
interface Spread {
  readonly mean: number;
  readonly variance: number;
}

/** One kind of agreement: where it counts, its classes of stretches and their limits. */
interface Agreement {
  readonly of: (window: FigureWindow) => number | null;
  readonly classOf: (window: FigureWindow) => number;
  /** Neighbours differ by nothing on the mean. */
  readonly isCentred: boolean;
}

const deg = Math.PI / 180;
const classes = 4;
const within = (value: number, limits: readonly number[]) =>
  limits.filter((limit) => value >= limit).length;

const agreements: readonly Agreement[] = [
  {
    of: (w) => (w.isAxis || w.steepRad > 5 * deg ? null : w.turnRad),
    classOf: (w) => within(w.bendRad, [0.5 * deg, 1.5 * deg, 4 * deg]),
    isCentred: true,
  },
  {
    of: (w) => (w.isAxis ? null : w.tone),
    classOf: (w) => within(w.steepRad, [1.5 * deg, 3 * deg, 6 * deg]),
    isCentred: true,
  },
  {
    of: (w) => w.lines,
    classOf: (w) => (w.isAxis ? 3 : within(w.slantRad, [1 * deg, 2.5 * deg])),
    isCentred: false,
  },
];

/**
 * A class of stretches with few examples inside the boards is filled up to so many with what
 * strangers do there: what was not seen inside a board cannot speak for or against a joint.
 */
const borrowed = 20;
/** One stretch may speak against a joint by no more than this (a knot, a scratch). */
const mostAgainst = 1.5;
const mostAgainstAtAxis = 0.5;

/** What agreement looks like within these boards, and between boards laid at random. */
export interface FigureModel {
  readonly neighbours: readonly (readonly Spread[])[];
  readonly strangers: readonly (readonly Spread[])[];
  /** Mean and least usual log ratio of the boards' own lines. */
  readonly own: number;
}

/**
 * Learns from the boards themselves: lines inside a board, with as much width left out as a joint
 * would lose, are what true neighbours look like; edges of different boards are strangers.
 */
export function figureModel(
  insideBoards: readonly (readonly FigureWindow[])[],
  betweenBoards: readonly (readonly FigureWindow[])[],
): FigureModel {
  const strangers = agreements.map((agreement) => spreadsOf(betweenBoards.flat(), agreement));
  const neighbours = agreements.map((agreement, k) =>
    spreadsOf(insideBoards.flat(), agreement, strangers[k]),
  );
  const model = { neighbours, strangers, own: 0 };
  const ratios = insideBoards.map((windows) => figureLogRatio(model, windows));
  const own = ratios.length > 0 ? ratios.reduce((a, b) => a + b, 0) / ratios.length : 0;
  return { ...model, own };
}

/** Log of how much likelier this agreement is between neighbours than between strangers. */
export function figureLogRatio(model: FigureModel, windows: readonly FigureWindow[]): number {
  let sum = 0;
  for (const window of windows) {
    const least = window.isAxis ? -mostAgainstAtAxis : -mostAgainst;
    agreements.forEach(({ of, classOf, isCentred }, k) => {
      const value = of(window);
      if (value === null || Number.isNaN(value)) return;
      const near = model.neighbours[k][classOf(window)];
      const far = model.strangers[k][classOf(window)];
      const ratio = isCentred
        ? logLikelihood(value, 0, near.variance) -
          logLikelihood(value, 0, Math.max(1.05 * near.variance, far.variance))
        : logLikelihood(value, near.mean, near.variance) -
          logLikelihood(value, far.mean, far.variance);
      sum += Math.max(least, ratio);
    });
  }
  return sum;
}

/** Student's t with 4 degrees of freedom: a few wild stretches do not rule. */
function logLikelihood(value: number, mean: number, variance: number): number {
  return -0.5 * Math.log(variance) - 2.5 * Math.log(1 + (value - mean) ** 2 / (4 * variance));
}

/** @param unknown per class: what is taken where there are no examples; default all of them. */
function spreadsOf(
  windows: readonly FigureWindow[],
  { of, classOf }: Agreement,
  unknown?: readonly Spread[],
): Spread[] {
  const values = Array.from({ length: classes }, (): number[] => []);
  for (const window of windows) {
    const value = of(window);
    if (value !== null && !Number.isNaN(value)) values[classOf(window)].push(value);
  }
  const all = spreadOf(values.flat());
  return values.map((examples, kind) => {
    const own = spreadOf(examples);
    const other = unknown?.[kind] ?? all;
    const share = examples.length / (examples.length + borrowed);
    return {
      mean: share * own.mean + (1 - share) * other.mean,
      variance: share * own.variance + (1 - share) * other.variance,
    };
  });
}

function spreadOf(values: readonly number[]): Spread {
  if (values.length === 0) return { mean: 0, variance: 1e-6 };
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const variance = values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / values.length;
  return { mean, variance: Math.max(variance, 1e-9) };
}

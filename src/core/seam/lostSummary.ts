import { evenSteps } from '../statistics/evenSteps.js';
import { middleHalf } from './middleHalf.js';

/** Width lost, slide and wedge as their joint probability has them. */
export interface LostSummary {
  /** Width lost at the middle of the joint. */
  readonly lostMm: number;
  readonly lostSeMm: number;
  readonly slideMm: number;
  readonly slideSeMm: number;
  /** How much more was lost at the joint's second end (right, or bottom) than at its first. */
  readonly wedgeMm: number;
  readonly wedgeSeMm: number;
  readonly correlation: number;
  /** The best single pair, and the best pair of nothing slid, without a wedge. */
  readonly best: { readonly lostMm: number; readonly slideMm: number };
  readonly bestUnslidMm: number;
}

/** A joint is weighed in so many equal parts along it: a wedge is a width that grows from part to part. */
export const partsOfLine = 8;

/** First sample, of so many along the joint, that lies beyond this part. */
export const endOfPart = (part: number, samples: number) =>
  Math.ceil(((part + 1) * samples) / partsOfLine);

/** Scale of the Cauchy prior on the slide, mm: a maker slides pieces little unless on purpose. */
const slidePriorMm = 1;
/**
 * Scale of the Cauchy prior on the wedge, from end to end, mm (a hundredth of an inch): edges are
 * dressed to meet along their whole length. An assumption.
 */
const wedgePriorMm = 0.25;
const widestWedgeMm = 2;
const wedgeStepMm = 0.25;
/**
 * A slide's stated error over half of the middle 68 % of what the photo allows. The prior's long
 * tails make the spread itself say too much; the factor was fitted on drawn rips that the bench
 * does not use (seeds 400 to 489).
 */
const middleToSe = 0.85;

/**
 * Mean and spread of (g, u, w) under P(g, u, w) = exp(sum over parts of L_part(g + w t, u)) times the
 * priors, with t from -1/2 to 1/2 along the joint. Slide and wedge state their middle 68 %. A ridge
 * (6 mm lost, or 4 mm and a slide of 12 mm) shows as a wide error bar.
 *
 * @param gs widths and @param us slides of the grid, mm, even steps.
 * @param logs log likelihood of each part: index (g * us.length + u) * `partsOfLine` + part.
 * @returns with `top`, index g * us.length + u of the best pair without a wedge.
 */
export function lostSummary(
  gs: readonly number[],
  us: readonly number[],
  logs: Float64Array,
): LostSummary & { readonly top: number } {
  const wedges = evenSteps(-widestWedgeMm, widestWedgeMm, wedgeStepMm);
  const each = wedges.map((wedgeMm) => withWedge(gs, us, logs, wedgeMm));
  const straight = each[wedges.indexOf(0)];
  const top = indexOfMost(straight);
  const unslid = us.findIndex((u) => Math.abs(u) < 1e-9);
  const topUnslid = indexOfMost(straight, unslid, us.length);
  const most = Math.max(...each.map((logP) => logP[indexOfMost(logP)]));
  const alongSlides = new Float64Array(us.length);
  const alongWedges = new Float64Array(wedges.length);
  let [w, mg, mu, mw, gg, uu, gu] = [0, 0, 0, 0, 0, 0, 0];
  each.forEach((logP, n) => {
    for (let i = 0; i < logP.length; i++) {
      const [j, k] = [Math.floor(i / us.length), i % us.length];
      const q = Math.exp(logP[i] - most);
      w += q;
      alongSlides[k] += q;
      alongWedges[n] += q;
      mg += q * gs[j];
      mu += q * us[k];
      mw += q * wedges[n];
      gg += q * gs[j] ** 2;
      uu += q * us[k] ** 2;
      gu += q * gs[j] * us[k];
    }
  });
  const [lostMm, slideMm] = [mg / w, mu / w];
  const lostSeMm = Math.sqrt(Math.max(0, gg / w - lostMm ** 2));
  const slideSdMm = Math.sqrt(Math.max(0, uu / w - slideMm ** 2));
  return {
    lostMm,
    lostSeMm,
    slideMm,
    slideSeMm: middleToSe * middleHalf(us, alongSlides),
    wedgeMm: mw / w,
    wedgeSeMm: middleHalf(wedges, alongWedges),
    correlation: (gu / w - lostMm * slideMm) / Math.max(1e-9, lostSeMm * slideSdMm),
    best: { lostMm: gs[Math.floor(top / us.length)], slideMm: us[top % us.length] },
    bestUnslidMm: gs[Math.floor(topUnslid / us.length)],
    top,
  };
}

/** ln P of every (g, u) when wedgeMm more is lost at the far end; beyond the grid its end counts. */
function withWedge(
  gs: readonly number[],
  us: readonly number[],
  logs: Float64Array,
  wedgeMm: number,
): Float64Array {
  const logP = new Float64Array(gs.length * us.length);
  const stepMm = gs[1] - gs[0];
  const rowSize = us.length * partsOfLine;
  for (let part = 0; part < partsOfLine; part++) {
    const shift = (wedgeMm * ((part + 0.5) / partsOfLine - 0.5)) / stepMm;
    for (let j = 0; j < gs.length; j++) {
      const at = Math.min(gs.length - 1, Math.max(0, j + shift));
      const lower = Math.min(gs.length - 2, Math.floor(at));
      const share = at - lower;
      for (let k = 0; k < us.length; k++) {
        const i = lower * rowSize + k * partsOfLine + part;
        logP[j * us.length + k] += (1 - share) * logs[i] + share * logs[i + rowSize];
      }
    }
  }
  const wedgePrior = Math.log1p((wedgeMm / wedgePriorMm) ** 2);
  const slidePrior = us.map((u) => Math.log1p((u / slidePriorMm) ** 2));
  return logP.map((log, i) => log - wedgePrior - slidePrior[i % us.length]);
}

/** Index of the largest of the values `first`, `first` + `step` and so on. */
function indexOfMost(values: Float64Array, first = 0, step = 1): number {
  let best = first;
  for (let i = first; i < values.length; i += step) if (values[i] > values[best]) best = i;
  return best;
}

import type { KerfBand } from './divideAxis.js';
import type { ExactLayout, ExactStrip } from './exactLayout.js';
import type { SawStep, WorkStep } from './workSteps.js';

/** A pass over the saw with its number, its band on the panel and the strip it parts. */
export interface NumberedCut {
  readonly n: number;
  readonly step: SawStep;
  /** Index among all steps. */
  readonly stepIndex: number;
  readonly band: KerfBand;
  readonly strip: ExactStrip | null;
}

/** Numbers the saw steps 1, 2, … and finds the band that each turns to dust. */
export function numberCuts(layout: ExactLayout, steps: readonly WorkStep[]): NumberedCut[] {
  const cuts: NumberedCut[] = [];
  steps.forEach((step, stepIndex) => {
    if (step.kind === 'dress') return;
    const strip = step.kind === 'rip' ? null : stripOf(layout, step);
    const bands = strip ? strip.crosscuts : layout.rips;
    const total = strip ? layout.length : layout.width;
    const fromStart = step.reference === 'upper edge' || step.reference === 'left end';
    const at = fromStart ? step.fence : total.sub(step.fence);
    const band = bands.find(({ keeps, from, to }) => (keeps === 'before' ? from : to).equals(at))!;
    cuts.push({ n: cuts.length + 1, step, stepIndex, band, strip });
  });
  return cuts;
}

function stripOf(layout: ExactLayout, step: SawStep): ExactStrip {
  return layout.strips.find(({ pieces }) =>
    pieces.some(({ name }) => name === step.makes[1].name),
  )!;
}

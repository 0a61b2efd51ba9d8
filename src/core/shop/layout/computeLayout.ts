import type { LayoutResult, RuleStep } from '../../results/layoutResult.js';
import { tidyNumbers } from '../../units/tidyNumbers.js';
import { chooseReferences } from './chooseReferences.js';
import { generalCautions } from './generalCautions.js';
import { layoutCuts } from './layoutCuts.js';
import type { LayoutInput } from './layoutInput.js';
import { layoutNotes } from './layoutNotes.js';
import { layoutOpenings } from './layoutOpenings.js';
import { layoutPieces } from './layoutPieces.js';
import { layoutSteps } from './layoutSteps.js';
import { numberCuts } from './numberCuts.js';
import { planingBudget } from './planingBudget.js';
import { planLayout } from './planLayout.js';
import { ruleCautions } from './ruleCautions.js';
import { safetyProblems } from './safetyProblems.js';
import { usualSawLimits } from './sawLimits.js';
import { settingsOnRule } from './settingsOnRule.js';
import { simulateSequence } from './simulateSequence.js';
import { spareWood } from './spareWood.js';
import { witnessMarks } from './witnessMarks.js';
import { workSequence } from './workSequence.js';

/**
 * From panel and fronts to the numbers for the saw.
 * Everything is computed in rational millimetres; the sequence is run on a virtual blank before it
 * is handed out, so a step that would not give what it promises never leaves this function.
 * @param input panel, fronts, kerf, allowances; mm
 * @returns the contract's `layout` document
 * @throws SeamgrainError `wrongUsage` for impossible figures; `cannotDo` when the panel is too
 *   small, saying by how much, or the fronts are in each other's way
 */
export function computeLayout(input: LayoutInput): LayoutResult {
  const limits = { ...usualSawLimits, ...input.sawLimits };
  const layout = planLayout(input);
  const references = chooseReferences(layout, input, limits);
  const steps = workSequence(layout, references);
  simulateSequence(layout, layout.kerf, steps);
  const rule: RuleStep = input.rule ?? { style: 'fraction', denominator: 32 };
  const onRule = settingsOnRule(layout, steps, rule);
  const numbered = numberCuts(layout, steps);
  const kerfMm = layout.kerf.valueOf();
  const cuts = layoutCuts(numbered, onRule, kerfMm, limits);
  const pieces = layoutPieces(layout, onRule);
  const spare = spareWood(layout);
  const planing = input.thickness
    ? planingBudget(input.thickness.roughMm, input.thickness.finishedMm)
    : null;
  const problems = safetyProblems(numbered, steps, kerfMm, limits);
  const ripLossMm = layout.kerf.add(layout.dress.mul(2)).mul(layout.rips.length).valueOf();
  return tidyNumbers<LayoutResult>({
    schema: 'seamgrain/layout@1',
    panel: input.panel,
    kerfMm,
    dressMm: layout.dress.valueOf(),
    trimMm: layout.trim.valueOf(),
    trimEndsMm: layout.trimEnds.valueOf(),
    rule,
    frontWood: layout.frontWood,
    needs: { widthMm: layout.needs.width.valueOf(), lengthMm: layout.needs.length.valueOf() },
    spare,
    cuts,
    pieces,
    openings: layoutOpenings(layout, input.fronts),
    face: layout.face,
    gluedFace: {
      lengthMm: layout.length.sub(layout.slideLeft).sub(layout.slideRight).valueOf(),
      widthMm: layout.width.valueOf() - ripLossMm,
    },
    steps: layoutSteps(layout, references, cuts, spare, planing),
    witnessMarks: witnessMarks(layout, numbered),
    planing,
    safety: { canBeCut: problems.length === 0, problems },
    cautions: [
      ...problems,
      ...ruleCautions(pieces, layout.face ? spare : null),
      ...generalCautions,
    ],
    notes: layoutNotes(layout, onRule.run === null),
  });
}

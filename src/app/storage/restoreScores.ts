import { z } from 'zod';
import type { ScoreAnswer } from '../state/workbench.js';

const answer = z.object({
  question: z.string(),
  distanceMm: z.number().positive(),
  result: z.looseObject({
    schema: z.literal('seamgrain/score@1'),
    seams: z.array(z.looseObject({ id: z.string(), windows: z.array(z.looseObject({})) })),
    notes: z.array(z.string()),
  }),
});

/** Kept answers that are still whole; a damaged one is dropped and simply measured again. */
export function restoreScores(kept: unknown): Readonly<Record<string, ScoreAnswer>> {
  if (typeof kept !== 'object' || kept === null) return {};
  return Object.fromEntries(
    Object.entries(kept).filter(([, each]) => answer.safeParse(each).success),
  ) as Record<string, ScoreAnswer>;
}

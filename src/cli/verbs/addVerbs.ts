import type { Command } from '@commander-js/extra-typings';
import type { CliIo } from '../io/cliIo.js';
import type { Verb } from './verb.js';

/** Every verb by name, in the order that help lists them, and how its code is loaded. */
const verbs: Readonly<Record<string, () => Promise<Verb>>> = {
  score: async () => (await import('./score.js')).addScoreVerb,
  grain: async () => (await import('./grain.js')).addGrainVerb,
  forecast: async () => (await import('./forecast.js')).addForecastVerb,
  compare: async () => (await import('./compare.js')).addCompareVerb,
  arrange: async () => (await import('./arrange.js')).addArrangeVerb,
  endgrain: async () => (await import('./endgrain.js')).addEndgrainVerb,
  layout: async () => (await import('./layout.js')).addLayoutVerb,
  gap: async () => (await import('./gap.js')).addGapVerb,
  dryclamp: async () => (await import('./dryclamp.js')).addDryClampVerb,
};

/**
 * Adds the verb that the command line begins with, so that one verb need not wait for the code of
 * the others; every verb when it begins with none (for help, and for naming the nearest).
 */
export async function addVerbs(program: Command, io: CliIo, first?: string): Promise<void> {
  const wanted = first && Object.hasOwn(verbs, first) ? [verbs[first]] : Object.values(verbs);
  for (const load of wanted) (await load?.())?.(program, io);
}

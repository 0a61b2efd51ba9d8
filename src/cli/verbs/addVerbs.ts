import type { Command } from '@commander-js/extra-typings';
import type { CliIo } from '../io/cliIo.js';
import { addArrangeVerb } from './arrange.js';
import { addCompareVerb } from './compare.js';
import { addDryClampVerb } from './dryclamp.js';
import { addEndgrainVerb } from './endgrain.js';
import { addForecastVerb } from './forecast.js';
import { addGapVerb } from './gap.js';
import { addGrainVerb } from './grain.js';
import { addLayoutVerb } from './layout.js';
import { addScoreVerb } from './score.js';
import type { Verb } from './verb.js';

/** Every verb, in the order that help lists them. */
const verbs: readonly Verb[] = [
  addScoreVerb,
  addGrainVerb,
  addForecastVerb,
  addCompareVerb,
  addArrangeVerb,
  addEndgrainVerb,
  addLayoutVerb,
  addGapVerb,
  addDryClampVerb,
];

/** Adds every verb to the program. */
export function addVerbs(program: Command, io: CliIo): void {
  for (const addVerb of verbs) addVerb(program, io);
}

import { type Command, Option } from '@commander-js/extra-typings';
import { computeAsCut } from '../../core/shop/layout/computeAsCut.js';
import { computeLayout } from '../../core/shop/layout/computeLayout.js';
import { describeAsCut } from '../../report/sheet/describeAsCut.js';
import { describeLayout } from '../../report/sheet/describeLayout.js';
import { printAnswer } from '../io/printAnswer.js';
import { type LayoutOptions, layoutInputOf } from '../options/layoutInputOf.js';
import { layoutOptions } from '../options/layoutOptions.js';
import type { Verb } from './verb.js';

interface LayoutVerbOptions extends LayoutOptions {
  readonly json?: true;
}

/** The verb `layout`: numbers for the saw. */
export const addLayoutVerb: Verb = (program, io) => {
  const verb: Command = program
    .command('layout')
    .description(
      'Fence settings, stop settings and the order of cuts for fronts cut from their own panel.',
    );
  const options: Option[] = [
    ...layoutOptions(),
    new Option('--json', 'print one JSON document on stdout and nothing else there'),
    new Option('--debug', 'show where in the program a failure came from'),
  ];
  for (const option of options) verb.addOption(option);
  verb.action(() => {
    const given = verb.opts() as LayoutVerbOptions;
    const layout = computeLayout(layoutInputOf(given));
    const asCut = given.asCut ? computeAsCut(layout, given.asCut) : null;
    for (const problem of layout.safety.problems) io.err(`Not safe on the saw: ${problem}\n`);
    printAnswer(io, given.json, asCut ? { ...layout, asCut } : layout, () => [
      ...describeLayout(layout),
      ...(asCut ? describeAsCut(asCut) : []),
    ]);
  });
};

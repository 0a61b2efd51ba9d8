import { type Command, Option } from '@commander-js/extra-typings';
import type { CornersPx } from '../../core/image/photoScale.js';
import { computeAsCut } from '../../core/shop/layout/computeAsCut.js';
import { computeLayout } from '../../core/shop/layout/computeLayout.js';
import { computeGap } from '../../core/shop/movement/computeGap.js';
import { trimForGap } from '../../core/shop/movement/trimForGap.js';
import { describeAsCut } from '../../report/sheet/describeAsCut.js';
import { describeGap } from '../../report/sheet/describeGap.js';
import { describeLayout } from '../../report/sheet/describeLayout.js';
import type { Paper } from '../../report/sheet/paperSizes.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { withProgress } from '../io/withProgress.js';
import { writeOutput } from '../io/writeOutput.js';
import { type GapOptions, gapInputOf } from '../options/gapInputOf.js';
import { gapOptions } from '../options/gapOptions.js';
import { type LayoutOptions, layoutInputOf } from '../options/layoutInputOf.js';
import { layoutOptions } from '../options/layoutOptions.js';
import { parseCorners } from '../options/parseCorners.js';
import { typedOption } from '../options/typedOption.js';
import { sheetFiles } from './sheetFiles.js';
import type { Verb } from './verb.js';

interface LayoutVerbOptions extends LayoutOptions, GapOptions {
  readonly out?: string;
  readonly paper: Paper;
  readonly photo?: string;
  readonly corners?: CornersPx;
  readonly title?: string;
  readonly json?: true;
}

/** `layout`: numbers for the saw, and with `--out` the shop sheet. */
export const addLayoutVerb: Verb = (program, io) => {
  const verb: Command = program
    .command('layout')
    .description(
      'Fence settings, stop settings and the order of cuts for fronts cut from their own panel.',
    );
  const options: Option[] = [
    ...layoutOptions(),
    ...gapOptions(),
    new Option('--out <DIR>', 'write the shop sheet (PDF, SVG, HTML) and the numbers (JSON, CSV)'),
    new Option('--paper <SIZE>', 'of the sheet').choices(['A4', 'Letter']).default('A4'),
    new Option('--photo <FILE>', "the panel's photo, for the sheet"),
    typedOption(
      '--corners <PLACES>',
      `the panel's corners in that photo, "x,y x,y x,y x,y" in pixels, clockwise from top left`,
      parseCorners,
    ),
    new Option('--title <TEXT>', 'heading of the sheet, such as the name of the job'),
    new Option('--json', 'print one JSON document on stdout and nothing else there'),
    new Option('--debug', 'show where in the program a failure came from'),
  ];
  for (const option of options) verb.addOption(option);
  verb.action(async () => {
    const given = verb.opts() as LayoutVerbOptions;
    const layout = computeLayout(layoutInputOf(given));
    const asCut = given.asCut ? computeAsCut(layout, given.asCut) : null;
    const gap = asksForGap(given)
      ? computeGap({
          ...gapInputOf(given, given.front[0]!.heightMm, 'same'),
          lengthMm: given.front[0]!.widthMm,
        })
      : null;
    const written = given.out ? await writeSheet(given.out) : [];
    for (const problem of layout.safety.problems) io.err(`Not safe on the saw: ${problem}\n`);
    const document = { ...layout, ...(asCut && { asCut }), ...(gap && { gap }) };
    printAnswer(io, given.json, document, () => [
      ...describeLayout(layout),
      ...(gap ? ['', 'GAP', ...describeGap(gap), ...trimForGap(layout, gap)] : []),
      ...(asCut ? describeAsCut(asCut) : []),
      ...(written.length ? ['', `Written: ${written.join(', ')}`] : []),
    ]);

    async function writeSheet(folder: string): Promise<string[]> {
      const { paper, title, photo, corners, panel } = given;
      const picture = photo
        ? await withProgress(io, (progress) => loadPanel(photo, { size: panel, corners }, progress))
        : null;
      return writeOutput(folder, await sheetFiles({ layout, gap, paper, title, panel: picture }));
    }
  });
};

function asksForGap({ species, shrinkage, veneered }: GapOptions): boolean {
  return Boolean(species ?? shrinkage ?? veneered);
}

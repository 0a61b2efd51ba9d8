import type { LayoutStep } from '../../core/results/layoutResult.js';
import { layoutDrawing } from '../layout/layoutDrawing.js';
import type { Block } from './block.js';
import { cutGroup } from './cutGroup.js';
import { dressWords } from './dressWords.js';
import { groupHeading } from './groupHeading.js';
import { headerBlock } from './headerBlock.js';
import { moveMark } from './moveMark.js';
import { paperSizes } from './paperSizes.js';
import type { SheetInput } from './sheetInput.js';
import type { SheetPage } from './sheetPage.js';
import { type SheetStyle, sheetStyle } from './sheetStyle.js';
import { sideBlock } from './sideBlock.js';
import { stackBlocks } from './stackBlocks.js';
import { type PaperStep, stepsBlock } from './stepsBlock.js';
import { textLines } from './textLines.js';

const pxPerMm = 96 / 25.4;
const marginMm = 9;
/** Largest type that fits wins; below the last the sheet goes on to a second page instead. */
const scales = [1.15, 1.08, 1.02, 0.96, 0.9, 0.85];
/** A drawing lower than this, in px at scale 1, is no use at arm's length. */
const leastDrawingPx = 210;

/**
 * The shop sheet: one page for an ordinary layout, more for a bank of many fronts.
 * Type is as large as the page allows; the drawing takes the room that is left.
 */
export function sheetPages(input: SheetInput): SheetPage[] {
  const { widthMm, heightMm } = paperSizes[input.paper];
  const room = {
    width: (widthMm - 2 * marginMm) * pxPerMm,
    height: (heightMm - 2 * marginMm) * pxPerMm,
  };
  for (const scale of scales) {
    const style = sheetStyle(room.width, scale);
    const parts = partsOf(input, style);
    const used = parts.reduce((sum, { heightPx }) => sum + heightPx, 0);
    const left = room.height - used - parts.length * gapPx(style);
    if (left < leastDrawingPx * scale) continue;
    const picture = pictureRow(input, style, left);
    if (picture.heightPx > left + 0.01) continue;
    return [pageOf(input, [parts[0]!, picture, ...parts.slice(1)], style)];
  }
  return severalPages(input, room);
}

/** The drawing, and beside it what else is to be seen. */
function pictureRow(input: SheetInput, style: SheetStyle, heightPx: number): Block {
  const { widthPx, bodyPx } = style;
  const sidePx = 0.36 * widthPx;
  const side = sideBlock(input, widthPx - sidePx, sidePx, heightPx, style);
  const drawingPx = side ? widthPx - sidePx - 1.2 * bodyPx : widthPx;
  const drawing = layoutDrawing(input.layout, drawingPx, heightPx, 1.05 * bodyPx);
  return {
    heightPx: Math.max(drawing.heightPx, side?.heightPx ?? 0),
    marks: [...drawing.marks, ...(side?.marks ?? [])],
  };
}

/** All but the drawing, in order; the heading of a group stays with what follows it. */
function partsOf(input: SheetInput, style: SheetStyle): Block[] {
  const { layout } = input;
  const paperSteps = (kinds: readonly LayoutStep['kind'][]): PaperStep[] =>
    layout.steps
      .filter(({ kind }) => kinds.includes(kind))
      .map(({ kind, brief, cautions }) => ({
        kind,
        words: kind === 'dress' ? dressWords(layout) : brief,
        cautions,
      }));
  const group = (title: string, kinds: readonly LayoutStep['kind'][]) =>
    stackBlocks([groupHeading(title, [], [], style), stepsBlock(paperSteps(kinds), style)], 3);
  return [
    headerBlock(input, style),
    group('BEFORE', ['prepare', 'mark']),
    ...keepHeading(cutGroup(layout, 'rip', style)),
    group('DRESS, before any crosscut and never after', ['dress']),
    ...keepHeading(cutGroup(layout, 'crosscut', style)),
    group('THEN', ['dryClamp', 'glue', 'flatten', 'square', 'fit']),
    foot(input, style),
  ];
}

/** The general cautions that no step has yet. */
function foot({ layout }: SheetInput, { widthPx, smallPx }: SheetStyle): Block {
  const { problems } = layout.safety;
  const texts = layout.cautions.filter((text) => !problems.includes(text));
  const words = texts.join(' ');
  return textLines(words, { x: 0, widthPx, sizePx: smallPx, bold: true, isCaution: true });
}

function keepHeading([heading, first, ...rest]: Block[]): Block[] {
  return [stackBlocks([heading!, first!]), ...rest];
}

function gapPx(style: SheetStyle): number {
  return 0.4 * style.bodyPx;
}

function pageOf(input: SheetInput, blocks: readonly Block[], style: SheetStyle): SheetPage {
  const { widthMm, heightMm } = paperSizes[input.paper];
  const margin = marginMm * pxPerMm;
  const body = stackBlocks(blocks, gapPx(style));
  return {
    paper: input.paper,
    widthPx: widthMm * pxPerMm,
    heightPx: heightMm * pxPerMm,
    marks: body.marks.map((mark) => moveMark(mark, margin, margin)),
  };
}

function severalPages(
  input: SheetInput,
  room: { readonly width: number; readonly height: number },
): SheetPage[] {
  const style = sheetStyle(room.width, 0.92);
  const [header, ...parts] = partsOf(input, style);
  const drawing = pictureRow(input, style, 0.42 * room.height);
  const pages: Block[][] = [[]];
  let used = 0;
  for (const block of [header!, drawing, ...parts]) {
    if (used > 0 && used + block.heightPx > room.height) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)!.push(block);
    used += block.heightPx + gapPx(style);
  }
  return pages.map((blocks) => pageOf(input, blocks, style));
}

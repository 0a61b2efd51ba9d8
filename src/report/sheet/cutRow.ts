import type { LayoutCut, RuleStep } from '../../core/results/layoutResult.js';
import { formatInches } from '../../core/units/formatInches.js';
import { formatMm } from '../../core/units/formatMm.js';
import { mmPerInch } from '../../core/units/mmPerInch.js';
import { bladeDiagram } from './bladeDiagram.js';
import type { Block } from './block.js';
import type { Mark } from './mark.js';
import { moveMark } from './moveMark.js';
import type { SheetStyle } from './sheetStyle.js';
import { sizeText } from './sizeText.js';
import { stackBlocks } from './stackBlocks.js';
import { textLines } from './textLines.js';

/**
 * One pass over the saw: number, setting in big figures, near or far side, what comes off, what the
 * pieces then measure, and the cautions of this cut alone.
 * @param cautions those that the group's heading does not already carry
 */
export function cutRow(
  cut: LayoutCut,
  rule: RuleStep,
  cautions: readonly string[],
  style: SheetStyle,
): Block {
  const { bodyPx, smallPx, settingPx, widthPx } = style;
  const columns = { number: 3 * bodyPx, setting: 7.4 * settingPx, blade: 6 * bodyPx };
  const bladeX = columns.number + columns.setting;
  const wordsX = bladeX + columns.blade + bodyPx;
  const room = widthPx - wordsX;
  const wordsPx = cautions.length > 0 ? 0.54 * room : room;
  const words = stackBlocks(
    wordsOf(cut, rule).map((text, index) =>
      textLines(text, { x: wordsX, widthPx: wordsPx, sizePx: bodyPx, bold: index === 0 }),
    ),
  );
  const warnings = stackBlocks(
    cautions.map((text) =>
      textLines(text, {
        x: wordsX + wordsPx + bodyPx,
        widthPx: room - wordsPx - bodyPx,
        sizePx: smallPx,
        isCaution: true,
      }),
    ),
  );
  const setting = settingBlock(cut, rule, columns.number, columns.setting, style);
  const bladePx = 1.55 * settingPx;
  const inner = Math.max(words.heightPx, warnings.heightPx, setting.heightPx, bladePx);
  const pad = 0.25 * bodyPx;
  const marks: Mark[] = [
    { kind: 'line', x1: 0, y1: 0, x2: widthPx, y2: 0, stroke: 0.6, strokePx: 0.8 },
    ...[
      ...numberBadge(cut.n, 1.15 * bodyPx, bodyPx),
      ...setting.marks,
      ...bladeDiagram(cut, bladeX, columns.blade, bladePx),
      ...words.marks,
      ...warnings.marks,
    ].map((mark) => moveMark(mark, 0, pad)),
  ];
  return { heightPx: inner + 2 * pad, marks };
}

function settingBlock(
  { setting, toBlade }: LayoutCut,
  rule: RuleStep,
  x: number,
  widthPx: number,
  { settingPx, smallPx }: SheetStyle,
): Block {
  const inMm = rule.style === 'metric' ? '' : `; ${formatMm(setting.mm, 1)}`;
  const line = { x, widthPx: widthPx - 6 };
  return stackBlocks([
    textLines(setting.text, { ...line, sizePx: settingPx, bold: true }),
    textLines(`to the ${toBlade} tooth${inMm}`, { ...line, sizePx: smallPx }),
  ]);
}

function wordsOf(cut: LayoutCut, rule: RuleStep): string[] {
  const [inner, beyond] = cut.makesAsSet;
  const isRip = cut.kind === 'rip';
  const size = (piece: typeof inner) =>
    `${piece.name}: ${sizeText(isRip ? piece.widthMm : piece.lengthMm, rule)}`;
  const payer = cut.waste.split(' side:')[0]!;
  const gained = Math.abs(cut.setting.errorMm);
  const rounding =
    gained < 1e-6
      ? `the ${cut.keeps} keeps its full size`
      : `rounding adds ${gainedText(gained, rule)} to the ${cut.keeps}`;
  return [
    `The ${beyond.name} comes off`,
    `Kerf out of the ${payer}; ${rounding}.`,
    `Then ${isRip ? 'wide' : 'long'}: ${size(inner)}; ${size(beyond)}.`,
  ];
}

/** In the maker's own unit first. */
function gainedText(mm: number, rule: RuleStep): string {
  const inMm = formatMm(mm, mm < 0.1 ? 3 : 2);
  if (rule.style === 'metric') return inMm;
  return mm < mmPerInch / 128 ? `less than 1/64 in` : `${formatInches(mm, 64)} (${inMm})`;
}

function numberBadge(n: number, x: number, bodyPx: number): Mark[] {
  const y = 1.25 * bodyPx;
  return [
    { kind: 'circle', x, y, r: 1.1 * bodyPx, fill: 0 },
    {
      kind: 'text',
      x,
      y: y + 0.45 * bodyPx,
      text: String(n),
      sizePx: (n > 9 ? 1.1 : 1.25) * bodyPx,
      bold: true,
      anchor: 'middle',
      fill: 1,
    },
  ];
}

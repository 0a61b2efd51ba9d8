import type { LayoutCut, LayoutResult } from '../../core/results/layoutResult.js';
import type { Block } from './block.js';
import { cutRow } from './cutRow.js';
import { groupHeading } from './groupHeading.js';
import type { SheetStyle } from './sheetStyle.js';

/**
 * Cuts of one kind: a heading with what holds for all of them, then a row each.
 * A caution that every cut has, or every one from the second on, stands once, right above them.
 */
export function cutGroup(
  layout: LayoutResult,
  kind: LayoutCut['kind'],
  style: SheetStyle,
): Block[] {
  const cuts = layout.cuts.filter((cut) => cut.kind === kind);
  const [first, ...later] = cuts;
  const shared = first!.cautions.filter((text) =>
    later.every((cut) => cut.cautions.includes(text)),
  );
  const fromSecond = (later[0]?.cautions ?? []).filter(
    (text) =>
      // One that names a size belongs beside its own cut.
      !/\d/.test(text) &&
      !shared.includes(text) &&
      later.every((cut) => cut.cautions.includes(text)),
  );
  const headed = [...shared, ...fromSecond];
  const title =
    kind === 'rip'
      ? `RIP, ${cuts[0]!.reference} on the fence every time`
      : `CROSSCUT, ${cuts[0]!.reference} at the stop every time`;
  return [
    groupHeading(
      title,
      [],
      [...shared, ...fromSecond.map((text) => `From cut ${later[0]!.n} on: ${text}`)],
      style,
    ),
    ...cuts.map((cut) =>
      cutRow(
        cut,
        layout.rule,
        cut.cautions.filter((text) => !headed.includes(text)),
        style,
      ),
    ),
  ];
}

import fc from 'fast-check';
import type { LayoutInput } from '../../../../src/core/shop/layout/layoutInput.js';
import { repeatFronts } from '../../../../src/core/shop/layout/repeatFronts.js';

/** Furniture-sized layouts: one front, a bank of drawers, a pair of doors, with or without a face. */
export const arbitraryChest: fc.Arbitrary<LayoutInput> = fc
  .record({
    rows: fc.integer({ min: 1, max: 4 }),
    columns: fc.integer({ min: 1, max: 2 }),
    lengthMm: fc.integer({ min: 150, max: 700 }),
    widthMm: fc.integer({ min: 60, max: 260 }),
    railMm: fc.constantFrom(0, 19, 45),
    dividerMm: fc.constantFrom(0, 30, 120),
    dressMm: fc.constantFrom(0, 0.396875, 0.79375),
    trimMm: fc.constantFrom(0, 1, 1.5875),
    around: fc.record({
      upper: fc.integer({ min: 15, max: 250 }),
      lower: fc.integer({ min: 15, max: 250 }),
      left: fc.integer({ min: 20, max: 400 }),
      right: fc.integer({ min: 20, max: 400 }),
    }),
    hasFace: fc.boolean(),
    frontWood: fc.constantFrom('same' as const, 'contrasting' as const, 'veneered' as const),
  })
  .map(({ rows, columns, lengthMm, widthMm, around, hasFace, ...rest }) => {
    const { dressMm, trimMm, railMm, frontWood } = rest;
    // Doors of other wood share one opening.
    const inRow = frontWood === 'same' ? columns : 1;
    const fronts = repeatFronts({
      first: { lengthMm, widthMm, xMm: around.left, yMm: around.upper },
      rows,
      columns: inRow,
      railMm,
      dividerMm: rest.dividerMm,
      kerfMm: 3.175,
      dressMm,
      trimMm,
      trimEndsMm: trimMm,
    });
    const last = fronts[fronts.length - 1]!;
    const panel = {
      lengthMm: last.xMm + lengthMm + around.right,
      widthMm: last.yMm + widthMm + around.lower,
    };
    const rips = railMm > 0 ? 2 * rows : rows + 1;
    const face = {
      lengthMm: panel.lengthMm - 5,
      widthMm: panel.widthMm - rips * (3.175 + 2 * dressMm) - 5,
    };
    return { panel, fronts, dressMm, trimMm, frontWood, ...(hasFace && { face }) };
  });

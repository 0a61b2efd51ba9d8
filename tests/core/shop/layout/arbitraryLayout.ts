import fc from 'fast-check';
import type { FrontPlace, LayoutInput } from '../../../../src/core/shop/layout/layoutInput.js';

/**
 * Valid layouts of every kind: one to three strips of one to three fronts, sizes in 1/64 in or
 * in 0.1 mm, dividers and middle rails there or not, any kerf, dressing and trim.
 */
export const arbitraryLayout: fc.Arbitrary<LayoutInput> = fc
  .record({
    step: fc.constantFrom(25.4 / 64, 0.1),
    kerf: fc.integer({ min: 4, max: 40 }),
    dress: fc.integer({ min: 0, max: 6 }),
    trim: fc.integer({ min: 0, max: 8 }),
    rails: fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 4, maxLength: 4 }),
    heights: fc.array(fc.integer({ min: 20, max: 900 }), { minLength: 1, maxLength: 3 }),
    rows: fc.array(
      fc.record({
        ends: fc.tuple(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 900 })),
        dividers: fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 2, maxLength: 2 }),
        lengths: fc.array(fc.integer({ min: 20, max: 1200 }), { minLength: 1, maxLength: 3 }),
      }),
      { minLength: 3, maxLength: 3 },
    ),
    referenceEdge: fc.constantFrom('upper edge' as const, 'lower edge' as const),
    referenceEnd: fc.constantFrom('left end' as const, 'right end' as const),
  })
  .map(({ step, kerf, dress, trim, rails, heights, rows, referenceEdge, referenceEnd }) => {
    const mm = (steps: number) => Number((steps * step).toFixed(9));
    const fronts: FrontPlace[] = [];
    let y = rails[0]! + 1 + kerf + 2 * dress + trim;
    let longest = 0;
    heights.forEach((height, row) => {
      const { ends, dividers, lengths } = rows[row]!;
      let x = ends[0] + kerf + trim;
      lengths.forEach((length, column) => {
        fronts.push({ xMm: mm(x), yMm: mm(y), lengthMm: mm(length), widthMm: mm(height) });
        const divider = dividers[column] ?? 0;
        const parted = divider === 0 ? kerf : 2 * kerf + divider;
        x += length + 2 * trim + (column < lengths.length - 1 ? parted : 0);
      });
      longest = Math.max(longest, x - 2 * trim + trim + kerf + ends[1]);
      const rail = rails[row + 1]!;
      const isLast = row === heights.length - 1;
      const parted = rail === 0 && !isLast ? kerf + 2 * dress : 2 * kerf + 4 * dress + rail;
      y += height + 2 * trim + (isLast ? kerf + 2 * dress - trim + rail + 1 : parted);
    });
    return {
      panel: { lengthMm: mm(longest), widthMm: mm(y) },
      fronts,
      kerfMm: mm(kerf),
      dressMm: mm(dress),
      trimMm: mm(trim),
      referenceEdge,
      referenceEnd,
    };
  });

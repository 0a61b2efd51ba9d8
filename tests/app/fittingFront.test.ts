import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fittingFront } from '../../src/app/analysis/fittingFront.js';
import { createProject } from '../../src/app/state/createProject.js';

const { settings } = createProject('p', 'p', '2026-01-01');

describe('the front to begin with', () => {
  it('leaves the panel room for both kerfs, and is as set where that fits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 1500, noNaN: true }),
        fc.double({ min: 20, max: 900, noNaN: true }),
        fc.constantFrom('inch' as const, 'millimetre' as const),
        (widthMm, heightMm, unit) => {
          const asked = { ...settings, unit };
          const front = fittingFront({ widthMm, heightMm }, asked);
          const room = 2 * (asked.kerfMm + asked.dressMm);
          expect(front.frontWidthMm).toBeGreaterThan(0);
          expect(front.frontHeightMm).toBeGreaterThan(0);
          expect(front.frontWidthMm + room).toBeLessThanOrEqual(widthMm);
          expect(front.frontHeightMm + room).toBeLessThanOrEqual(heightMm);
          if (asked.frontWidthMm + room <= widthMm && asked.frontHeightMm + room <= heightMm)
            expect(front.frontWidthMm).toBe(asked.frontWidthMm);
        },
      ),
    );
  });
});

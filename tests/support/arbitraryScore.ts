import fc from 'fast-check';
import type { LineMm, ScoreResult } from '../../src/core/results/scoreResult.js';
import { inventedScore, inventedSeam } from './inventedScore.js';

/** Random results for the properties of the report: any number of seams, any place, any V. */

const v = fc.option(
  fc.oneof(fc.double({ min: 0, max: 8, noNaN: true }), fc.constantFrom(0, 0.5, 1, 2, 4, 1e6)),
  { freq: 6 },
);
const note = fc.oneof(
  fc.constantFrom('Nothing crosses the joint.', 'A <knot> & "glare" on the left', '5 > 4'),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
);
const cue = fc.constantFrom('break', 'direction', 'spacing', 'colour', 'glueLine');

function line(widthMm: number, heightMm: number): fc.Arbitrary<LineMm> {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  return fc
    .record({
      along: fc.boolean(),
      at: share,
      from: share,
      to: share,
      tilt: share,
      back: fc.boolean(),
    })
    .map(({ along, at, from, to, tilt, back }) => {
      const [first, last] = from < to ? [from, to] : [to, from];
      const [start, end] = last - first < 0.05 ? [0, 1] : [first, last];
      const [length, across] = along ? [widthMm, heightMm] : [heightMm, widthMm];
      const a = at * across;
      const b = Math.min(across, Math.max(0, a + (tilt - 0.5) * 0.05 * length));
      const [s, e] = back ? [end * length, start * length] : [start * length, end * length];
      return along
        ? { x1Mm: s, y1Mm: a, x2Mm: e, y2Mm: b }
        : { x1Mm: a, y1Mm: s, x2Mm: b, y2Mm: e };
    });
}

export const arbitraryScore: fc.Arbitrary<ScoreResult> = fc
  .record({
    widthMm: fc.double({ min: 60, max: 2500, noNaN: true }),
    heightMm: fc.double({ min: 60, max: 1500, noNaN: true }),
    pxPerMm: fc.double({ min: 0.5, max: 12, noNaN: true }),
  })
  .chain((panel) =>
    fc
      .record({
        seams: fc.array(
          fc.record({
            line: line(panel.widthMm, panel.heightMm),
            vs: fc.array(v, { minLength: 1, maxLength: 9 }),
            cue,
            placed: fc.boolean(),
            notes: fc.array(note, { maxLength: 2 }),
          }),
          { maxLength: 9 },
        ),
        notes: fc.array(note, { maxLength: 3 }),
      })
      .map(({ seams, notes }) =>
        inventedScore(
          seams.map((seam, index) =>
            inventedSeam(
              `s${index}`,
              seam.line,
              (share) => seam.vs[Math.floor(share * seam.vs.length)] ?? null,
              {
                cue: seam.cue as 'break',
                windowCount: 2 * seam.vs.length,
                found: seam.placed ? 'placed' : 'photo',
                notes: seam.notes,
              },
            ),
          ),
          panel,
          notes,
        ),
      ),
  );

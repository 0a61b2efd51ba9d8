import { describe, expect, it } from 'vitest';
import { SeamgrainError } from '../../../../src/core/errors.js';
import { computeAsCut } from '../../../../src/core/shop/layout/computeAsCut.js';
import { computeLayout } from '../../../../src/core/shop/layout/computeLayout.js';
import { depthLineShiftMm } from '../../../../src/core/shop/layout/depthLineShiftMm.js';

const layout = computeLayout({
  panel: { lengthMm: 900, widthMm: 500 },
  fronts: [{ lengthMm: 360, widthMm: 100, xMm: 270, yMm: 200 }],
  kerfMm: 3,
  dressMm: 0.5,
  trimMm: 1,
  rule: { style: 'metric', stepMm: 0.1 },
  face: { lengthMm: 890, widthMm: 490 },
});

describe('as cut', () => {
  it('changes nothing when the tape says what was planned', () => {
    const asPlanned = computeAsCut(
      layout,
      layout.pieces.map(({ name, dressedWidthMm, lengthMm }) => ({
        piece: name,
        widthMm: dressedWidthMm,
        lengthMm,
      })),
    );
    expect(asPlanned.lostAcrossMm).toBeCloseTo(asPlanned.plannedLossMm, 9);
    expect(asPlanned.gluedFace).toEqual(layout.gluedFace);
    expect(asPlanned.openings[0]).toMatchObject({
      widthMm: 102,
      lengthMm: layout.openings[0]!.lengthMm,
      frontWidthMm: 100,
      frontLengthMm: 360,
      shortAcrossMm: 0,
      trimForAskedMm: 1,
    });
    expect(asPlanned.advice).toEqual(['All as planned: go on.']);
  });

  it('follows a strip that came out narrow: less trim, or a smaller front', () => {
    const narrow = computeAsCut(layout, [{ piece: 'strip', widthMm: 101.2 }]);
    expect(narrow.openings[0]!.trimForAskedMm).toBeCloseTo(0.6, 9);
    expect(narrow.openings[0]!.frontWidthMm).toBeCloseTo(99.2, 9);
    expect(narrow.advice.join(' ')).toMatch(/still possible/);
    const tooNarrow = computeAsCut(layout, [{ piece: 'strip', widthMm: 99 }]);
    expect(tooNarrow.advice.join(' ')).toMatch(/cannot be the width asked for any more/);
  });

  it('knows the loss only when every course was measured', () => {
    expect(computeAsCut(layout, [{ piece: 'strip', widthMm: 102 }]).lostAcrossMm).toBeNull();
    const all = computeAsCut(layout, [
      { piece: 'upper rail', widthMm: 194 },
      { piece: 'strip', widthMm: 102 },
      { piece: 'lower rail', widthMm: 194 },
    ]);
    expect(all.lostAcrossMm).toBe(10);
    expect(all.gluedFace.widthMm).toBe(490);
    expect(all.spareAcrossMm).toBe(0);
  });

  it('says by how much the face comes out short', () => {
    const short = computeAsCut(layout, [
      { piece: 'upper rail', widthMm: 190 },
      { piece: 'lower rail', widthMm: 190 },
      { piece: 'strip', widthMm: 102 },
    ]);
    expect(short.spareAcrossMm).toBe(-8);
    expect(short.advice.join(' ')).toMatch(/8 mm\) narrower/);
  });

  it('sees a taper', () => {
    const tapered = computeAsCut(layout, [{ piece: 'strip', widthMm: [102.4, 101.6] }]);
    expect(tapered.advice.join(' ')).toMatch(/strip tapers by .*0.8 mm.* wider at the left end/);
  });

  it('sees a front that was cut short', () => {
    const short = computeAsCut(layout, [{ piece: 'front', lengthMm: 361 }]);
    expect(short.openings[0]!.shortAlongMm).toBeCloseTo(1, 9);
    expect(short.advice.join(' ')).toMatch(/short along the grain/);
  });

  it('refuses pieces that are not there', () => {
    expect(() => computeAsCut(layout, [{ piece: 'leg', widthMm: 5 }])).toThrow(SeamgrainError);
    expect(() => computeAsCut(layout, [{ piece: 'strip', widthMm: 0 }])).toThrow(SeamgrainError);
  });
});

describe('planing front and panel apart', () => {
  it('parts the lines by t / tan(ring angle), most in flatsawn wood [derived, method 6]', () => {
    expect(depthLineShiftMm(1, 45)).toBeCloseTo(1, 12);
    expect(depthLineShiftMm(1, 90)).toBe(0);
    expect(depthLineShiftMm(0.5, 10)).toBeCloseTo(0.5 / 0.17633, 3);
    expect(depthLineShiftMm(1, 0)).toBeNull();
  });
});

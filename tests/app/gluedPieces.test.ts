import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gluedPieces } from '../../src/app/geometry/gluedPieces.js';

const panel = { width: 600, height: 300 };
const loss = { kerfMm: 3.175, dressMm: 0.4 };
const place = fc.record({
  xMm: fc.double({ min: 10, max: 250, noNaN: true }),
  yMm: fc.double({ min: 10, max: 150, noNaN: true }),
  widthMm: fc.double({ min: 50, max: 330, noNaN: true }),
  heightMm: fc.double({ min: 40, max: 130, noNaN: true }),
});

describe('the face as glued', () => {
  it('is narrower by two losses, every piece against its neighbours with nothing between', () => {
    fc.assert(
      fc.property(place, (front) => {
        const pieces = gluedPieces(panel, front, loss, 'stay');
        const of = (name: string) => pieces.find((piece) => piece.name === name)!;
        const lost = loss.kerfMm + 2 * loss.dressMm;
        expect(of('front').toY).toBeCloseTo(of('upper rail').height, 9);
        expect(of('lower rail').toY).toBeCloseTo(of('front').toY + of('front').height, 9);
        expect(of('lower rail').toY + of('lower rail').height).toBeCloseTo(300 - 2 * lost, 9);
        expect(of('front').toX - of('left end').width).toBeCloseTo(loss.kerfMm, 9);
      }),
    );
  });

  it('closes both kerfs at the ends when the end pieces slide in', () => {
    fc.assert(
      fc.property(place, (front) => {
        const pieces = gluedPieces(panel, front, loss, 'close');
        const of = (name: string) => pieces.find((piece) => piece.name === name)!;
        const leftEnd = of('left end').toX + of('left end').width;
        expect(leftEnd).toBeCloseTo(of('front').toX, 9);
        expect(of('right end').toX).toBeCloseTo(of('front').toX + of('front').width, 9);
      }),
    );
  });
});

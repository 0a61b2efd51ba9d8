import { describe, expect, it } from 'vitest';
import { ripPanel } from '../../../src/core/wood/ripPanel.js';
import { secondField } from './secondField.js';
import { drawSecondPanel } from './secondWoodModel.js';

const board = { seed: 4, setting: 'softwood', cut: 'flatsawn' } as const;
const size = { board, widthMm: 90, heightMm: 50, uMm: 60, vMm: 40 };

describe('the second wood model', () => {
  it.each(['flatsawn', 'rift', 'quartered'] as const)('has an exact gradient (%s)', (cut) => {
    const field = secondField({ ...board, cut });
    for (let x = 3; x < 400; x += 37) {
      for (let y = 2; y < 200; y += 23) {
        const h = 1e-4;
        const { fx, fy } = field.at(x, y);
        expect(fx).toBeCloseTo((field.at(x + h, y).f - field.at(x - h, y).f) / (2 * h), 6);
        expect(fy).toBeCloseTo((field.at(x, y + h).f - field.at(x, y - h).f) / (2 * h), 6);
      }
    }
  });

  it('loses exactly what the cut loses, and nothing when nothing is cut', () => {
    const [whole, sham, cut] = [
      ripPanel({ ...size, cuts: [] }),
      ripPanel({ ...size, cuts: [{ atMm: 25 }] }),
      ripPanel({ ...size, cuts: [{ atMm: 25, lostMm: 4, slideMm: 6 }] }),
    ].map((spec) => drawSecondPanel(spec, { pxPerMm: 3 }));
    expect(sham!.image.data).toEqual(whole!.image.data);
    const age = (x: number, y: number) => whole!.truth.ringLineOfPiece(0, x, y).ageMm;
    expect(cut!.truth.ringLineOfPiece(1, 30, 26).ageMm).toBeCloseTo(age(36, 30), 9);
    expect(cut!.truth.ringLineOfPiece(0, 30, 20).ageMm).toBeCloseTo(age(30, 20), 9);
  });
});

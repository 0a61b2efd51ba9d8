import { describe, expect, it } from 'vitest';
import { toldOffsets } from '../../../src/core/seam/toldOffsets.js';
import { measuredJoint } from './gratingJoint.js';

const joint = { widthMm: 150, heightMm: 70, seamYMm: 35, contrast: 0.1, noise: 0.02 };

/** Those told among the stretches that are clear of the panel's ends. */
function middle(offsets: ReturnType<typeof toldOffsets>) {
  return offsets.slice(2, -2);
}

describe('toldOffsets', () => {
  it('tells the step of plain lines, delta = g cos(theta) - u sin(theta), in every stretch', () => {
    const { seam, own } = measuredJoint({ ...joint, angleDeg: 20, spacingMm: 3, lostMm: 1 });
    const told = middle(toldOffsets(seam, own));
    expect(told.length).toBeGreaterThan(5);
    for (const offset of told) {
      expect(Math.abs(offset!.offsetMm - Math.cos((20 * Math.PI) / 180))).toBeLessThan(0.2);
    }
  });

  it('tells nothing where the lines run along the joint', () => {
    const { seam, own } = measuredJoint({ ...joint, angleDeg: 0.4, spacingMm: 4, lostMm: 1 });
    expect(middle(toldOffsets(seam, own)).every((offset) => offset === null)).toBe(true);
  });

  it('tells nothing of lines fainter than 0.05', () => {
    const faint = { ...joint, contrast: 0.03, noise: 0, angleDeg: 20, spacingMm: 3, lostMm: 1 };
    const { seam, own } = measuredJoint(faint);
    expect(toldOffsets(seam, own).every((offset) => offset === null)).toBe(true);
  });

  it('tells nothing where there is no uncut wood to check against', () => {
    const { seam } = measuredJoint({ ...joint, angleDeg: 20, spacingMm: 3, lostMm: 1 });
    expect(toldOffsets(seam, []).every((offset) => offset === null)).toBe(true);
  });

  it("tells nothing where the boards' own lines read as stepped themselves", () => {
    const plain = measuredJoint({ ...joint, angleDeg: 20, spacingMm: 3, lostMm: 1 });
    const stepped = measuredJoint({ ...joint, angleDeg: 20, spacingMm: 3, lostMm: 0.8 });
    // The cut joint in the place of an uncut line: 0.75 mm where nothing should step.
    expect(toldOffsets(plain.seam, [stepped.seam]).every((offset) => offset === null)).toBe(true);
  });
});

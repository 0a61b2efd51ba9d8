import { describe, expect, it } from 'vitest';
import { grainChange } from '../../../src/core/seam/grainChange.js';
import { lineMeasures } from '../../../src/core/seam/lineMeasures.js';
import { lostResult } from '../../../src/core/seam/lostResult.js';
import { ownLines } from '../../../src/core/seam/ownLines.js';
import { panelPlanes } from '../../../src/core/seam/panelPlanes.js';
import { seamFrame } from '../../../src/core/seam/seamFrame.js';
import { seamGlueLine } from '../../../src/core/seam/seamGlueLine.js';
import { seamOffset } from '../../../src/core/seam/seamOffset.js';
import { seamVisibility } from '../../../src/core/seam/seamVisibility.js';
import { seamWood } from '../../../src/core/seam/seamWood.js';
import { closedFormBreak } from '../../../src/core/visibility/closedFormBreak.js';
import {
  type GratingJoint,
  gratingPlanes,
  greyPhoto,
  measuredJoint,
  ripAt,
} from './gratingJoint.js';

const rad = Math.PI / 180;
const deg = 180 / Math.PI;
const wide = { widthMm: 150, heightMm: 70, seamYMm: 35, contrast: 0.1, noise: 0.02 };
const small = { widthMm: 120, heightMm: 60, seamYMm: 30, contrast: 0.1, noise: 0.02 };

/** delta = g cos(theta) - u sin(theta), wrapped to half a spacing (method section 4). */
function deltaMm({ angleDeg, spacingMm, lostMm = 0, slideMm = 0 }: GratingJoint): number {
  const d = lostMm * Math.cos(angleDeg * rad) - slideMm * Math.sin(angleDeg * rad);
  return d - spacingMm * Math.round(d / spacingMm);
}

describe('a joint through even straight grain', () => {
  const joints: GratingJoint[] = [
    { ...small, angleDeg: 10, spacingMm: 4, lostMm: 1.2 },
    { ...small, angleDeg: 20, spacingMm: 3, lostMm: 1 },
    { ...small, angleDeg: -15, spacingMm: 3, lostMm: 1 },
    { ...small, angleDeg: 10, spacingMm: 4, slideMm: 6 },
    { ...small, angleDeg: -10, spacingMm: 4, lostMm: 1, slideMm: 3 },
    { ...small, angleDeg: 45, spacingMm: 3, lostMm: 1 },
    { ...small, angleDeg: -60, spacingMm: 4, lostMm: 1, slideMm: 0.5 },
  ];
  it.each(joints)('at $angleDeg deg, $lostMm mm lost, $slideMm mm slid: offset and V', (joint) => {
    const { seam, own } = measuredJoint(joint);
    const offset = seamOffset(seam, own);
    // 0.15 mm: the offset's own goal.
    expect(Math.abs(offset.mm! - deltaMm(joint))).toBeLessThan(0.15);
    expect(offset.spacingMm! / joint.spacingMm).toBeCloseTo(1, 1);
    const { v, cue } = seamVisibility(seam, own, 600);
    const expected = closedFormBreak({
      ...joint,
      lostMm: joint.lostMm ?? 0,
      slideMm: joint.slideMm ?? 0,
      angleRad: joint.angleDeg * rad,
      distanceMm: 600,
    });
    expect(cue).toBe('break');
    expect(v! / expected).toBeGreaterThan(0.8);
    expect(v! / expected).toBeLessThan(1.2);
  });

  it.each([8, 15, 25, 40])('at %i deg, no two rings alike: width within its error', (angleDeg) => {
    const size = { widthMm: 400, heightMm: 120, seamYMm: 60, pxPerMm: 3 };
    const wood = { spacingMm: 5, contrast: 0.1, uneven: true };
    const { seam, own } = measuredJoint({ ...size, ...wood, angleDeg, lostMm: 3.175 });
    const { lost } = lostResult(seam, own);
    // Steep straight lines meet as well at a little lost and slid; shallow ones slide far for that.
    expect(Math.abs(lost.mm! - 3.175)).toBeLessThan(2 * lost.seMm!);
    if (angleDeg > 10) expect(lost.seMm!).toBeGreaterThan(0.5);
  });

  it.each([5, 30, 45, -70])('at %i deg: directions hold to the ends of the joint', (angleDeg) => {
    const { seam } = measuredJoint({ ...small, noise: 0, uneven: true, angleDeg, spacingMm: 5 });
    for (const { angleRad } of [seam.fieldA, seam.fieldB]) {
      for (const read of angleRad) {
        expect(Math.abs(Math.asin(Math.sin(read - angleDeg * rad))) / rad).toBeLessThan(0.1);
      }
    }
  });

  it.each([5, 30, 45])('at %i deg: and nearly so under the painted rim of a photo', (angleDeg) => {
    const joint = { ...small, noise: 0, uneven: true, angleDeg, spacingMm: 5 };
    const planes = panelPlanes(greyPhoto(gratingPlanes(joint)));
    const frame = seamFrame({ x1Mm: 0, y1Mm: 30, x2Mm: small.widthMm, y2Mm: 30 });
    const { fieldA, fieldB } = lineMeasures(seamWood(planes, frame, 30, 30), 0, 10.5);
    for (const read of [...fieldA.angleRad, ...fieldB.angleRad]) {
      expect(Math.abs(Math.asin(Math.sin(read - angleDeg * rad))) / rad).toBeLessThan(0.4);
    }
  });

  it('glued back with nothing lost disappears', () => {
    for (const angleDeg of [8, 30, -70]) {
      const { seam, own } = measuredJoint({ ...small, angleDeg, spacingMm: 4 });
      expect(seamVisibility(seam, own, 600).v!).toBeLessThan(0.5);
      expect(Math.abs(seamOffset(seam, own).mm!)).toBeLessThan(0.15);
    }
  });

  it('that lost a whole spacing of lines is as good as none: V does not grow with the kerf', () => {
    const lostMm = 3 / Math.cos(20 * rad);
    const { seam, own } = measuredJoint({ ...small, angleDeg: 20, spacingMm: 3, lostMm });
    expect(seamVisibility(seam, own, 600).v!).toBeLessThan(0.5);
  });

  it('slid by k cot(theta) runs through again (best slide of the method)', () => {
    const slideMm = 3.175 / Math.tan(20 * rad);
    const joint = { ...wide, angleDeg: 20, spacingMm: 4.4, lostMm: 3.175 };
    const cut = measuredJoint(joint);
    const slid = measuredJoint({ ...joint, slideMm });
    expect(seamVisibility(cut.seam, cut.own, 600).v!).toBeGreaterThan(2);
    expect(seamVisibility(slid.seam, slid.own, 600).v!).toBeLessThan(0.5);
  });

  it('vanishes by and by as one walks away', () => {
    const { seam, own } = measuredJoint({ ...wide, angleDeg: 10, spacingMm: 4, lostMm: 1.2 });
    const at = [600, 2000, 5000, 15_000].map((mm) => seamVisibility(seam, own, mm).v!);
    expect(at[1]!).toBeGreaterThan(at[2]!);
    expect(at[2]!).toBeGreaterThan(at[3]!);
    expect(at[3]!).toBeLessThan(1);
  });

  it('has steps of half a spacing told the same up or down, not their middle', () => {
    // Between -s/2 and +s/2 nothing lies but the wrap; 0 would call the worst break none.
    const joint = { ...wide, noise: 0, angleDeg: 10, spacingMm: 4, lostMm: 2 };
    const { seam, own } = measuredJoint(joint);
    expect(Math.abs(seamOffset(seam, own).mm!)).toBeGreaterThan(1.7);
  });
});

describe('grainChange', () => {
  it.each([
    [5, 12],
    [12, 5],
    [-4, 4],
    [10, 10],
    [20, -20],
  ])('from %d to %d deg', (angleDeg, angleBDeg) => {
    const { seam, own } = measuredJoint({ ...small, angleDeg, angleBDeg, spacingMm: 3 });
    const change = grainChange(seam, own)!;
    expect(Math.abs(change.angleARad * deg - angleDeg)).toBeLessThan(0.4);
    expect(Math.abs(change.angleBRad * deg - angleBDeg)).toBeLessThan(0.4);
    expect(Math.abs(change.changeRad * deg - (angleBDeg - angleDeg))).toBeLessThan(0.5);
    expect(change.changeSeRad).toBeGreaterThan(0);
  });

  it('reads steep straight lines on either side to 0.1 deg', () => {
    for (const angleDeg of [30, 45, 60, -60, 75]) {
      const { seam, own } = measuredJoint({ ...small, angleDeg, spacingMm: 4 });
      const { angleARad, angleBRad } = grainChange(seam, own)!;
      expect(Math.abs(angleARad * deg - angleDeg)).toBeLessThan(0.1);
      expect(Math.abs(angleBRad * deg - angleDeg)).toBeLessThan(0.1);
    }
  });

  it('turns the short way round 90 deg', () => {
    const { seam, own } = measuredJoint({ ...small, angleDeg: 86, angleBDeg: -86, spacingMm: 3 });
    expect(Math.abs(grainChange(seam, own)!.changeRad * deg - 8)).toBeLessThan(1);
  });

  it('tells the step of colour between the boards', () => {
    // Equal a*, b* and L* from 60 to 64: CIEDE2000 = 4 / SL, SL = 1 + 0.015 * 144 / sqrt(164).
    const colourStep = [4, 0, 0] as const;
    const { seam, own } = measuredJoint({ ...small, angleDeg: 10, spacingMm: 3, colourStep });
    const expected = 4 / (1 + (0.015 * 12 ** 2) / Math.sqrt(20 + 12 ** 2));
    expect(grainChange(seam, own)!.deltaE00).toBeCloseTo(expected, 2);
    const seen = seamVisibility(seam, own, 600);
    expect(seen.cue).toBe('colour');
    expect(seen.v!).toBeCloseTo(expected / 0.8, 1);
  });
});

describe('seamGlueLine', () => {
  // Two and six rows at 6 px/mm.
  it.each([1 / 3, 1])('is width and contrast of a dark line %d mm wide', (width) => {
    const glue = [width, 0.4] as const;
    const { seam, own } = measuredJoint({ ...small, angleDeg: 10, spacingMm: 3, glue });
    const { widthMm, contrast } = seamGlueLine(seam, own);
    expect(widthMm! / width).toBeGreaterThan(0.85);
    expect(widthMm! / width).toBeLessThan(1.15);
    expect(Math.abs(contrast! - (1 - Math.exp(-0.4)))).toBeLessThan(0.05);
  });

  it('is none on a joint without one', () => {
    const { seam, own } = measuredJoint({ ...small, angleDeg: 10, spacingMm: 3 });
    expect([0, null]).toContain(seamGlueLine(seam, own).widthMm);
  });
});

describe('ownLines', () => {
  it('lie on both sides within the boards, and none on boards too narrow for any', () => {
    const planes = gratingPlanes({ ...small, angleDeg: 10, spacingMm: 3 });
    const at = (aMm: number, bMm: number) => {
      const wood = seamWood(planes, seamFrame(ripAt(30, 120)), aMm, bMm);
      return ownLines(wood, { aMm, bMm }, 10, () => true).map((line) => line.etaMm);
    };
    const both = at(30, 24);
    expect(both.every((eta) => eta > -30 && eta < 24 && Math.abs(eta) >= 10)).toBe(true);
    expect(both.some((eta) => eta < 0) && both.some((eta) => eta > 0)).toBe(true);
    expect(at(8, 8)).toEqual([]);
  });

  it('drops a line that is mostly left out', () => {
    const planes = gratingPlanes({ ...small, angleDeg: 10, spacingMm: 3 });
    const wood = seamWood(planes, seamFrame(ripAt(30, 120)), 30, 30);
    const own = ownLines(wood, { aMm: 30, bMm: 30 }, 10, (atMm, eta) => eta > 0 || atMm < 40);
    expect(own.length).toBeGreaterThan(0);
    expect(own.every((line) => line.etaMm > 0)).toBe(true);
  });
});

describe('lostResult', () => {
  it('cannot tell where no grain lines cross, and says so', () => {
    const { seam, own } = measuredJoint({ ...small, angleDeg: 0, spacingMm: 4, lostMm: 2 });
    const { lost, notes } = lostResult(seam, own);
    const untold = { mm: null, seMm: null, slideMm: null, slideSeMm: null };
    expect(lost).toEqual({ ...untold, wedgeMm: null, wedgeSeMm: null });
    expect(notes.join()).toMatch(/too few grain lines cross/i);
  });

  it('of two boards that never met is not told', () => {
    const never = { ...small, angleDeg: 25, angleBDeg: -10, spacingMm: 3, noise: 0.05 };
    const { seam, own } = measuredJoint(never);
    expect(lostResult(seam, own).lost.mm).toBeNull();
  });

  // Straight even grain fixes g cos(theta) - u sin(theta) modulo the spacing, and nothing else.
  const claim = ([angleDeg, lostMm, slideMm]: number[]) => {
    const joint = { ...wide, noise: 0.03, angleDeg: angleDeg!, spacingMm: 4 };
    const { seam, own } = measuredJoint({ ...joint, lostMm: lostMm!, slideMm: slideMm! });
    const { lost } = lostResult(seam, own);
    if (lost.mm !== null) expect(Math.abs(lost.mm - lostMm!)).toBeLessThan(3 * lost.seMm!);
    if (lost.slideMm !== null) {
      expect(Math.abs(lost.slideMm - slideMm!)).toBeLessThan(3 * lost.slideSeMm!);
    }
  };

  it.each([[[10, 1.2, 0]], [[20, 1, 0]], [[-15, 2, 0]], [[-60, 2, 0.5]]])(
    'on even lines (deg, lost, slid: %j) claims nothing wrong',
    claim,
  );

  // g(x) cos(theta) grows along the joint whatever is slid: a wedge is told where steep lines cross.
  it.each([0, 1, -1])('tells a wedge of %d mm on even lines at 45 deg', (wedgeMm) => {
    const joint = { ...wide, noise: 0.03, angleDeg: 45, spacingMm: 4, lostMm: 0.8 };
    const { seam, own } = measuredJoint({ ...joint, wedgeMm });
    const { lost } = lostResult(seam, own);
    expect(lost.wedgeSeMm!).toBeLessThan(0.3);
    expect(Math.abs(lost.wedgeMm! - wedgeMm)).toBeLessThan(3 * lost.wedgeSeMm!);
  });
});

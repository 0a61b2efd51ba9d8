import { describe, expect, it } from 'vitest';
import { distanceToLine } from '../../src/app/geometry/distanceToLine.js';
import { ellipseOutline } from '../../src/app/geometry/ellipseOutline.js';
import { isFairQuad } from '../../src/app/geometry/isFairQuad.js';
import { sameSeam } from '../../src/app/geometry/sameSeam.js';
import { runsAlong, seamThrough } from '../../src/app/geometry/seamThrough.js';

const at = (x: number, y: number) => ({ x, y });

describe('pins', () => {
  it('accept a photographed rectangle and refuse crossed, mirrored or flat ones', () => {
    expect(isFairQuad([at(10, 20), at(900, 5), at(950, 500), at(0, 480)])).toBe(true);
    expect(isFairQuad([at(10, 20), at(950, 500), at(900, 5), at(0, 480)])).toBe(false);
    expect(isFairQuad([at(900, 5), at(10, 20), at(0, 480), at(950, 500)])).toBe(false);
    expect(isFairQuad([at(0, 0), at(100, 0), at(200, 0), at(0, 100)])).toBe(false);
  });
});

describe('lines on the panel', () => {
  const line = { x1Mm: 0, y1Mm: 100, x2Mm: 300, y2Mm: 100 };

  it('measure the distance of a tap and its place along them', () => {
    expect(distanceToLine(line, 120, 107)).toEqual({ distanceMm: 7, alongMm: 120 });
    expect(distanceToLine(line, 304, 97)).toEqual({ distanceMm: 5, alongMm: 300 });
  });

  it('are the same joint when both ends are near', () => {
    expect(sameSeam(line, { ...line, y1Mm: 102, y2Mm: 99 })).toBe(true);
    expect(sameSeam(line, { ...line, x2Mm: 150 })).toBe(false);
  });

  it('run edge to edge through a tapped place', () => {
    const panel = { width: 300, height: 200 };
    const along = seamThrough(panel, 20, 60, 'along');
    const across = seamThrough(panel, 20, 60, 'across');
    expect([along.x1Mm, along.x2Mm, along.y1Mm]).toEqual([0, 300, 60]);
    expect([across.y1Mm, across.y2Mm, across.x1Mm]).toEqual([0, 200, 20]);
    expect([runsAlong(along), runsAlong(across)]).toEqual([true, false]);
  });
});

describe('a patch left out', () => {
  it('lies on its ellipse', () => {
    for (const [x, y] of ellipseOutline(50, 40, 12, 5)) {
      expect(((x - 50) / 12) ** 2 + ((y - 40) / 5) ** 2).toBeCloseTo(1, 9);
    }
  });
});

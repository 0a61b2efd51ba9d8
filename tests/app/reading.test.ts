import { describe, expect, it } from 'vitest';
import { frontPlaceOf, keepFrontInside } from '../../src/app/analysis/frontPlaceOf.js';
import { panelSize } from '../../src/app/analysis/panelSize.js';
import { shownScore } from '../../src/app/analysis/shownScore.js';
import { isFairQuad } from '../../src/app/geometry/isFairQuad.js';
import { draftOf, frameCorners, scaleOf, turnedCorners } from '../../src/app/pages/pinDraft.js';
import { readingAlong, readingOn } from '../../src/app/pages/readingAt.js';
import { readLength, writeLength } from '../../src/app/parts/readLength.js';
import { createPhoto, createProject } from '../../src/app/state/createProject.js';
import { hashOfRoute, jobPages, routeFromHash } from '../../src/app/state/route.js';
import type { ScoreResult, SeamResult } from '../../src/core/results/scoreResult.js';
import { placeSeams } from '../../src/report/words/placeSeams.js';

const photo = createPhoto('p', 'rails', 'i', 4000, 3000);
const { settings } = createProject('x', 'x', '2030-01-01T00:00:00.000Z');

function seam(id: string, yMm: number, v: number): SeamResult {
  const untold = { mm: null, seMm: null };
  return {
    id,
    found: 'photo',
    line: { x1Mm: 0, y1Mm: yMm, x2Mm: 600, y2Mm: yMm },
    p: 0.01,
    visibility: { v, pSeen: null, vanishesAtMm: null, cue: 'break', word: 'shows' },
    grain: { angleADeg: 1, angleBDeg: 1, changeDeg: 0, changeSeDeg: 0.1 },
    offset: { ...untold, spacingMm: null },
    lost: { ...untold, slideMm: null, slideSeMm: null },
    colourStep: { deltaE00: null },
    glueLine: { widthMm: null, contrast: null },
    windows: [100, 300, 500].map((atMm) => ({
      atMm,
      v: atMm === 500 ? null : v,
      cue: 'break',
      offsetMm: 1.5875,
      changeDeg: 0,
    })),
    notes: [],
  };
}
const score: ScoreResult = {
  schema: 'seamgrain/score@1',
  panel: { widthMm: 600, heightMm: 300, pxPerMm: 6 },
  seams: [seam('a', 100, 0.3), seam('b', 200, 2.5)],
  visibility: { v: 2.5, word: 'shows' },
  notes: [],
};

describe('lengths on the page', () => {
  it('take a bare number in the unit shown, and any written unit', () => {
    expect(readLength('7 1/2', 'inch')).toBeCloseTo(190.5, 9);
    expect(readLength('7-1/2', 'inch')).toBeCloseTo(190.5, 9);
    expect(readLength('190.5', 'millimetre')).toBeCloseTo(190.5, 9);
    expect(readLength('19 cm', 'inch')).toBeCloseTo(190, 9);
    expect(() => readLength('a foot', 'inch')).toThrow();
  });

  it('are written so that they read back, to a sixty-fourth of an inch', () => {
    for (const mm of [3.175, 101.6, 600, 914.4]) {
      expect(Math.abs(readLength(writeLength(mm, 'inch'), 'inch') - mm)).toBeLessThanOrEqual(0.2);
      expect(readLength(writeLength(mm, 'millimetre'), 'millimetre')).toBeCloseTo(mm, 2);
    }
  });
});

describe('addresses', () => {
  it('come back as the route they were made from', () => {
    for (const page of jobPages) {
      const route = { page, projectId: '0b9c-44' };
      expect(routeFromHash(hashOfRoute(route))).toEqual(route);
    }
    for (const odd of ['', '#/', '#/x/nowhere', '#/../joints']) {
      expect(routeFromHash(odd)).toEqual({ page: 'start' });
    }
  });
});

describe('the score on the page', () => {
  it('leaves out what the maker took away, and is named by the worst that is left', () => {
    const shown = shownScore(score, { ...photo, droppedSeams: [seam('b', 201, 1).line] });
    expect(shown.seams.map(({ id }) => id)).toEqual(['a']);
    expect(shown.visibility).toEqual({ v: 0.3, word: 'disappears' });
    expect(shownScore(score, photo)).toBe(score);
  });

  it('says what a place along a joint looks like, and where it cannot tell', () => {
    const lower = placeSeams(score)[1]!;
    const units = { units: 'in', denominator: 16 } as const;
    expect(readingAlong(lower, 254, units)).toBe(
      'Lower joint, 10 in from the left: shows (2.5); the lines step 1/16 in.',
    );
    expect(readingAlong(lower, 590, units)).toMatch(/the photo cannot tell/);
  });

  it('says how the grain runs at a place', () => {
    const cell = {
      xMm: 105,
      yMm: 45,
      angleDeg: -4.25,
      angleSeDeg: 0.2,
      coherence: 0.8,
      spacingMm: 2.5,
    };
    expect(readingOn(101.6, 50.8, [cell], { units: 'in' })).toBe(
      '4 in from the left, 2 in from the top: grain at -4.3°, lines 3/32 in apart',
    );
    expect(readingOn(300, 50.8, [cell], { units: 'in' })).not.toMatch(/grain/);
  });
});

describe('pinning', () => {
  it('turn by quarters: the left end becomes the top edge, and four turns are none', () => {
    const upright = frameCorners(400, 300);
    const turned = turnedCorners(upright);
    expect([turned[0], turned[1]]).toEqual([upright[3], upright[0]]);
    expect(isFairQuad(turned)).toBe(true);
    expect(turnedCorners(turnedCorners(turnedCorners(turned)))).toEqual(upright);
  });

  it('gives no scale until the lengths are there, then the pins as they stand', () => {
    const draft = draftOf(photo);
    expect(scaleOf(draft, photo)).toBeNull();
    const sized = { ...draft, widthMm: 900, heightMm: 400 };
    expect(scaleOf(sized, photo)).toMatchObject({ kind: 'size', cornersPx: draft.corners });
    const pinned = { ...photo, scale: scaleOf(sized, photo) };
    expect(draftOf(pinned).corners).toEqual(draft.corners);
  });

  it('knows the panel size from a known distance: 1000 px for 500 mm are 2 px/mm', () => {
    const scale = {
      kind: 'known',
      fromPx: { x: 0, y: 0 },
      toPx: { x: 600, y: 800 },
      lengthMm: 500,
    } as const;
    expect(panelSize({ ...photo, scale })).toEqual({ widthMm: 2000, heightMm: 1500 });
  });
});

describe('the front', () => {
  it('starts in the middle and is kept inside with its kerfs', () => {
    const scale = { kind: 'size', widthMm: 600, heightMm: 300, cornersPx: null } as const;
    const pinned = { ...photo, scale };
    const place = frontPlaceOf(pinned, settings)!;
    expect(place.xMm + settings.frontWidthMm / 2).toBeCloseTo(300, 9);
    const kept = keepFrontInside({ xMm: -50, yMm: 900 }, { widthMm: 600, heightMm: 300 }, settings);
    expect(kept.xMm).toBeCloseTo(settings.kerfMm, 9);
    expect(kept.yMm + settings.frontHeightMm + settings.kerfMm).toBeCloseTo(300, 9);
  });
});

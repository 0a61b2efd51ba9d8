import { describe, expect, it } from 'vitest';
import { defaultScoreOptions } from '../../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../../src/core/pipeline/scorePanel.js';
import { isOpenGap } from '../../../src/core/seam/closedGap.js';
import { drawerFrontPanel } from '../../../src/core/wood/drawerFrontPanel.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';

describe('isOpenGap', () => {
  it('is what is too dark and wide for glue', () => {
    expect(isOpenGap({ widthMm: 0.9, contrast: 0.8 })).toBe(true);
    expect(isOpenGap({ widthMm: 0.1, contrast: 0.8 })).toBe(false);
    expect(isOpenGap({ widthMm: 0.9, contrast: 0.2 })).toBe(false);
    expect(isOpenGap({ widthMm: null, contrast: null })).toBe(false);
  });
});

describe('a front in its reveal', () => {
  const pxPerMm = 4;
  const spec = drawerFrontPanel({
    board: { seed: 52, setting: 'softwood', cut: 'quartered', lengthMm: 320, widthMm: 160 },
    lengthMm: 320,
    widthMm: 160,
    front: { xMm: 80, yMm: 45, widthMm: 150, heightMm: 70 },
    kerfMm: 1e-3,
    ends: 'stay',
    revealMm: 0.9,
  });
  const { image, truth } = drawPanel(spec, { pxPerMm });
  const photo = {
    image,
    pxPerMm,
    widthMm: image.width / pxPerMm,
    heightMm: image.height / pxPerMm,
    notes: [],
  };
  const { seams } = scorePanel(photo, defaultScoreOptions);

  it('is found on all four sides, from corner to corner', () => {
    for (const { line, kind } of truth.seams.filter((seam) => seam.gapMm > 0)) {
      const near = seams.find(({ line: other }) => {
        const middle = (l: typeof line) => [l.x1Mm + l.x2Mm, l.y1Mm + l.y2Mm].map((v) => v / 2);
        const [a, b] = [middle(line), middle(other)];
        return Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!) < 6;
      });
      expect(near, kind).toBeDefined();
      expect(Math.abs(length(near!.line) - length(line))).toBeLessThan(10);
    }
  });

  it('is not scored for its dark line: wood that lost nothing does not jump out across it', () => {
    const open = seams.filter(({ glueLine }) => isOpenGap(glueLine));
    expect(open.length).toBeGreaterThanOrEqual(4);
    for (const { visibility, notes } of open) {
      expect(visibility.cue).not.toBe('glueLine');
      // The dark line itself would: by the closed form of the glue cue it is dozens of times visible.
      expect(visibility.v ?? 0).toBeLessThan(4);
      expect(notes.join(' ')).toContain('reveal');
    }
  });
});

const length = (l: { x1Mm: number; y1Mm: number; x2Mm: number; y2Mm: number }) =>
  Math.hypot(l.x2Mm - l.x1Mm, l.y2Mm - l.y1Mm);

import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/core/random/createRandom.js';
import { findSeams } from '../../../../src/core/seam/find/findSeams.js';
import { panelPlanes } from '../../../../src/core/seam/panelPlanes.js';
import type { PanelPlanes } from '../../../../src/core/seam/seamWood.js';
import { drawPanel } from '../../../../src/core/wood/drawPanel.js';
import { onePiecePanel } from '../../../../src/core/wood/onePiecePanel.js';

const size = { widthMm: 300, heightMm: 160 };

/** A board of faint figure whose b* grows by so much, all at once, 120 mm from its left end. */
function steppedBoard(stepB: number): PanelPlanes {
  const kind = { setting: 'diffuse-porous', cut: 'quartered' } as const;
  const board = { seed: 505, ...kind, lengthMm: size.widthMm, widthMm: size.heightMm };
  const { image } = drawPanel(onePiecePanel({ board, ...size }), { pxPerMm: 5 });
  const planes = panelPlanes({ image, pxPerMm: 5, ...size, notes: [] });
  const { width, data } = planes.lab.b;
  for (let i = 0; i < data.length; i++) if (i % width >= 120) data[i] += stepB;
  return planes;
}

describe('a step of colour straight across a board', () => {
  it('is no joint where it is one of those in which JPEG keeps colour', () => {
    expect(findSeams(steppedBoard(0.2), createRandom(1))).toEqual([]);
  });

  it('is one where it is that of another board', () => {
    const [seam] = findSeams(steppedBoard(3), createRandom(1));
    expect(seam?.kind).toBe('crosscut');
    expect(Math.abs((seam?.line.x1Mm ?? 0) - 120)).toBeLessThan(1);
  });
});

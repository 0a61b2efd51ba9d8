import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { defaultScoreOptions } from '../../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../../src/core/pipeline/scorePanel.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';
import { ripPanel } from '../../../src/core/wood/ripPanel.js';
import { ripAt } from '../seam/gratingJoint.js';

const [widthMm, heightMm, pxPerMm] = [180, 90, 6];

describe('a joint seen through a blur, as from far away', () => {
  // A Gaussian blur of 2 mm leaves exp(-2 pi^2 (2 / s)^2) of lines s mm apart: 4 % at 5 mm.
  it.each([8, 37, 77])(
    'shows the less the more it is blurred (softwood, seed %d)',
    async (seed) => {
      const board = { seed, setting: 'softwood', cut: 'flatsawn' } as const;
      const cuts = [{ atMm: heightMm / 2, lostMm: 3.175 }];
      const { image } = drawPanel(ripPanel({ board, widthMm, heightMm, cuts }), { pxPerMm });
      const { width, height } = image;
      const v: number[] = [];
      for (const blurMm of [0, 0.5, 1, 2]) {
        const picture = sharp(image.data, { raw: { width, height, channels: 3 } });
        const blurred = blurMm > 0 ? picture.blur(blurMm * pxPerMm) : picture;
        const data = new Uint8Array(await blurred.raw().toBuffer());
        const photo = { image: { width, height, data }, pxPerMm, widthMm, heightMm, notes: [] };
        const placedSeams = [ripAt(heightMm / 2, widthMm)];
        const { seams } = scorePanel(photo, { ...defaultScoreOptions, find: false, placedSeams });
        v.push(seams[0]!.visibility.v!);
      }
      for (let i = 1; i < v.length; i++) expect(v[i]!).toBeLessThan(1.1 * v[i - 1]!);
      expect(v[3]!).toBeLessThan(v[0]! / 3);
    },
  );
});

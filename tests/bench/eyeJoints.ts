import { existsSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { PanelPhoto } from '../../src/core/image/panelPhoto.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import type { LineMm } from '../../src/core/results/scoreResult.js';
import { crosscutPanel } from '../../src/core/wood/crosscutPanel.js';
import type { CutSpec } from '../../src/core/wood/cutSpec.js';
import { drawPanel } from '../../src/core/wood/drawPanel.js';
import { ripPanel } from '../../src/core/wood/ripPanel.js';
import { cuts, photoOf, settings } from './accuracyPanels.js';

/** A joint across the middle of a small panel, for the eye and for the score. */
export interface EyeJoint {
  readonly what: string;
  readonly photo: PanelPhoto;
  readonly line: LineMm;
}

export const eyeSize = { widthMm: 130, heightMm: 64 };
const pxPerMm = 6;
/** Seeds from here on, apart from the other benches'. */
const firstSeed = 8800;

/** What is done at the middle, by turns. */
const makings: readonly { readonly what: string; readonly cut: Omit<CutSpec, 'atMm'> }[] = [
  { what: 'nothing lost', cut: {} },
  { what: 'kerf', cut: { lostMm: 3.175 } },
  { what: 'kerf, slid 2 mm', cut: { lostMm: 3.175, slideMm: 2 } },
  { what: 'thin glue line', cut: { glueWidthMm: 0.12, glueContrast: 0.25 } },
  {
    what: 'kerf and another colour',
    cut: { lostMm: 3.175, colourShift: { dL: 3, da: 0.5, db: 1 } },
  },
  { what: 'another colour', cut: { colourShift: { dL: -1.2, da: 0, db: 0 } } },
];

/** Rips and crosscuts through every setting and cut. */
export function drawnJoints(): EyeJoint[] {
  const kinds = settings.flatMap((setting) => cuts.map((cut) => ({ setting, cut })));
  return kinds.flatMap(({ setting, cut }, k) =>
    makings.map(({ what, cut: making }, m) => {
      const seed = firstSeed + k * makings.length + m;
      const board = { seed, setting, cut, lengthMm: eyeSize.widthMm, widthMm: eyeSize.heightMm };
      const across = (k + m) % 4 === 3;
      const atMm = (across ? eyeSize.widthMm : eyeSize.heightMm) / 2;
      const slideMm = across && making.lostMm ? 1.2 : making.slideMm;
      const spec = { board, ...eyeSize, cuts: [{ atMm, ...making, ...(slideMm && { slideMm }) }] };
      const { image, truth } = drawPanel(across ? crosscutPanel(spec) : ripPanel(spec), {
        pxPerMm,
      });
      const name = `${setting} ${cut}, ${across ? 'crosscut' : 'rip'}, ${what}`;
      return { what: name, photo: photoOf(image, pxPerMm), line: truth.seams[0].line };
    }),
  );
}

/** Strips cut out of photographs of continuous wood, and the same places uncut; 4 px/mm assumed. */
export async function realJoints(files: readonly string[], upright: boolean): Promise<EyeJoint[]> {
  const out: EyeJoint[] = [];
  const [width, height] = [eyeSize.widthMm * 4, eyeSize.heightMm * 4];
  for (const file of files.filter(existsSync)) {
    const { data, info } = await sharp(file)
      .rotate(upright ? 90 : 0)
      .removeAlpha()
      .toColourspace('srgb')
      .raw()
      .toBuffer({ resolveWithObject: true });
    const random = createRandom(firstSeed);
    for (const [place, strip] of [0, 13, 13, 0, 12].entries()) {
      if (info.width < width || info.height < height + strip) continue;
      const left = random.integer(info.width - width + 1);
      const top = random.integer(info.height - height - strip + 1);
      const rows = Array.from({ length: height }, (_, y) => {
        const from = top + y + (y >= height / 2 ? strip : 0);
        return data.subarray(
          3 * (from * info.width + left),
          3 * (from * info.width + left + width),
        );
      });
      const image = { width, height, data: new Uint8Array(Buffer.concat(rows)) };
      const y = eyeSize.heightMm / 2;
      out.push({
        what: `${join(file).split('/').pop()}, place ${place + 1}, ${strip > 0 ? `${strip} px cut out` : 'uncut'}`,
        photo: photoOf(image, 4),
        line: { x1Mm: 0, y1Mm: y, x2Mm: eyeSize.widthMm, y2Mm: y },
      });
    }
  }
  return out;
}

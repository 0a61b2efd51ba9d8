import sharp from 'sharp';
import { type EyeJoint, eyeSize } from './eyeJoints.js';

/** Life size on a screen of 96 px to the inch. */
const screenPxPerMm = 96 / 25.4;
const gapPx = 30;
const labelPx = 22;

/** One page of joints at life size, numbered; ticks outside a tile show where its joint runs. */
export async function eyeSheet(
  joints: readonly EyeJoint[],
  firstNumber: number,
  columns: number,
): Promise<Buffer> {
  const [w, h] = [eyeSize.widthMm, eyeSize.heightMm].map((mm) => Math.round(mm * screenPxPerMm));
  const rows = Math.ceil(joints.length / columns);
  const [width, height] = [gapPx + columns * (w + gapPx), gapPx + rows * (h + labelPx + gapPx)];
  const at = (k: number) => ({
    left: gapPx + (k % columns) * (w + gapPx),
    top: gapPx + labelPx + Math.floor(k / columns) * (h + labelPx + gapPx),
  });
  const tiles = await Promise.all(
    joints.map(async ({ photo: { image } }, k) => ({
      input: await sharp(image.data, {
        raw: { width: image.width, height: image.height, channels: 3 },
      })
        .resize(w, h)
        .png()
        .toBuffer(),
      ...at(k),
    })),
  );
  const marks = joints.map(({ line }, k) => {
    const { left, top } = at(k);
    const rip = Math.abs(line.x2Mm - line.x1Mm) > Math.abs(line.y2Mm - line.y1Mm);
    const [x, y] = [left + line.x1Mm * screenPxPerMm, top + line.y1Mm * screenPxPerMm];
    const ticks = rip
      ? `M${left - 12} ${y}h9M${left + w + 3} ${y}h9`
      : `M${x} ${top - 8}v6M${x} ${top + h + 2}v8`;
    return `<text x="${left}" y="${top - 7}">${firstNumber + k}</text><path d="${ticks}"/>`;
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><g font-family="sans-serif" font-size="15" stroke-width="1.5"><style>path{stroke:#000;fill:none}</style>${marks.join('')}</g></svg>`;
  return sharp({ create: { width, height, channels: 3, background: '#8c8c8c' } })
    .composite([...tiles, { input: Buffer.from(svg), left: 0, top: 0 }])
    .png()
    .toBuffer();
}

import sharp from 'sharp';
import type { NamedSpec } from './accuracyDrawn.js';
import { drawBench } from './accuracyPanels.js';
import type { SeamTrial } from './accuracySeams.js';

const count = 5;
/** Drawn at this share of the bench's size. */
const share = 0.4;

/** A case that went wrong: a false seam, or the seam missed that should show most. */
export interface WorstCase {
  readonly name: string;
  readonly what: string;
  /** The seam missed, by its place among the panel's own; null for a false one. */
  readonly seam: number | null;
}

/** The five worst: false seams first, then seams missed, by their V by truth. */
export function worstTrials(trials: readonly SeamTrial[]): WorstCase[] {
  const falseOnes = trials
    .filter(({ falseSeams }) => falseSeams > 0)
    .map(({ name, p }) => ({ name, what: `a seam found where none is, p ${p[0]}`, seam: null }));
  const missed = trials.flatMap(({ name, seams }) =>
    seams.flatMap(({ found, v, crossingDeg }, seam) =>
      found ? [] : [{ name, v, seam, crossingDeg }],
    ),
  );
  missed.sort((a, b) => b.v - a.v);
  const told = missed.map(({ name, v, seam, crossingDeg }) => ({
    name,
    what: `missed, V by truth ${v.toFixed(1)}, lines ${crossingDeg.toFixed(0)} deg to it`,
    seam,
  }));
  return [...falseOnes, ...told].slice(0, count);
}

/** The cases under each other, each with its name; ticks outside show where the seam missed runs. */
export async function worstSheet(
  worst: readonly WorstCase[],
  specs: readonly NamedSpec[],
): Promise<Buffer> {
  const [gap, label] = [24, 24];
  const tiles = await Promise.all(
    worst.flatMap((one) => {
      const spec = specs.find(({ name }) => name === one.name)?.spec;
      return spec ? [tile(one, spec)] : [];
    }),
  );
  const width = Math.max(1, ...tiles.map((t) => t.width)) + 2 * gap;
  let y = gap;
  const placed = tiles.map((t) => {
    const top = y + label;
    y = top + t.height + gap;
    return { ...t, top };
  });
  const marks = placed.map(({ one, line, top, width: w, height: h }) => {
    const text = `<text x="${gap}" y="${top - 8}">${one.name}: ${one.what}</text>`;
    if (!line) return text;
    const rip = Math.abs(line.x2 - line.x1) > Math.abs(line.y2 - line.y1);
    const ticks = rip
      ? `M${gap - 16} ${top + line.y1}h12M${gap + w + 4} ${top + line.y2}h12`
      : `M${gap + line.x1} ${top - 6}v4M${gap + line.x2} ${top + h + 3}v12`;
    return `${text}<path d="${ticks}"/>`;
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${y}"><g font-family="sans-serif" font-size="14"><style>path{stroke:#000;stroke-width:2}</style>${marks.join('')}</g></svg>`;
  return sharp({ create: { width, height: y, channels: 3, background: '#c8c8c8' } })
    .composite([
      ...placed.map(({ input, top }) => ({ input, left: gap, top })),
      { input: Buffer.from(svg), left: 0, top: 0 },
    ])
    .jpeg({ quality: 82 })
    .toBuffer();
}

async function tile(one: WorstCase, spec: NamedSpec['spec']) {
  const { photo, truth } = drawBench(spec);
  const { width, height, data } = photo.image;
  const size = { width: Math.round(width * share), height: Math.round(height * share) };
  const input = await sharp(data, { raw: { width, height, channels: 3 } })
    .resize(size.width, size.height)
    .png()
    .toBuffer();
  const px = photo.pxPerMm * share;
  const mm = one.seam === null ? null : truth.seams[one.seam].line;
  const line = mm && { x1: mm.x1Mm * px, y1: mm.y1Mm * px, x2: mm.x2Mm * px, y2: mm.y2Mm * px };
  return { one, input, line, ...size };
}

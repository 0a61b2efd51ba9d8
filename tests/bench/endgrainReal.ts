import { execFileSync, execSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { angleToFaceDeg } from '../../src/core/board/endGrain/ringDirection.js';
import { endgrainPanel } from '../../src/core/pipeline/endgrainPanel.js';

// A photograph of a sawn log end, 256 x 256 px, out of Debian's package ufoai-textures (no
// scale is known). It is fetched by apt at bench time and never kept in the project.
const debianPackage = 'ufoai-textures';
const inArchive = 'textures/tex_nature/tree_chopped.jpg';
/**
 * The pith in photo pixels, placed by eye on the enlarged picture (centre of the innermost ring
 * crack, x 101 to 174, y 88 to 158, and of the rings above it), good to about 5 px.
 */
const pithPx = { x: 137, y: 122 };
/** Parts cut out as if they were board ends: left, top, width, height, px. */
const parts = [
  { name: 'above the pith', left: 45, top: 20, width: 180, height: 65 },
  { name: 'below the pith', left: 60, top: 165, width: 100, height: 60 },
  { name: 'round the pith', left: 40, top: 85, width: 190, height: 75 },
  { name: 'left of the pith', left: 20, top: 40, width: 80, height: 170 },
] as const;
/** Scale is not known: read as if it were each of these, px/mm. */
const scales = [3, 4] as const;

/** The real end grain's table, or why it could not be had. */
export async function realEndgrain(): Promise<string> {
  const folder = join('out', 'bench', 'real-endgrain');
  const photo = join(folder, inArchive);
  try {
    if (!existsSync(photo)) fetchPhoto(folder);
  } catch (error) {
    return `Not run here: the photograph could not be fetched (${String((error as Error).message).split('\n')[0]}).`;
  }
  const rows: string[] = [];
  for (const part of parts) {
    for (const pxPerMm of scales) rows.push(await rowOf(photo, part, pxPerMm));
  }
  return [
    `One photograph of a sawn log's end (256 x 256 px, \`${inArchive}\` of Debian's ${debianPackage}, fetched when the bench runs), pith marked by eye at (${pithPx.x}, ${pithPx.y}) px, good to 5 px. Parts of it are read as board ends. Its scale is not known, so each is read as if at 3 and at 4 px/mm; errors in pixels.`,
    '',
    '| part | as if px/mm | pith off the mark, px | stated error, px | ring angle off that about the mark, rms deg |',
    '|---|---|---|---|---|',
    ...rows,
  ].join('\n');
}

function fetchPhoto(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const options = { cwd: folder, stdio: 'pipe' } as const;
  execFileSync('apt-get', ['download', debianPackage], options);
  const deb = readdirSync(folder).find((name) => name.endsWith('.deb'))!;
  const archive = './usr/share/games/ufoai/base/0textures.pk3';
  execSync(`dpkg-deb --fsys-tarfile ${deb} | tar x ${archive}`, options);
  execFileSync('unzip', ['-oq', archive, inArchive], options);
  execSync(`rm -rf usr ${deb}`, options);
}

async function rowOf(
  photo: string,
  { name, left, top, width, height }: (typeof parts)[number],
  pxPerMm: number,
): Promise<string> {
  const { data } = await sharp(photo)
    .extract({ left, top, width, height })
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const size = { widthMm: width / pxPerMm, heightMm: height / pxPerMm };
  const image = { width, height, data: new Uint8Array(data) };
  const { pith, ringAngle } = endgrainPanel({ image, pxPerMm, ...size, notes: [] });
  if (ringAngle.length === 0) return `| ${name} | ${pxPerMm} | cannot tell | | |`;
  const marked = { x: (pithPx.x - left) / pxPerMm, y: (pithPx.y - top) / pxPerMm };
  const squares = ringAngle.map(({ xMm, angleDeg }) => {
    const across = Math.atan2(marked.y - size.heightMm / 2, marked.x - xMm);
    return (angleDeg - angleToFaceDeg(across)) ** 2;
  });
  const rms = Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length);
  const off = pith && Math.hypot(pith.xMm - marked.x, pith.yMm - marked.y) * pxPerMm;
  return `| ${name} | ${pxPerMm} | ${off?.toFixed(0) ?? 'cannot tell'} | ${pith ? (pith.seMm * pxPerMm).toFixed(0) : ''} | ${rms.toFixed(1)} |`;
}

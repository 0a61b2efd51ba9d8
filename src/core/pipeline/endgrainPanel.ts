import { type Pith, pithOf } from '../board/pithOf.js';
import { ringNormals } from '../board/ringNormals.js';
import { logLuminancePlane } from '../colour/logLuminancePlane.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import type { Plane } from '../image/plane.js';
import { replicateBorder } from '../image/replicateBorder.js';
import { sampleBilinear } from '../image/sampleBilinear.js';
import type { Progress } from '../progress.js';
import type { CutShares } from '../results/compareResult.js';
import type { EndgrainResult } from '../results/endgrainResult.js';
import { bandAmplitudes } from '../seam/bandAmplitudes.js';
import { spacingMm } from '../seam/windowCues.js';

const stepMm = 5;
const profileStepMm = 0.2;
/** A pith less sure than half its distance from the board's middle is not told. */
const leastSureShare = 0.5;
/** Normals that miss their best centre by more than this (median, 9 deg) are no rings' normals. */
const mostMissRad = 0.16;

/**
 * Reads a board's end: where the pith lay, how the rings stand to the wide face (the photo's
 * horizontal), how wide they are, and which share of the width is sawn which way.
 *
 * The ring at (x, mid-thickness) is square to the line to the pith: its angle to the face is
 * atan(|x - px| / |y - py|). Classes by the Architectural Woodwork Standards, 1st ed. 2009, App. B:
 * up to 30 deg plain (flatsawn), 30 to 60 rift, 60 to 90 quartered.
 */
export function endgrainPanel(photo: PanelPhoto, progress?: Progress): EndgrainResult {
  progress?.(0.1, 'reading the rings');
  const plane = replicateBorder(logLuminancePlane(photo.image), Math.ceil(photo.pxPerMm));
  const pith = pithOf(ringNormals(plane, photo.pxPerMm), photo.widthMm);
  const panel = { widthMm: photo.widthMm, heightMm: photo.heightMm, pxPerMm: photo.pxPerMm };
  const away = pith && Math.hypot(pith.xMm - photo.widthMm / 2, pith.yMm - photo.heightMm / 2);
  const unsure = !pith || away === null || pith.seMm > leastSureShare * Math.max(10, away);
  if (unsure || pith.missRad > mostMissRad) {
    return {
      schema: 'seamgrain/endgrain@1',
      panel,
      pith: null,
      ringAngle: [],
      ringWidthMm: { median: null, p10: null, p90: null },
      cut: null,
      notes: [
        ...photo.notes,
        'Cannot tell: the rings of this end do not point at one centre. Plane or sand it clean, or take the photo closer.',
      ],
    };
  }
  const count = Math.max(3, Math.round(photo.widthMm / stepMm));
  const ringAngle = Array.from({ length: count }, (_, k) => {
    const xMm = ((k + 0.5) * photo.widthMm) / count;
    return { xMm, angleDeg: ringAngleDeg(pith, xMm, photo.heightMm / 2) };
  });
  progress?.(0.7, 'counting rings');
  const widths = ringWidths(plane, photo, pith);
  const cut = sharesOf(ringAngle.map((ring) => ring.angleDeg));
  progress?.(1, 'done');
  return {
    schema: 'seamgrain/endgrain@1',
    panel,
    pith: { xMm: pith.xMm, yMm: pith.yMm, seMm: pith.seMm },
    ringAngle,
    ringWidthMm: widths,
    cut,
    notes: [
      ...photo.notes,
      'Cut by the Architectural Woodwork Standards (2009, App. B): flatsawn up to 30 deg, rift 30 to 60, quartered 60 to 90.',
      ...(cut.flatsawn > 0.5
        ? ['Flatsawn stock cups as it dries: the side away from the pith goes hollow.']
        : []),
    ],
  };
}

const ringAngleDeg = (pith: Pith, xMm: number, yMm: number) =>
  (Math.atan2(Math.abs(xMm - pith.xMm), Math.abs(yMm - pith.yMm)) * 180) / Math.PI;

function sharesOf(angles: readonly number[]): CutShares {
  const share = (test: (deg: number) => boolean) => angles.filter(test).length / angles.length;
  return {
    flatsawn: share((deg) => deg < 30),
    rift: share((deg) => deg >= 30 && deg < 60),
    quartered: share((deg) => deg >= 60),
  };
}

/** Ring widths from the octaves of profiles along the radius through the board. */
function ringWidths(plane: Plane, photo: PanelPhoto, pith: Pith): EndgrainResult['ringWidthMm'] {
  const widths: number[] = [];
  for (let xMm = 3; xMm < photo.widthMm - 3; xMm += 3) {
    const yMm = photo.heightMm / 2;
    const distance = Math.hypot(xMm - pith.xMm, yMm - pith.yMm);
    if (distance < 5) continue;
    const [ux, uy] = [(xMm - pith.xMm) / distance, (yMm - pith.yMm) / distance];
    const half = 15;
    const n = Math.round((2 * half) / profileStepMm);
    const u = Float64Array.from({ length: n }, (_, k) => (k + 0.5) * profileStepMm);
    const profile = u.map((t) => {
      const x = (xMm + (t - half) * ux) * photo.pxPerMm - 0.5;
      const y = (yMm + (t - half) * uy) * photo.pxPerMm - 0.5;
      const inside = x >= 0 && y >= 0 && x < plane.width && y < plane.height;
      return inside ? sampleBilinear(plane, x, y) : Number.NaN;
    });
    const bands = bandAmplitudes(profile, profile, u, half);
    if (bands.length > 0) widths.push(spacingMm(bands, 'A'));
  }
  widths.sort((a, b) => a - b);
  const at = (q: number) => widths[Math.floor(q * (widths.length - 1))] ?? null;
  return { median: at(0.5), p10: at(0.1), p90: at(0.9) };
}

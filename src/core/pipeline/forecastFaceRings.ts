import { grainField } from '../grain/grainField.js';
import { createPlane, type Plane } from '../image/plane.js';
import type { FaceRings } from '../results/faceRings.js';
import type { PanelPlanes } from '../seam/seamWood.js';
import { faceRingsOf } from './faceRingsPanel.js';

/** No single board is wider: its rings would be those of several (assumption), mm. */
const widestMm = 350;
/** A longer piece of the face counts no more rings and takes longer, mm. */
const longestMm = 400;

/**
 * How the rings stand to the uncut face, as far as its ring lines tell (`faceRingsPanel`), from the
 * middle of the panel.
 */
export function forecastFaceRings({
  logLuminance,
  pxPerMm,
}: Pick<PanelPlanes, 'logLuminance' | 'pxPerMm'>): FaceRings {
  const heightMm = logLuminance.height / pxPerMm;
  if (heightMm > widestMm) return { ringAngle: [], overPith: null, notes: [tooWide] };
  const plane = middleOf(logLuminance, Math.round(longestMm * pxPerMm));
  return faceRingsOf(grainField(plane, pxPerMm), heightMm);
}

const tooWide =
  'Cannot tell the ring angle: a panel so wide is hardly one board, and each board has its own rings.';

function middleOf(plane: Plane, mostPx: number): Plane {
  if (plane.width <= mostPx) return plane;
  const out = createPlane(mostPx, plane.height);
  const first = (plane.width - mostPx) >> 1;
  for (let y = 0; y < plane.height; y++) {
    const from = y * plane.width + first;
    out.data.set(plane.data.subarray(from, from + mostPx), y * mostPx);
  }
  return out;
}

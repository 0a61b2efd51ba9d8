import { labPlanes } from '../colour/labPlanes.js';
import { logLuminancePlane } from '../colour/logLuminancePlane.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import { replicateBorder } from '../image/replicateBorder.js';
import type { PanelPlanes } from './seamWood.js';

/** Frame of the photo that is not trusted to be wood, mm. */
const borderMm = 1;

/**
 * The planes that a panel is measured on: natural log of linear luminance at the working scale,
 * so that a difference is a contrast and a lamp's fall-off only a slow slope, and Lab colour in
 * patches of about a millimetre. The outermost millimetre is painted over with the wood inside it.
 */
export function panelPlanes(photo: PanelPhoto): PanelPlanes {
  const lab = labPlanes(photo.image, Math.max(1, Math.round(photo.pxPerMm)));
  for (const plane of [lab.lightness, lab.a, lab.b]) replicateBorder(plane, 1);
  const logLuminance = logLuminancePlane(photo.image);
  replicateBorder(logLuminance, Math.ceil(borderMm * photo.pxPerMm));
  return { pxPerMm: photo.pxPerMm, logLuminance, lab };
}

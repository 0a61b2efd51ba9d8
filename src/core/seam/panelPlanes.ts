import { labPlanes } from '../colour/labPlanes.js';
import { logLuminancePlane } from '../colour/logLuminancePlane.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import type { PanelPlanes } from './seamWood.js';

/**
 * The planes that a panel is measured on: natural log of linear luminance at the working scale,
 * so that a difference is a contrast and a lamp's fall-off only a slow slope, and Lab colour in
 * patches of about a millimetre.
 */
export function panelPlanes(photo: PanelPhoto): PanelPlanes {
  return {
    pxPerMm: photo.pxPerMm,
    logLuminance: logLuminancePlane(photo.image),
    lab: labPlanes(photo.image, Math.max(1, Math.round(photo.pxPerMm))),
  };
}

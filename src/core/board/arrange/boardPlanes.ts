import { labPlanes } from '../../colour/labPlanes.js';
import { logLuminancePlane } from '../../colour/logLuminancePlane.js';
import type { PanelPhoto } from '../../image/panelPhoto.js';
import type { PanelPlanes } from '../../seam/seamWood.js';

/**
 * A board's planes up to its very edge: the wood there is what the joint is made of. A panel's
 * planes, by contrast, leave its outermost millimetre out.
 */
export function boardPlanes(photo: PanelPhoto): PanelPlanes {
  return {
    pxPerMm: photo.pxPerMm,
    logLuminance: logLuminancePlane(photo.image),
    lab: labPlanes(photo.image, Math.max(1, Math.round(photo.pxPerMm))),
  };
}

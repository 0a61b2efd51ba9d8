import { seamThrough } from '../geometry/seamThrough.js';
import type { Tool } from '../pages/tools.js';
import { leaveOut, placeSeam } from './panelChanges.js';

const patchMm = 12;

/** Does what the tool does at a place on the panel; false when the tool only looks. */
export function applyTool(
  tool: Tool,
  photoId: string,
  panelMm: { readonly width: number; readonly height: number },
  xMm: number,
  yMm: number,
): boolean {
  if (xMm < 0 || yMm < 0 || xMm > panelMm.width || yMm > panelMm.height) return tool !== 'look';
  if (tool === 'seamAlong') placeSeam(photoId, seamThrough(panelMm, xMm, yMm, 'along'));
  if (tool === 'seamAcross') placeSeam(photoId, seamThrough(panelMm, xMm, yMm, 'across'));
  if (tool === 'knot' || tool === 'glare') {
    leaveOut(photoId, {
      id: crypto.randomUUID(),
      kind: tool,
      xMm,
      yMm,
      radiusXMm: patchMm,
      radiusYMm: patchMm,
    });
  }
  return tool !== 'look';
}

import { type CutPanelOptions, cutPanel } from './cutPanel.js';
import type { PanelSpec } from './panelSpec.js';

/** One uncut board face: no seam anywhere. */
export function onePiecePanel(options: Omit<CutPanelOptions, 'cuts'>): PanelSpec {
  return cutPanel('rip', { ...options, cuts: [] });
}

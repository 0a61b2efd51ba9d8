import { type CutPanelOptions, cutPanel } from './cutPanel.js';
import type { PanelSpec } from './panelSpec.js';

/** A board ripped along its length and glued back: seams along x (see cutPanel). */
export function ripPanel(options: CutPanelOptions): PanelSpec {
  return cutPanel('rip', options);
}

import { type CutPanelOptions, cutPanel } from './cutPanel.js';
import type { PanelSpec } from './panelSpec.js';

/** A board crosscut and put together again end to end: seams along y (see cutPanel). */
export function crosscutPanel(options: CutPanelOptions): PanelSpec {
  return cutPanel('crosscut', options);
}

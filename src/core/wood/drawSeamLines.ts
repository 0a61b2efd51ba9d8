import type { PanelCanvas } from './panelCanvas.js';
import type { SeamSpec } from './panelSpec.js';

/**
 * Darkens (or brightens) the pixels along each seam's glue line, and opens its gap: both as bands
 * of known width centred on the line, with exact coverage along the line's normal.
 */
export function drawSeamLines(panel: PanelCanvas, seams: readonly SeamSpec[]): void {
  for (const seam of seams) {
    if (seam.gapMm > 0) darkenBand(panel, seam, seam.gapMm, 0.965);
    else if (seam.glueWidthMm > 0) darkenBand(panel, seam, seam.glueWidthMm, seam.glueContrast);
  }
}

function darkenBand(panel: PanelCanvas, seam: SeamSpec, widthMm: number, contrast: number): void {
  const s = panel.pxPerMm;
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const length = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm);
  const tx = (x2Mm - x1Mm) / length;
  const ty = (y2Mm - y1Mm) / length;
  const half = (widthMm * s) / 2;
  const margin = half + 1;
  const left = Math.max(0, Math.floor(Math.min(x1Mm, x2Mm) * s - margin));
  const right = Math.min(panel.width - 1, Math.ceil(Math.max(x1Mm, x2Mm) * s + margin));
  const top = Math.max(0, Math.floor(Math.min(y1Mm, y2Mm) * s - margin));
  const bottom = Math.min(panel.height - 1, Math.ceil(Math.max(y1Mm, y2Mm) * s + margin));
  for (let y = top; y <= bottom; y++) {
    for (let x = left; x <= right; x++) {
      const px = x + 0.5 - x1Mm * s;
      const py = y + 0.5 - y1Mm * s;
      const away = Math.abs(-ty * px + tx * py);
      const along = tx * px + ty * py;
      if (away >= half + 0.5) continue;
      const across = Math.min(away + 0.5, half) - Math.max(away - 0.5, -half);
      const inside = Math.min(1, along + 0.5) * Math.min(1, length * s - along + 0.5);
      if (across <= 0 || inside <= 0 || along < -0.5 || along > length * s + 0.5) continue;
      const keep = 1 - contrast * across * inside;
      const at = 3 * (y * panel.width + x);
      panel.light[at]! *= keep;
      panel.light[at + 1]! *= keep;
      panel.light[at + 2]! *= keep;
    }
  }
}

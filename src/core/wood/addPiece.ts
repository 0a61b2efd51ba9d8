import type { PanelCanvas } from './panelCanvas.js';
import type { PieceCanvas } from './pieceCanvas.js';
import { palettePerUnit, paletteSize, paletteZero, type WoodPalette } from './woodPalette.js';

/** Vessels lie open and shadowed: they take a little more blue than red light. */
const poreAbsorption = [0.85, 1, 1.12] as const;
const densestPore = 1.3;

/**
 * Lays a painted piece into the panel, weighted by how much of each pixel its outline covers
 * (product of the half-plane coverages of its edges; exact along straight edges).
 */
export function addPiece(
  panel: PanelCanvas,
  piece: PieceCanvas,
  palette: WoodPalette,
  outline: readonly (readonly [number, number])[],
): void {
  const edges = outline.map(([x0, y0], i) => {
    const [x1, y1] = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(x1 - x0, y1 - y0);
    const nx = -(y1 - y0) / length;
    const ny = (x1 - x0) / length;
    return { nx, ny, offset: -(nx * x0 + ny * y0) * panel.pxPerMm };
  });
  const { red, green, blue } = palette;
  for (let row = 0; row < piece.height; row++) {
    const y = piece.top + row + 0.5;
    // Most rows lie wholly inside most edges: those need no look at each pixel.
    const near = edges.filter(({ nx, ny, offset }) => {
      const from = 0.5 + nx * (piece.left + 0.5) + ny * y + offset;
      return Math.min(from, from + nx * (piece.width - 1)) < 1;
    });
    for (let column = 0; column < piece.width; column++) {
      const x = piece.left + column + 0.5;
      let share = 1;
      for (let i = 0; i < near.length; i++) {
        const edge = near[i]!;
        const inside = 0.5 + edge.nx * x + edge.ny * y + edge.offset;
        if (inside < 1) share *= Math.max(inside, 0);
      }
      if (share === 0) continue;
      const k = row * piece.width + column;
      const at = (piece.top + row) * panel.width + piece.left + column;
      const tone = paletteZero + palettePerUnit * piece.tone[k]!;
      const entry = tone < 0 ? 0 : tone > paletteSize - 1 ? paletteSize - 1 : (tone + 0.5) | 0;
      panel.covered[at]! += share;
      const pore = piece.pores[k]!;
      if (pore === 0) {
        panel.light[3 * at]! += share * red[entry]!;
        panel.light[3 * at + 1]! += share * green[entry]!;
        panel.light[3 * at + 2]! += share * blue[entry]!;
      } else {
        const dark = Math.min(pore, densestPore);
        panel.light[3 * at]! += share * red[entry]! * Math.exp(-poreAbsorption[0] * dark);
        panel.light[3 * at + 1]! += share * green[entry]! * Math.exp(-poreAbsorption[1] * dark);
        panel.light[3 * at + 2]! += share * blue[entry]! * Math.exp(-poreAbsorption[2] * dark);
      }
    }
  }
}

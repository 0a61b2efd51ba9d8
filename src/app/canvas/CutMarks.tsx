import type { LayoutResult } from '../../core/results/layoutResult.js';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';

/** The kerfs to scale, each with its number, and the names of the pieces between them. */
export function CutMarks({
  layout,
  frame,
}: {
  readonly layout: LayoutResult;
  readonly frame: ScoreFrame;
}) {
  const { panel, scale } = frame;
  const strips = layout.pieces.filter(({ strip }) => strip !== null);
  return (
    <g>
      {layout.cuts.map(({ n, kind, band, strip }) => {
        const inStrip = strips.filter((piece) => piece.strip === strip);
        const top = Math.min(...inStrip.map(({ onPanel }) => onPanel.yMm));
        const tall = Math.max(...inStrip.map(({ widthMm }) => widthMm));
        const from = band.fromMm * scale;
        const wide = Math.max(1.5, (band.toMm - band.fromMm) * scale);
        const box =
          kind === 'rip'
            ? { x: panel.x, y: panel.y + from, width: panel.width, height: wide }
            : { x: panel.x + from, y: panel.y + top * scale, width: wide, height: tall * scale };
        const tag =
          kind === 'rip'
            ? { x: panel.x + 16, y: box.y + wide / 2 }
            : { x: box.x + wide / 2, y: box.y - 16 };
        return (
          <g key={n}>
            <rect {...box} className="kerf" />
            <circle cx={tag.x} cy={tag.y} r={11} className="tag" />
            <text x={tag.x} y={tag.y} className="tag-word">
              {n}
            </text>
          </g>
        );
      })}
      {layout.pieces.map(({ name, onPanel, lengthMm, widthMm }) => {
        const x = panel.x + (onPanel.xMm + lengthMm / 2) * scale;
        const y = panel.y + (onPanel.yMm + widthMm / 2) * scale;
        // A name that does not fit its piece is left out: the cut list has it.
        const fits = name.length * 8 < lengthMm * scale && widthMm * scale > 18;
        return fits ? (
          <text key={`${name} ${onPanel.xMm} ${onPanel.yMm}`} x={x} y={y} className="piece-name">
            {name}
          </text>
        ) : null;
      })}
    </g>
  );
}

import type { PanelPhoto } from '../image/panelPhoto.js';
import { radFromDeg } from '../units/radFromDeg.js';
import type { BoardSpec } from '../wood/boardSpec.js';
import { drawPanel } from '../wood/drawPanel.js';
import { onePiecePanel } from '../wood/onePiecePanel.js';
import { photograph } from '../wood/photograph.js';
import type { ImaginedWood } from './forecastOptions.js';

/** Distance from the pith to the face's middle: flatsawn from the heart's side of the log. */
const flatsawnRadiusMm = 75;

/**
 * The board that the wish describes: rings at the given angle to the face at its middle,
 * sin(angle) = distance aside / radius.
 */
export function imaginedBoard(
  wood: ImaginedWood,
  size: { readonly widthMm: number; readonly heightMm: number },
): BoardSpec {
  const angle = radFromDeg(wood.ringAngleDeg);
  // Far enough out that the ring angle changes little over the width of a quartered board.
  const radiusMm = flatsawnRadiusMm + size.heightMm * Math.sin(angle);
  return {
    seed: wood.seed,
    setting: wood.setting,
    lengthMm: size.widthMm,
    widthMm: size.heightMm,
    pithYMm: size.heightMm / 2 + radiusMm * Math.sin(angle),
    pithDepthMm: Math.max(radiusMm * Math.cos(angle), 1),
    ringWidthMm: wood.ringWidthMm,
    contrast: wood.contrast,
  };
}

/**
 * A face drawn by the wood model and seen through its camera square on, in the place of a photo.
 *
 * @param pxPerMm scale, default 5: all that grain lines need.
 */
export function imagineFace(
  wood: ImaginedWood,
  size: { readonly widthMm: number; readonly heightMm: number },
  pxPerMm = 5,
): PanelPhoto {
  const board = imaginedBoard(wood, size);
  const { image } = drawPanel(onePiecePanel({ board, ...size }), { pxPerMm });
  const { width, height } = image;
  const seen = photograph(image, {
    widthPx: width,
    heightPx: height,
    cornersPx: [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ],
    blurPx: 0.6,
    fullWell: 9000,
    readNoise: 0.002,
    seed: wood.seed,
  });
  return {
    image: seen.image,
    pxPerMm,
    widthMm: size.widthMm,
    heightMm: size.heightMm,
    notes: ['Drawn by the wood model, not photographed: one board of many that it could be.'],
  };
}

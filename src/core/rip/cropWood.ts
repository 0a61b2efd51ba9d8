import type { BlockTensor } from '../grain/blockTensor.js';
import type { Plane } from '../image/plane.js';
import type { SeamStrip } from '../seam/seamStrip.js';
import type { SeamWood } from '../seam/seamWood.js';

/** Part of some wood: from where to where along its frame and across it, mm. */
export interface WoodCrop {
  readonly fromXiMm: number;
  readonly toXiMm: number;
  readonly fromEtaMm: number;
  readonly toEtaMm: number;
}

/**
 * Cuts a piece out of wood that has been read already, as `seamWood` would have read it alone.
 * Cuts fall on whole pixels and blocks; eta keeps its zero, xi starts at the piece's end.
 *
 * @returns the piece, and where its end came to lie in the wood's own xi, mm.
 */
export function cropWood(
  wood: SeamWood,
  crop: WoodCrop,
): { readonly wood: SeamWood; readonly xiMm: number } {
  const { blocks, strip, lab } = wood;
  const column = Math.max(0, Math.round(crop.fromXiMm / blocks.stepMm));
  const columns = Math.round((crop.toXiMm - crop.fromXiMm) / blocks.stepMm);
  const row = Math.max(0, Math.floor((crop.fromEtaMm + strip.reachAMm) / blocks.stepMm));
  const rows = Math.ceil((crop.toEtaMm + strip.reachAMm) / blocks.stepMm) - row;
  const box = { x: column, y: row, width: Math.max(2, columns), height: Math.max(2, rows) };
  const reachAMm = strip.reachAMm - row * blocks.stepMm;
  const xiMm = column * blocks.stepMm;
  const stripOf = (source: SeamStrip): SeamStrip => {
    const scale = blocks.stepMm * source.pxPerMm;
    const plane = cropPlane(source.plane, {
      x: Math.round(box.x * scale),
      y: Math.round(box.y * scale),
      width: Math.round(box.width * scale),
      height: Math.round(box.height * scale),
    });
    return {
      plane,
      pxPerMm: source.pxPerMm,
      reachAMm,
      reachBMm: plane.height / source.pxPerMm - reachAMm,
    };
  };
  return {
    xiMm,
    wood: {
      frame: wood.frame,
      strip: stripOf(strip),
      blocks: cropBlocks(blocks, box),
      lab: [stripOf(lab[0]), stripOf(lab[1]), stripOf(lab[2])],
    },
  };
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function cropPlane({ data, width, height }: Plane, box: Box): Plane {
  const w = Math.max(1, Math.min(box.width, width - box.x));
  const h = Math.max(1, Math.min(box.height, height - box.y));
  return { width: w, height: h, data: cropped(data, width, { ...box, width: w, height: h }) };
}

function cropBlocks(blocks: BlockTensor, box: Box): BlockTensor {
  const width = Math.max(1, Math.min(box.width, blocks.width - box.x));
  const height = Math.max(1, Math.min(box.height, blocks.height - box.y));
  const take = (data: Float32Array) => cropped(data, blocks.width, { ...box, width, height });
  const { stepMm, jxx, jxy, jyy } = blocks;
  return { width, height, stepMm, jxx: take(jxx), jxy: take(jxy), jyy: take(jyy) };
}

function cropped(data: Float32Array, width: number, box: Box): Float32Array {
  const out = new Float32Array(box.width * box.height);
  for (let j = 0; j < box.height; j++) {
    const from = (box.y + j) * width + box.x;
    out.set(data.subarray(from, from + box.width), j * box.width);
  }
  return out;
}

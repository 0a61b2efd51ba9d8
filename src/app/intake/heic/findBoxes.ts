/** One box of an ISO base media file (ISO/IEC 14496-12): its type and where its content lies. */
export interface Box {
  readonly type: string;
  readonly start: number;
  readonly end: number;
}

/** Reads the boxes between `start` and `end`; a box that runs over the end is cut there. */
export function findBoxes(view: DataView, start: number, end: number): readonly Box[] {
  const boxes: Box[] = [];
  let at = start;
  while (at + 8 <= end) {
    const size32 = view.getUint32(at);
    const long = size32 === 1 && at + 16 <= end;
    const header = long ? 16 : 8;
    const size = long ? Number(view.getBigUint64(at + 8)) : size32 === 0 ? end - at : size32;
    if (size < header) break;
    boxes.push({
      type: fourLetters(view, at + 4),
      start: at + header,
      end: Math.min(end, at + size),
    });
    at += size;
  }
  return boxes;
}

/** Four characters at an offset. */
export function fourLetters(view: DataView, at: number): string {
  return String.fromCharCode(
    view.getUint8(at),
    view.getUint8(at + 1),
    view.getUint8(at + 2),
    view.getUint8(at + 3),
  );
}

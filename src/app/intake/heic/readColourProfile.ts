import { type Box, findBoxes, fourLetters } from './findBoxes.js';

/** How a HEIF file says what its numbers mean: an ICC profile, or code points (ITU-T H.273). */
export type ColourProfile =
  | { readonly kind: 'icc'; readonly bytes: Uint8Array }
  | { readonly kind: 'codePoints'; readonly primaries: number; readonly transfer: number };

/**
 * Finds the colour profile of a HEIF file's main picture: the `colr` property that `ipma`
 * ties to the item named by `pitm` (ISO/IEC 23008-12). An ICC profile wins over code points.
 * @returns null when the file carries none
 */
export function readColourProfile(file: ArrayBuffer): ColourProfile | null {
  const view = new DataView(file);
  const meta = findBoxes(view, 0, view.byteLength).find(({ type }) => type === 'meta');
  if (!meta) return null;
  const inMeta = findBoxes(view, meta.start + 4, meta.end);
  const properties = inMeta.find(({ type }) => type === 'iprp');
  if (!properties) return null;
  const inProperties = findBoxes(view, properties.start, properties.end);
  const container = inProperties.find(({ type }) => type === 'ipco');
  if (!container) return null;
  const all = findBoxes(view, container.start, container.end);
  const tied = inProperties
    .filter(({ type }) => type === 'ipma')
    .flatMap((box) => propertiesOf(view, box, mainItem(view, inMeta)));
  const profiles = tied
    .map((index) => all[index - 1])
    .filter((box): box is Box => box?.type === 'colr')
    .map((box) => readColr(view, box))
    .filter((profile) => profile !== null);
  return profiles.find(({ kind }) => kind === 'icc') ?? profiles[0] ?? null;
}

function mainItem(view: DataView, boxes: readonly Box[]): number {
  const box = boxes.find(({ type }) => type === 'pitm');
  if (!box) return 1;
  return view.getUint8(box.start) === 0
    ? view.getUint16(box.start + 4)
    : view.getUint32(box.start + 4);
}

function propertiesOf(view: DataView, ipma: Box, item: number): readonly number[] {
  const wideItems = view.getUint8(ipma.start) > 0;
  const wideIndices = (view.getUint8(ipma.start + 3) & 1) === 1;
  const entries = view.getUint32(ipma.start + 4);
  let at = ipma.start + 8;
  for (let entry = 0; entry < entries; entry++) {
    const id = wideItems ? view.getUint32(at) : view.getUint16(at);
    at += wideItems ? 4 : 2;
    const count = view.getUint8(at++);
    const indices = Array.from({ length: count }, (_, n) =>
      wideIndices ? view.getUint16(at + 2 * n) & 0x7fff : view.getUint8(at + n) & 0x7f,
    );
    if (id === item) return indices;
    at += count * (wideIndices ? 2 : 1);
  }
  return [];
}

function readColr(view: DataView, box: Box): ColourProfile | null {
  const kind = fourLetters(view, box.start);
  if (kind === 'nclx') {
    return {
      kind: 'codePoints',
      primaries: view.getUint16(box.start + 4),
      transfer: view.getUint16(box.start + 6),
    };
  }
  if (kind !== 'prof' && kind !== 'rICC') return null;
  return {
    kind: 'icc',
    bytes: new Uint8Array(view.buffer, box.start + 4, box.end - box.start - 4),
  };
}

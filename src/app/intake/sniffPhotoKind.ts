/** What a file is by its first bytes, whatever its name says. */
export type PhotoKind = 'jpeg' | 'png' | 'webp' | 'avif' | 'heic' | 'tiff' | 'gif' | 'other';

/** Tells a photo's kind from its first 16 bytes or more. */
export function sniffPhotoKind(head: Uint8Array): PhotoKind {
  const text = (from: number, to: number) => String.fromCharCode(...head.slice(from, to));
  if (head[0] === 0xff && head[1] === 0xd8 && head[2] === 0xff) return 'jpeg';
  if (text(1, 4) === 'PNG' && head[0] === 0x89) return 'png';
  if (text(0, 4) === 'RIFF' && text(8, 12) === 'WEBP') return 'webp';
  if (text(0, 3) === 'GIF') return 'gif';
  if (text(0, 4) === 'II*\0' || text(0, 4) === 'MM\0*') return 'tiff';
  if (text(4, 8) === 'ftyp') {
    const brand = text(8, 12);
    if (brand === 'avif' || brand === 'avis') return 'avif';
    if (/^(hei|hev|mif1|msf1)/.test(brand)) return 'heic';
  }
  return 'other';
}

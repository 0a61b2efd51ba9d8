import type { Drawable } from './drawableOf.js';

/** The panel as a JPEG data URL, at most `widest` pixels wide, for pages that stand alone. */
export async function panelDataUrl({ full }: Drawable, widest = 2400): Promise<string> {
  const share = Math.min(1, widest / Math.max(full.width, full.height));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(full.width * share)),
    Math.max(1, Math.round(full.height * share)),
  );
  const drawing = canvas.getContext('2d');
  if (!drawing) throw new Error('This browser gave no drawing surface.');
  drawing.imageSmoothingQuality = 'high';
  drawing.drawImage(full, 0, 0, canvas.width, canvas.height);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error ?? new Error('The picture could not be read.'));
    reader.readAsDataURL(blob);
  });
}

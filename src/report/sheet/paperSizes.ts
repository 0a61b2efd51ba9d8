/** Paper that the sheet is printed on. */
export type Paper = 'A4' | 'Letter';

/** Sizes in mm: ISO 216 A4, ANSI Letter 8 1/2 x 11 in. */
export const paperSizes: Readonly<
  Record<Paper, { readonly widthMm: number; readonly heightMm: number }>
> = {
  A4: { widthMm: 210, heightMm: 297 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
};

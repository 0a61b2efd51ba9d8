/** A rectangle of the panel, mm. */
export interface PanelBox {
  readonly x1Mm: number;
  readonly y1Mm: number;
  readonly x2Mm: number;
  readonly y2Mm: number;
}

/** Grey of ink: 0 black, 1 white. Paper is printed without colours. */
export type Grey = number;

/**
 * One thing on a printed page, px at 96 to the inch, x right, y down.
 * The same list becomes SVG for screens and PDF for printers.
 */
export type Mark =
  | {
      readonly kind: 'rect';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly fill?: Grey;
      readonly stroke?: Grey;
      readonly strokePx?: number;
    }
  | {
      readonly kind: 'line';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly stroke: Grey;
      readonly strokePx: number;
      readonly dashPx?: number;
    }
  | {
      readonly kind: 'polygon';
      readonly points: readonly (readonly [x: number, y: number])[];
      readonly fill?: Grey;
      readonly stroke?: Grey;
      readonly strokePx?: number;
    }
  | {
      readonly kind: 'circle';
      readonly x: number;
      readonly y: number;
      readonly r: number;
      readonly fill?: Grey;
      readonly stroke?: Grey;
      readonly strokePx?: number;
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      /** Baseline. */
      readonly y: number;
      readonly text: string;
      readonly sizePx: number;
      readonly bold?: boolean;
      readonly anchor?: 'start' | 'middle' | 'end';
      readonly fill?: Grey;
    }
  | {
      readonly kind: 'image';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly picture: JpegPicture;
    };

/** A picture for the sheet: JPEG goes into SVG and PDF as it is. */
export interface JpegPicture {
  readonly base64: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Words of a page. */
export type TextMark = Extract<Mark, { kind: 'text' }>;

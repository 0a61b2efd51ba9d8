/** Cut classes as trade names. */
export type CutClass = 'flatsawn' | 'rift' | 'quartered';

/**
 * How the rings stand to the wide face over a board's width; 0 deg flatsawn, 90 deg quartered.
 * One angle, a class, the pith's place (below the width's left end: +x, +depth, mm), or angles
 * measured over the width on the end grain.
 */
export type RingAngles =
  | { readonly kind: 'angle'; readonly angleDeg: number }
  | { readonly kind: 'class'; readonly cut: CutClass }
  | { readonly kind: 'pith'; readonly xMm: number; readonly depthMm: number }
  | {
      readonly kind: 'measured';
      readonly ringAngle: readonly { readonly xMm: number; readonly angleDeg: number }[];
    };

/**
 * Ring angles of the classes: what is taken for a board of that class, and the class's range.
 * Ranges: Architectural Woodwork Standards, 1st ed. 2009, App. B. Flatsawn is taken at its fullest
 * movement, the safe side for a gap.
 */
export const cutClassAngles: Readonly<
  Record<CutClass, { readonly takenDeg: number; readonly rangeDeg: readonly [number, number] }>
> = {
  flatsawn: { takenDeg: 0, rangeDeg: [0, 30] },
  rift: { takenDeg: 45, rangeDeg: [30, 60] },
  quartered: { takenDeg: 90, rangeDeg: [60, 90] },
};

/** A dark line wider than this at half depth shows its true floor, px. */
export const resolvedPx = 3.5;

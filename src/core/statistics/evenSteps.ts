/** Values from one end to the other, both included, in even steps. */
export function evenSteps(from: number, to: number, step: number): number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
}

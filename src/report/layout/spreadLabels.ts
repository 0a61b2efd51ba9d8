/**
 * Moves labels along a line so that none touches the next and each stays as near its place as can be.
 * Order is kept. Pools of touching labels move as one (the pool-adjacent-violators method).
 * @param centres wished-for centres, ascending, px
 * @param sizes extents along the line, px, clearance included
 * @param from start of the line, px
 * @param to end of the line, px
 * @returns centres; null when the labels are longer than the line together
 */
export function spreadLabels(
  centres: readonly number[],
  sizes: readonly number[],
  from: number,
  to: number,
): number[] | null {
  const total = sizes.reduce((sum, size) => sum + size, 0);
  if (total > to - from) return null;
  // Position of each label's start if all before it were packed from 0.
  let packed = 0;
  const pools: { start: number; sum: number; count: number }[] = [];
  const offsets: number[] = [];
  centres.forEach((centre, index) => {
    offsets.push(packed);
    const start = centre - sizes[index]! / 2 - packed;
    packed += sizes[index]!;
    pools.push({ start, sum: start, count: 1 });
    while (pools.length > 1 && pools.at(-2)!.start > pools.at(-1)!.start) {
      const last = pools.pop()!;
      const before = pools.pop()!;
      const sum = before.sum + last.sum;
      const count = before.count + last.count;
      pools.push({ start: sum / count, sum, count });
    }
  });
  const starts = pools.flatMap(({ start, count }) => Array<number>(count).fill(start));
  return starts.map((start, index) => {
    const clamped = Math.min(Math.max(start, from), to - total);
    return clamped + offsets[index]! + sizes[index]! / 2;
  });
}

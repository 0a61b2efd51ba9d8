/**
 * The total shrinkage that a published coefficient stands for: S = 100 f C / (1 + (f - 10) C).
 * Inverse of `coefficientFromShrinkage`; used where a row of Table 13-5 rests on other shrinkage
 * figures than Table 4-3 prints (the commercial oaks, mahogany, teak).
 * @returns S, %
 */
export function shrinkageFromCoefficient(coefficient: number, fibreSaturationPercent = 30): number {
  const f = fibreSaturationPercent;
  return (100 * f * coefficient) / (1 + (f - 10) * coefficient);
}

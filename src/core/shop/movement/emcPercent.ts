/** The four temperature-dependent terms of the sorption equation. */
interface SorptionTerms {
  readonly w: number;
  readonly k: number;
  readonly k1: number;
  readonly k2: number;
}

/**
 * Equilibrium moisture content of wood in air, two-hydrate sorption form:
 * M = 1800/W [ Kh/(1-Kh) + (K1 K h + 2 K1 K2 K^2 h^2)/(1 + K1 K h + K1 K2 K^2 h^2) ].
 * The moisture that a board settles at if it stays long enough in that air.
 * @param relativeHumidityPercent 0 to 100; the published table spans 5 to 95
 * @param temperature in the scale's degrees; the table spans 30 to 270 F (-1 to 132 C)
 * @param scale which published set of constants: `"C"` (default) or `"F"`; they agree to 0.013 %
 * @returns moisture content, % of dry mass; treat as +-1
 * @see FPL Wood Handbook Eq. (4-5), Table 4-2; Simpson 1973, Wood and Fiber 5(1):41-49
 */
export function emcPercent(
  relativeHumidityPercent: number,
  temperature: number,
  scale: 'C' | 'F' = 'C',
): number {
  const h = relativeHumidityPercent / 100;
  const { w, k, k1, k2 } = scale === 'C' ? termsC(temperature) : termsF(temperature);
  const kh = k * h;
  const hydrated = k1 * kh + 2 * k1 * k2 * kh * kh;
  return (1800 / w) * (kh / (1 - kh) + hydrated / (1 + k1 * kh + k1 * k2 * kh * kh));
}

function termsC(t: number): SorptionTerms {
  return {
    w: 349 + 1.29 * t + 0.0135 * t * t,
    k: 0.805 + 0.000736 * t - 0.00000273 * t * t,
    k1: 6.27 - 0.00938 * t - 0.000303 * t * t,
    k2: 1.91 + 0.0407 * t - 0.000293 * t * t,
  };
}

function termsF(t: number): SorptionTerms {
  return {
    w: 330 + 0.452 * t + 0.00415 * t * t,
    k: 0.791 + 0.000463 * t - 0.000000844 * t * t,
    k1: 6.34 + 0.000775 * t - 0.0000935 * t * t,
    k2: 1.09 + 0.0284 * t - 0.0000904 * t * t,
  };
}

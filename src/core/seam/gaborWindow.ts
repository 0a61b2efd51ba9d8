/**
 * A Gabor window over s = distance from its middle in sigmas, exp(-s^2 / 2) (cos ks, sin ks), from
 * a table: a wave and a Gaussian for every sample of every line cost more than all else there.
 *
 * Between the table's places z(s0 + d) = z(s0) exp(-s0 d - d^2 / 2) (cos kd, sin kd), the small
 * factors by their series: within 1e-11.
 */
export class GaborWindow {
  gauss = 0;
  cos = 0;
  sin = 0;
  private readonly table: Float64Array;

  /** @param turn k, rad per sigma. @param reach how far the window goes either way, sigmas. */
  constructor(
    private readonly turn: number,
    private readonly reach: number,
  ) {
    const places = Math.ceil(2 * reach * placesPerSigma) + 1;
    this.table = new Float64Array(3 * places);
    for (let i = 0; i < places; i++) {
      const s = i / placesPerSigma - reach;
      this.table[3 * i] = Math.exp(-0.5 * s * s);
      this.table[3 * i + 1] = Math.cos(turn * s);
      this.table[3 * i + 2] = Math.sin(turn * s);
    }
  }

  /** Moves to a place within the reach and sets `gauss`, and `cos` and `sin` of the wave alone. */
  at(s: number): void {
    const { table, turn, reach } = this;
    const place = ((s + reach) * placesPerSigma + 0.5) | 0;
    const s0 = place / placesPerSigma - reach;
    const d = s - s0;
    const fall = -d * (s0 + 0.5 * d);
    const phase = turn * d;
    const squared = phase * phase;
    const cos = 1 - squared * (0.5 - squared / 24);
    const sin = phase * (1 - squared / 6);
    const cos0 = table[3 * place + 1];
    const sin0 = table[3 * place + 2];
    this.gauss = table[3 * place] * (1 + fall * (1 + fall * (0.5 + fall / 6)));
    this.cos = cos0 * cos - sin0 * sin;
    this.sin = sin0 * cos + cos0 * sin;
  }
}

const placesPerSigma = 512;

/**
 * How visible the step of colour at the joint is, in times over just visible.
 *
 * x = dE00 / 0.8. Measure over bands half a degree wide on each side, the glue line left out.
 *
 * @param deltaE00 `ciede2000` between the two sides.
 * @returns 0 or more, before masking.
 * Source: 0.8 = seen by half of the observers, Paravina et al. 2015, J. Esthet. Restor. Dent. 27.
 */
export function colourCue(deltaE00: number): number {
  return deltaE00 / 0.8;
}

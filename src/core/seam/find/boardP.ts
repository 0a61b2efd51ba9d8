/**
 * The law's shape, place and scale: fitted by maximum likelihood to the best lines of 270 drawn boards
 * with no joint (seeds 400 to 669 of the nine settings, apart from the bench's;
 * `tests/bench/truth/fitBoardLaw.py`).
 */
const law = { shape: 0.135, place: -0.52, scale: 1.58 };
/** Never say never: smaller chances lie far beyond what was ever drawn. */
const leastP = 1e-6;

/**
 * Chance that the best of a board's lines shows this much evidence where there is no joint.
 *
 * If lines were alike and alone, E = tries exp(-evidence) of them would do as well by chance. They
 * are not: neighbours share ring lines, and a ring that happens to run straight is a line of its
 * own. The best of many follows the generalised extreme value law (Coles 2001, ch. 3), here of
 * s = -ln E:
 *   p = 1 - exp(-(1 + shape (s - place) / scale)^(-1 / shape))
 * so that p is uniform on boards with no joint.
 *
 * @param tries separate lines looked at, 1 or more.
 */
export function boardP(evidence: number, tries: number): number {
  const s = evidence - Math.log(tries);
  const reached = Math.max(0, 1 + (law.shape * (s - law.place)) / law.scale);
  return Math.max(leastP, -Math.expm1(-(reached ** (-1 / law.shape))));
}

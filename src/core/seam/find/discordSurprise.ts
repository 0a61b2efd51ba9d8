/**
 * Chance that the best of a few millimetres' lines of wood with no joint reaches a log likelihood
 * ratio T: 0.05 exp(-(T - 0.64) / 0.38), read off 27 drawn boards with no joint (1650 lines, five tilts; seeds
 * apart from the bench's). Likelihood ratios carry their own scale, so one law serves every board.
 */
const lawTail = 0.38;
const lawAtZero = 1.3;
const lawTilts = 5;

/**
 * Surprise of a line's discord: -ln of that chance, so that it falls off as exp(-s) among lines with
 * no joint.
 *
 * @param logRatio ln likelihood ratio summed over the line. @param tilts lines tried through every row.
 */
export function discordSurprise(logRatio: number, tilts: number): number {
  const surprise = lawAtZero + logRatio / lawTail - Math.log(Math.max(1, tilts / lawTilts));
  return Math.max(0, surprise);
}

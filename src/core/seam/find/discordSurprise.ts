/**
 * Chance that the best of a few millimetres' lines of wood with no joint reaches a log likelihood
 * ratio T: 0.05 exp(-(T - at5) / tail), read off 27 drawn boards with no joint (1650 lines, five
 * tilts; seeds apart from the bench's; `npm run bench:discord-law` now prints 0.57 and 0.51, 0.80 and
 * 0.47, which `boardP`, fitted on top of these, makes up for). Likelihood ratios carry their own
 * scale, so one law serves every board.
 */
const laws = { strangers: { at5: 0.64, tail: 0.38 }, stepped: { at5: 0.87, tail: 0.58 } };
const lawTilts = 5;
/** What the better of the two readings gains by chance: 0.44 to 0.58 on the same boards (they agree). */
const bothCost = 0.5;

/**
 * Surprise of a line's discord: -ln of that chance, so that it falls off as exp(-s) among lines with
 * no joint. Two readings, the less likely counts and pays for being one of two: the two sides are
 * strangers, or the same lines out of step (`excessMap`).
 *
 * @param strangers, stepped ln likelihood ratios summed over the line.
 * @param tilts lines tried through every row.
 */
export function discordSurprise(strangers: number, stepped: number, tilts: number): number {
  const of = (ratio: number, { at5, tail }: typeof laws.strangers) =>
    -Math.log(0.05) + (ratio - at5) / tail;
  const surprise = Math.max(of(strangers, laws.strangers), of(stepped, laws.stepped));
  return Math.max(0, surprise - bothCost - Math.log(Math.max(1, tilts / lawTilts)));
}

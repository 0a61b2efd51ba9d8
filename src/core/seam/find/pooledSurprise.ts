/**
 * Surprise of a line's discord and its signed channels together, itself falling off as exp(-s) among
 * lines with no joint.
 *
 * Three readings, the least likely counts, and each pays for being one of three: the discord alone
 * (half of the chance, because joints break lines), one signed channel alone (a quarter, shared by
 * the channels), or all of them a little (a quarter): their sum S is a gamma variable of order n,
 * reached with the chance exp(-S) sum S^j / j! over j < n.
 */
export function pooledSurprise(discord: number, signed: readonly number[]): number {
  let sum = discord;
  let most = 0;
  for (const s of signed) {
    sum += s;
    if (s > most) most = s;
  }
  let term = 1;
  let series = 1;
  for (let j = 1; j <= signed.length; j++) {
    term *= sum / j;
    series += term;
  }
  const alone = most - Math.log(signed.length);
  const s = Math.max(discord - Math.LN2, alone - Math.log(4), sum - Math.log(series) - Math.log(4));
  return Math.max(0, s);
}

/** Within this of the lines' own direction an edge is taken for one more of them, rad (8 deg). */
const apartRad = (8 * Math.PI) / 180;

/**
 * How far a joint counts among grain lines that run nearly along it.
 *
 * min(1, theta / 8 deg), theta the acute angle between lines and joint. What an eye sees of broken
 * lines is an edge along the joint. Lines within a few degrees of it are edges alike, and rings are
 * never evenly wide, so one more edge among them says nothing: quartered stuff hides its joints
 * (common practice, no published source). That lines of near direction mask each other and others do
 * not is Campbell & Kulikowski 1966, J. Physiol. 187 (half at 12 deg); the form and the 8 deg are
 * an assumption, after 16 drawn rips marked by eye (docs/eye.md). Even gratings have no such
 * irregular company: `closedFormBreak` goes without.
 *
 * @param angleRad grain direction against the joint, radians.
 */
export function amongLinesFactor(angleRad: number): number {
  return Math.min(1, Math.asin(Math.min(1, Math.abs(Math.sin(angleRad)))) / apartRad);
}

/**
 * How far what lines say (their break, turn and spacing) counts where they run nearly along the joint
 * and few of them cross it.
 *
 * min(1, f |sin theta|)^(1/3): with fewer than one line a degree of view crossing, the cubic
 * mean over the joint falls. An assumption, not a measured fact.
 *
 * @param frequencyCpd line frequency, cycles a degree.
 * @param angleRad grain direction against the joint, radians.
 */
export function grazingFactor(frequencyCpd: number, angleRad: number): number {
  return Math.cbrt(Math.min(1, frequencyCpd * Math.abs(Math.sin(angleRad))));
}

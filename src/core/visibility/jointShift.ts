/** What happened at a joint: width that went as kerf and dressing, and a slide along it. */
export interface JointShift {
  /** Width of the strip that is gone, mm; positive: wood is missing. */
  readonly lostMm: number;
  /** How far side A (above, left) moved in +x (crosscut: +y) relative to side B, mm. */
  readonly slideMm: number;
  /** Grain direction against the joint, radians, from +x towards +y. */
  readonly angleRad: number;
}

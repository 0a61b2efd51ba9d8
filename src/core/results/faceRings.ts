/** How the rings stand to a face, estimated from that face alone. */
export interface FaceRings {
  /** In strips across the width: 0 flatsawn, 90 quartered; null where it cannot be told. */
  readonly ringAngle: readonly {
    readonly yMm: number;
    readonly angleDeg: number | null;
    readonly seDeg: number;
  }[];
  /** Where across the width the face lies over or under the pith; null where it does not, or unsure. */
  readonly overPith: { readonly yMm: number; readonly seMm: number } | null;
  readonly notes: readonly string[];
}

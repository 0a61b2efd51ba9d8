/** How a species shrinks and swells, and where the figures come from. */
export interface WoodSpecies {
  /** Trade name. */
  readonly name: string;
  readonly botanical: string;
  readonly aliases: readonly string[];
  /** Radial and tangential shrinkage, green to ovendry, %. */
  readonly shrinkagePercent: { readonly radial: number; readonly tangential: number };
  /** Change per 1 % moisture content, 6 to 14 %, as a fraction of the dimension. */
  readonly coefficient: { readonly radial: number; readonly tangential: number };
  /** Moisture content at fibre saturation that the coefficients assume, %. */
  readonly fibreSaturationPercent: 30 | 22;
  /** Which row the coefficients are, and how surely the figures were read. */
  readonly marks: string;
}

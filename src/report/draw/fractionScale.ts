/** Size of a fraction's figures against the text they stand in. */
export const fractionScale = 0.74;

/** A difference of two directions without sense, within a quarter turn either way, rad. */
export const halfTurnRad = (rad: number): number => rad - Math.PI * Math.round(rad / Math.PI);

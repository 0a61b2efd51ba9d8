/** Told how far long work has come: `fraction` 0..1 and what is being done, in a maker's words. */
export type Progress = (fraction: number, what: string) => void;

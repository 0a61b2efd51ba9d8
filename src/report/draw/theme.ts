/** The neutral surroundings of a picture. */
export interface Theme {
  readonly paper: string;
  readonly ink: string;
  /** Second-rank words and marks. */
  readonly quiet: string;
  /** Hairlines. */
  readonly rule: string;
}

import type { Climate } from '../../units/parseClimate.js';
import type { RingAngles } from './ringAngles.js';

/** A state of the wood: the air that it has settled in, or a measured moisture content. */
export type WoodState =
  | { readonly kind: 'climate'; readonly climate: Climate }
  | { readonly kind: 'moisture'; readonly percent: number };

/** What surrounds the front across its grain. */
export type Surround =
  /** Posts, a carcase: the opening does not move. */
  | { readonly kind: 'framed' }
  /** A solid panel whose grain runs as the front's; another species or cut where they differ. */
  | { readonly kind: 'solid'; readonly species?: string; readonly rings?: RingAngles };

/** What the maker gives to `computeGap`. */
export interface GapInput {
  /** English or botanical name; with `shrinkagePercent` any name. */
  readonly species: string;
  /** For a wood that is not in the table: shrinkage green to ovendry, %. */
  readonly shrinkagePercent?: { readonly radial: number; readonly tangential: number };
  /** The front's size across the grain, mm. */
  readonly acrossMm: number;
  /** Default: flatsawn, the fullest movement. */
  readonly rings?: RingAngles;
  /** As fitted. */
  readonly from: WoodState;
  /** The other end of the year; with `months` it may be left out. */
  readonly to?: WoodState;
  /** Up to twelve climates, January first. */
  readonly months?: readonly Climate[];
  /** Default framed. */
  readonly surround?: Surround;
  /** A veneered front on a stable core instead of solid wood. Default false. */
  readonly isVeneered?: boolean;
  /** Gap that must remain when the front is widest, mm. Default 0. */
  readonly revealMm?: number;
  /** On the edges of front and opening, mm. Default 0. */
  readonly chamferMm?: number;
  /** Default top: the front rests on its lower edge. */
  readonly place?: 'top' | 'bottom' | 'split';
  /** The front's length along the grain, mm. */
  readonly lengthMm?: number;
  /** Viewing distance, mm. Default 600. */
  readonly distanceMm?: number;
}

import type { PanelPhoto } from '../../image/panelPhoto.js';

/** One of a board's two wide faces; A is the one that was photographed first. */
export type BoardFace = 'A' | 'B';

/** A face of a board: its photo, cropped to the board, and what the user calls that photo. */
export interface FacePhoto {
  readonly photo: PanelPhoto;
  readonly name: string;
}

/**
 * A board on the bench. Face B is photographed after turning the board over about its length, so
 * that its left end stays on the left.
 */
export interface BoardPhotos {
  readonly faceA: FacePhoto;
  readonly faceB: FacePhoto | null;
  /** A mirrored copy that stands for the mate which resawing would give; default false. */
  readonly isImagined?: boolean;
}

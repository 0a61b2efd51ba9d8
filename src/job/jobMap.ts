import type { PanelPhoto } from '../core/image/panelPhoto.js';
import type { PhotoScale } from '../core/image/photoScale.js';
import type { RgbImage } from '../core/image/rgbImage.js';

/** Every job by name: what goes in and what comes out. All of it survives a structured clone. */
export interface JobMap {
  /** Squares the photographed panel up to one scale. */
  readonly rectify: {
    readonly input: {
      readonly photo: RgbImage;
      readonly scale: PhotoScale;
      /** Working density at most, px/mm; 7 unless said. */
      readonly maxPxPerMm?: number;
    };
    readonly output: PanelPhoto;
  };
}

export type JobName = keyof JobMap;
export type JobInput<N extends JobName> = JobMap[N]['input'];
export type JobOutput<N extends JobName> = JobMap[N]['output'];

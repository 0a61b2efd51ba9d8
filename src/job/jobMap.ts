import type { ArrangeOptions } from '../core/board/arrange/arrangeOptions.js';
import type { ArrangeRules } from '../core/board/arrange/arrangeRules.js';
import type { BoardPhotos } from '../core/board/arrange/boardPhotos.js';
import type { PanelPhoto } from '../core/image/panelPhoto.js';
import type { CornersPx, PhotoScale } from '../core/image/photoScale.js';
import type { RgbImage } from '../core/image/rgbImage.js';
import type { Candidate, CompareOptions } from '../core/pipeline/comparePanels.js';
import type { EndgrainOptions } from '../core/pipeline/endgrainPanel.js';
import type { ForecastOptions, ImaginedWood } from '../core/pipeline/forecastOptions.js';
import type { ScoreOptions } from '../core/pipeline/scoreOptions.js';
import type { ArrangeResult } from '../core/results/arrangeResult.js';
import type { CompareResult } from '../core/results/compareResult.js';
import type { EndgrainResult } from '../core/results/endgrainResult.js';
import type { FaceRings } from '../core/results/faceRings.js';
import type { ForecastResult } from '../core/results/forecastResult.js';
import type { GrainResult } from '../core/results/grainResult.js';
import type { ScoreResult } from '../core/results/scoreResult.js';
import type { ReglueSpec } from '../core/rip/reglue.js';

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
  /** Guesses the panel's four corners in a photo; null when no panel stands out. */
  readonly outline: {
    readonly input: { readonly photo: RgbImage };
    readonly output: CornersPx | null;
  };
  /** Scores a finished glue-up. */
  readonly score: {
    readonly input: { readonly photo: PanelPhoto; readonly options: ScoreOptions };
    readonly output: ScoreResult;
  };
  /** The grain field on a grid. */
  readonly grain: {
    readonly input: {
      readonly photo: PanelPhoto;
      readonly options: { readonly cellMm: number; readonly ringAngle?: boolean };
    };
    readonly output: GrainResult;
  };
  /** How the rings stand to a board's face, as far as its ring lines tell. */
  readonly faceRings: {
    readonly input: { readonly photo: PanelPhoto };
    readonly output: FaceRings;
  };
  /** What cuts through an uncut panel would show, and where a front is best taken from. */
  readonly forecast: {
    readonly input: { readonly photo: PanelPhoto; readonly options: ForecastOptions };
    readonly output: ForecastResult;
  };
  /** The face as the pieces lie after gluing up (`reglueOfForecast` says how). */
  readonly reglue: {
    readonly input: { readonly photo: PanelPhoto; readonly spec: ReglueSpec };
    readonly output: RgbImage;
  };
  /** A face drawn by the wood model in the place of a photo. */
  readonly imagine: {
    readonly input: {
      readonly wood: ImaginedWood;
      readonly widthMm: number;
      readonly heightMm: number;
    };
    readonly output: PanelPhoto;
  };
  /** Order and way round of boards. */
  readonly arrange: {
    readonly input: {
      readonly boards: readonly BoardPhotos[];
      readonly options: ArrangeOptions;
      /** Default: nothing is insisted on. */
      readonly rules?: ArrangeRules;
    };
    readonly output: ArrangeResult;
  };
  /** Candidates ranked by what a rip would show. */
  readonly compare: {
    readonly input: { readonly candidates: readonly Candidate[]; readonly options: CompareOptions };
    readonly output: CompareResult;
  };
  /** Rings of a board's end. */
  readonly endgrain: {
    readonly input: { readonly photo: PanelPhoto; readonly options?: EndgrainOptions };
    readonly output: EndgrainResult;
  };
}

export type JobName = keyof JobMap;
export type JobInput<N extends JobName> = JobMap[N]['input'];
export type JobOutput<N extends JobName> = JobMap[N]['output'];

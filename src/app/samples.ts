import type { PhotoScale } from '../core/image/photoScale.js';
import type { Settings } from './state/project.js';
import type { JobPage } from './state/route.js';

/** A shipped photograph with what is known of it. */
export interface Sample {
  /** Name under samples/. */
  readonly file: string;
  readonly title: string;
  readonly about: string;
  readonly scale: PhotoScale;
  readonly page: JobPage;
  readonly settings?: Partial<Settings>;
}

/** The samples on the start page, in order. */
export const samples: readonly Sample[] = [];

import type { RgbImage } from '../../core/image/rgbImage.js';
import { fromJobFailure } from '../../job/jobFailure.js';
import type { JobFailure } from '../../job/workerMessages.js';
import type { Drawable } from '../images/drawableOf.js';
import type { PhotoOnShelf, PhotoRequest } from './photoWorker.js';
import PhotoWorker from './photoWorker.js?worker';

interface Reply {
  readonly id: number;
  readonly result?: unknown;
  readonly error?: JobFailure;
}

let worker: Worker | null = null;
let nextId = 1;

function ask<T>(request: DistributiveOmit<PhotoRequest, 'id'>): Promise<T> {
  worker ??= new PhotoWorker();
  const running = worker;
  const id = nextId++;
  return new Promise((resolve, reject) => {
    const listen = ({ data }: MessageEvent<Reply>) => {
      if (data.id !== id) return;
      running.removeEventListener('message', listen);
      if (data.error) reject(fromJobFailure(data.error));
      else resolve(data.result as T);
    };
    running.addEventListener('message', listen);
    running.addEventListener('error', ({ message }) => {
      worker = null;
      reject(new Error(message || "The page's photo worker did not start."));
    });
    running.postMessage({ ...request, id });
  });
}

type DistributiveOmit<T, K extends keyof T> = T extends unknown ? Omit<T, K> : never;

/** Decodes a photograph off the page's thread; see `decodePhoto`. */
export const decodeFile = (file: Blob) => ask<PhotoOnShelf>({ kind: 'decode', file });

/** Makes a picture's bitmaps off the page's thread; see `drawableOf`. */
export const makeDrawable = (image: RgbImage) => ask<Drawable>({ kind: 'draw', image });

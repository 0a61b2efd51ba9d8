import { useEffect, useEffectEvent, useRef } from 'react';
import type { Drawable } from '../images/drawableOf.js';
import { decodedPhoto, panelKey, panelOf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';

/** A small picture of a photo, squared up when it is pinned. */
export function Thumbnail({ photo }: { readonly photo: Photo }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const key = panelKey(photo);
  const picture = useEffectEvent((): Promise<{ readonly drawable: Drawable }> => {
    return photo.scale ? panelOf(photo) : decodedPhoto(photo.imageId);
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key is all that the picture depends on
  useEffect(() => {
    let dropped = false;
    picture()
      .then(({ drawable: { small } }) => {
        const target = canvas.current;
        if (dropped || !target) return;
        target.width = 320;
        target.height = Math.max(1, Math.round((320 * small.height) / small.width));
        const drawing = target.getContext('2d');
        if (!drawing) return;
        drawing.imageSmoothingQuality = 'high';
        drawing.drawImage(small, 0, 0, target.width, target.height);
      })
      .catch(() => {});
    return () => {
      dropped = true;
    };
  }, [key]);
  return <canvas ref={canvas} />;
}

import { useEffect, useRef } from 'react';
import { decodedPhoto, panelOf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';

/** A small picture of a photo, squared up when it is pinned. */
export function Thumbnail({ photo }: { readonly photo: Photo }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    let dropped = false;
    const picture = photo.scale
      ? panelOf(photo).then(({ drawable }) => drawable)
      : decodedPhoto(photo.imageId).then(({ drawable }) => drawable);
    picture
      .then(({ small }) => {
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
  }, [photo.imageId, photo.scale]);
  return <canvas ref={canvas} aria-hidden="true" />;
}

import { useEffect, useState } from 'react';
import type { Drawable } from '../images/drawableOf.js';
import { decodedPhoto } from '../images/shelf.js';
import { tellProblem } from '../state/tell.js';

/** The photo as it came from the camera, ready for the screen; null until it is decoded. */
export function usePhotoPicture(imageId: string): Drawable | null {
  const [picture, setPicture] = useState<Drawable | null>(null);
  useEffect(() => {
    let dropped = false;
    setPicture(null);
    decodedPhoto(imageId)
      .then(({ drawable }) => !dropped && setPicture(drawable))
      .catch((thrown) => !dropped && tellProblem(thrown, 'Reading the photo'));
    return () => {
      dropped = true;
    };
  }, [imageId]);
  return picture;
}

import { useRef } from 'react';
import { bringPhotos } from '../actions/bringPhotos.js';
import { tellProblem } from '../state/tell.js';

const accepted = 'image/*,.heic,.heif,.seamgrain';

/** Choose a photo, or take one with the camera. */
export function BringButtons({ short = false }: { readonly short?: boolean }) {
  const chosen = useRef<HTMLInputElement>(null);
  const camera = useRef<HTMLInputElement>(null);
  const take = (input: HTMLInputElement) => {
    const files = [...(input.files ?? [])];
    input.value = '';
    if (files.length > 0) {
      bringPhotos(files).catch((thrown) => tellProblem(thrown, 'Bringing the photo in'));
    }
  };
  return (
    <div className="row">
      <button type="button" className={short ? '' : 'main'} onClick={() => chosen.current?.click()}>
        {short ? 'Add a photo' : 'Choose a photo'}
      </button>
      <button type="button" onClick={() => camera.current?.click()}>
        Use the camera
      </button>
      <input
        ref={chosen}
        type="file"
        accept={accepted}
        multiple
        hidden
        aria-label="Choose photos"
        data-part="choose"
        onChange={({ target }) => take(target)}
      />
      <input
        ref={camera}
        type="file"
        accept="image/*"
        capture="environment"
        hidden
        aria-label="Take a photo"
        onChange={({ target }) => take(target)}
      />
    </div>
  );
}

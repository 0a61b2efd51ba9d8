import { useEffect } from 'react';
import { bringPhotos } from '../actions/bringPhotos.js';
import { tellProblem } from '../state/tell.js';

const bring = (files: readonly File[]) => {
  if (files.length > 0) {
    bringPhotos(files).catch((thrown) => tellProblem(thrown, 'Bringing the photo in'));
  }
};

/** Photos dropped anywhere on the page, or pasted, come in. */
export function useDropAndPaste(): void {
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
    };
    const drop = (event: DragEvent) => {
      if (!event.dataTransfer?.files.length) return;
      event.preventDefault();
      bring([...event.dataTransfer.files]);
    };
    const paste = (event: ClipboardEvent) => bring([...(event.clipboardData?.files ?? [])]);
    window.addEventListener('dragover', over);
    window.addEventListener('drop', drop);
    window.addEventListener('paste', paste);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('drop', drop);
      window.removeEventListener('paste', paste);
    };
  }, []);
}

import type { PhotoScale } from '../../core/image/photoScale.js';
import type { LineMm } from '../../core/results/scoreResult.js';
import { fittingFront } from '../analysis/fittingFront.js';
import { panelSize } from '../analysis/panelSize.js';
import { sameSeam } from '../geometry/sameSeam.js';
import type { Writable } from '../state/history.js';
import type { LeftOut, Photo } from '../state/project.js';
import { changeProject } from '../state/workbench.js';

/** Changes one photo as a step that can be taken back. */
export function changePhoto(
  photoId: string,
  label: string,
  recipe: (photo: Writable<Photo>) => void,
  gesture: string | null = null,
): void {
  changeProject(
    label,
    (draft) => {
      const photo = draft.photos.find(({ id }) => id === photoId);
      if (photo) recipe(photo);
    },
    gesture,
  );
}

/**
 * Pins the panel: everything measured before belongs to another panel, so marks go too. The first
 * panel of a project also brings the front it begins with down to a size that it has room for.
 * Of several photos the next one without a panel is shown then.
 * @returns whether there is such a one
 */
export function pinPanel(photoId: string, scale: PhotoScale): boolean {
  let isMore = false;
  changeProject('Pin the panel', (draft) => {
    const photo = draft.photos.find(({ id }) => id === photoId);
    if (!photo) return;
    const isFirst = draft.photos.every((each) => each.scale === null);
    photo.scale = structuredClone(scale) as Writable<PhotoScale>;
    photo.seams = [];
    photo.droppedSeams = [];
    photo.leftOut = [];
    photo.frontPlace = null;
    photo.ringTangents = [];
    const size = panelSize(photo);
    if (isFirst && size) Object.assign(draft.settings, fittingFront(size, draft.settings));
    const next = draft.photos.find((each) => each.scale === null);
    if (next) draft.shownPhotoId = next.id;
    isMore = next !== undefined;
  });
  return isMore;
}

/** Places a seam by hand. */
export function placeSeam(photoId: string, line: LineMm, id: string = crypto.randomUUID()): void {
  changePhoto(photoId, 'Place a seam', (photo) => {
    photo.seams.push({ id, line: { ...line } });
  });
}

/** Moves a seam: one placed by hand moves; one found in the photo becomes a placed one. */
export function moveSeam(
  photoId: string,
  seam: { readonly placedId: string | null; readonly line: LineMm },
  to: LineMm,
  newId: string,
): void {
  changePhoto(photoId, 'Move a seam', (photo) => {
    const placed = photo.seams.find(({ id }) => id === seam.placedId);
    if (placed) {
      placed.line = { ...to };
      return;
    }
    photo.droppedSeams.push({ ...seam.line });
    photo.seams.push({ id: newId, line: { ...to } });
  });
}

/** Takes a seam away, placed or found. */
export function removeSeam(
  photoId: string,
  seam: { readonly placedId: string | null; readonly line: LineMm },
): void {
  changePhoto(photoId, 'Remove a seam', (photo) => {
    if (seam.placedId === null) photo.droppedSeams.push({ ...seam.line });
    else photo.seams = photo.seams.filter(({ id }) => id !== seam.placedId);
  });
}

/** The placed seam that an answer's line belongs to, or null when the photo showed it. */
export function placedIdOf(photo: Photo, line: LineMm): string | null {
  return photo.seams.find((placed) => sameSeam(placed.line, line, 0.5))?.id ?? null;
}

/** Marks a knot or glare to be left out. */
export function leaveOut(photoId: string, patch: LeftOut): void {
  changePhoto(photoId, patch.kind === 'knot' ? 'Leave a knot out' : 'Leave glare out', (photo) => {
    photo.leftOut.push({ ...patch });
  });
}

/** Takes a left-out mark away. */
export function takeBackIn(photoId: string, id: string): void {
  changePhoto(photoId, 'Measure a patch again', (photo) => {
    photo.leftOut = photo.leftOut.filter((patch) => patch.id !== id);
  });
}

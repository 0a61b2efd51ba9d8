import type { Photo } from './project.js';
import { useProject } from './workbench.js';

/** The photo that is on the page, or null when the project has none. */
export function useShownPhoto(): Photo | null {
  const project = useProject();
  return (
    project?.photos.find(({ id }) => id === project.shownPhotoId) ?? project?.photos[0] ?? null
  );
}

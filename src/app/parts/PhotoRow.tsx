import { cutInMiddle } from '../../report/words/cutInMiddle.js';
import { changeProject, useProject } from '../state/workbench.js';
import { BringButtons } from './BringButtons.js';
import { Thumbnail } from './Thumbnail.js';

/** The project's photos, to choose the one on the page or bring in another. */
export function PhotoRow() {
  const project = useProject();
  if (!project) return null;
  const choose = (id: string) =>
    changeProject('Show another photo', (draft) => {
      draft.shownPhotoId = id;
    });
  return (
    <div className="row">
      {project.photos.length > 1 && (
        <div className="photo-row">
          {project.photos.map((photo) => (
            <button
              key={photo.id}
              type="button"
              aria-pressed={photo.id === project.shownPhotoId}
              title={photo.name}
              onClick={() => choose(photo.id)}
            >
              <Thumbnail photo={photo} />
              <span>{cutInMiddle(photo.name, 14)}</span>
            </button>
          ))}
        </div>
      )}
      <BringButtons short />
    </div>
  );
}

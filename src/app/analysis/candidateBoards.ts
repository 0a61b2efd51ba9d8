import type { ImaginedWood } from '../../core/pipeline/forecastOptions.js';
import { cutClassAngles } from '../../core/shop/movement/ringAngles.js';
import type { ImaginedBoard, Photo, Project } from '../state/project.js';

/** A board or panel among the candidates: photographed, or drawn by the wood model. */
export interface CandidateBoard {
  readonly id: string;
  readonly name: string;
  /** null: drawn. */
  readonly photo: Photo | null;
  readonly imagined: ImaginedBoard | null;
  /** The photo of its end, where there is one and it is pinned. */
  readonly end: Photo | null;
}

/** The project's candidates: every pinned photo that is not some board's end, then the drawn ones. */
export function candidateBoards({
  photos,
  imaginedBoards,
}: Pick<Project, 'photos' | 'imaginedBoards'>): readonly CandidateBoard[] {
  const ends = new Set(photos.map(({ endId }) => endId));
  return [
    ...photos
      .filter(({ id, scale }) => scale && !ends.has(id))
      .map((photo) => ({
        ...{ id: photo.id, name: photo.name, photo, imagined: null },
        end: photos.find(({ id, scale }) => scale && id === photo.endId) ?? null,
      })),
    ...imaginedBoards.map((imagined, index) => {
      const twins = imaginedBoards.slice(0, index).filter(({ cut }) => cut === imagined.cut).length;
      const name = `drawn ${imagined.cut} board${twins > 0 ? ` ${twins + 1}` : ''}`;
      return { id: imagined.id, name, photo: null, imagined, end: null };
    }),
  ];
}

/** The wood that an imagined board is drawn of. */
export const woodOf = ({
  cut,
  wood,
  ringWidthMm,
  contrast,
  seed,
}: ImaginedBoard): ImaginedWood => ({
  ...{ ringAngleDeg: cutClassAngles[cut].takenDeg, ringWidthMm, contrast, setting: wood, seed },
});

import { nameEnd, nameEndSide } from '../actions/candidateChanges.js';
import { Choice } from '../parts/Choice.js';
import type { Photo } from '../state/project.js';

export interface EndChoiceProps {
  readonly photo: Photo;
  /** The photos that may show its end. */
  readonly ends: readonly Photo[];
  /** It matters which end it is: rings are asked for at a place. */
  readonly withSide: boolean;
}

/** Which photo shows a candidate's end, and which end that is. */
export function EndChoice({ photo, ends, withSide }: EndChoiceProps) {
  const others = ends.filter(({ id }) => id !== photo.id);
  if (others.length === 0) return null;
  return (
    <>
      <Choice
        label="Its end"
        value={photo.endId ?? ''}
        options={[['', 'none'], ...others.map(({ id, name }) => [id, name] as const)]}
        onChange={(id) => nameEnd(photo.id, id || null)}
      />
      {withSide && photo.endId !== null && (
        <Choice
          label="Its face up, that is"
          value={photo.endSide}
          options={[
            ['left', 'the left end'],
            ['right', 'the right end'],
          ]}
          onChange={(side) => nameEndSide(photo.id, side)}
        />
      )}
    </>
  );
}

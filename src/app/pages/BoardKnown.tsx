import { nameHeartFace, namePlaning, pairBoards } from '../actions/boardChanges.js';
import { Choice } from '../parts/Choice.js';
import { asItLies } from '../state/planingAsItLies.js';
import type { BoardPair, Photo } from '../state/project.js';

export interface BoardKnownProps {
  readonly photos: readonly Photo[];
  readonly pairs: readonly BoardPair[];
  readonly chosen: Photo;
}

/** What a photo of the face cannot tell of the chosen board, and which boards it stays beside. */
export function BoardKnown({ photos, pairs, chosen }: BoardKnownProps) {
  return (
    <>
      <Choice
        label="Its heart side"
        value={chosen.heartFace ?? 'unknown'}
        options={[
          ['unknown', 'is not known'],
          ['A', 'is the face in this photo'],
          ['B', 'is the other face'],
        ]}
        onChange={(face) => nameHeartFace(chosen.id, face === 'unknown' ? null : face)}
      />
      <Choice
        label="It planes cleanly"
        value={chosen.planes ? asItLies(chosen.planes, chosen) : 'unknown'}
        options={[
          ['unknown', 'not known which way'],
          ['left', 'towards the left, lying like this'],
          ['right', 'towards the right, lying like this'],
        ]}
        onChange={(towards) => namePlaning(chosen.id, towards === 'unknown' ? null : towards)}
      />
      <Ties photos={photos} pairs={pairs} chosen={chosen} />
    </>
  );
}

/** The boards that the chosen one is kept beside: two at most, as a board has two edges. */
function Ties({ photos, pairs, chosen }: BoardKnownProps) {
  const nameOf = new Map(photos.map(({ id, name }) => [id, name]));
  const ties = pairs.flatMap(({ ids, kind }) => {
    const other = ids.find((id) => id !== chosen.id)!;
    return ids.includes(chosen.id) && nameOf.has(other) ? [{ other, kind }] : [];
  });
  const isFree = ({ id }: Photo) => id !== chosen.id && ties.every(({ other }) => other !== id);
  const others = photos.filter(isFree);
  return (
    <>
      {ties.map(({ other, kind }) => (
        <Choice
          key={other}
          label={`With ${nameOf.get(other)} it lies`}
          value={kind as BoardPair['kind'] | 'free'}
          options={[
            ['beside', 'side by side'],
            ['book', 'as a book-match: sawn apart and opened'],
            ['slip', 'as a slip-match: sawn apart and slid over'],
            ['free', 'as it comes: let them part'],
          ]}
          onChange={(as) => pairBoards([chosen.id, other], as === 'free' ? null : as)}
        />
      ))}
      {ties.length < 2 && others.length > 0 && (
        <Choice
          label={ties.length === 0 ? 'It stays beside' : 'And beside'}
          value=""
          options={[
            ['', ties.length === 0 ? 'any board' : 'any other'],
            ...others.map(({ id, name }) => [id, name] as const),
          ]}
          onChange={(id) => id && pairBoards([chosen.id, id], 'beside')}
        />
      )}
    </>
  );
}

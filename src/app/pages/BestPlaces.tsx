import type { ForecastPlacement } from '../../core/results/forecastResult.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { placeText } from '../../report/words/placeText.js';
import { smallLengthText } from '../../report/words/smallLengthText.js';
import type { TriedFront } from '../analysis/useFrontBench.js';
import { Fractions } from '../parts/Fractions.js';
import type { FrontPlace } from '../state/project.js';

export interface BestPlacesProps {
  readonly tried: TriedFront;
  readonly units: LengthUnits;
  readonly onPlace: (place: FrontPlace) => void;
}

/** The search for the best places, and what it found; one tap puts the front there. */
export function BestPlaces({ tried, units, onPlace }: BestPlacesProps) {
  const { search, findPlaces, stopSearch } = tried;
  return (
    <section className="stack" aria-label="Best places">
      {search.state === 'searching' ? (
        <div className="working">
          <span role="status">Searching: {search.what}</span>
          <progress value={search.fraction} max={1} aria-label="Searching the best places" />
          <button type="button" onClick={stopSearch}>
            Stop
          </button>
        </div>
      ) : (
        <div className="row">
          <button type="button" className="main" disabled={!tried.curve} onClick={findPlaces}>
            Find the best places
          </button>
        </div>
      )}
      {search.state === 'found' && (
        <ol className="seam-list">
          {search.places.map((place) => (
            <li key={place.rank} className="place">
              <span>
                <Fractions text={placeWords(place, units)} />
              </span>
              <button
                type="button"
                aria-label={`Put it here: place ${place.rank}`}
                onClick={() => onPlace({ xMm: place.xMm, yMm: place.yMm })}
              >
                Put it here
              </button>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

function placeWords(place: ForecastPlacement, units: LengthUnits) {
  const { rank, xMm, yMm, worst, slides, notes } = place;
  const word = levelOfVisibility(worst.v)?.word ?? 'cannot tell';
  const look = word === 'disappears' ? 'every joint disappears' : `worst: ${word}`;
  const where = `${placeText(xMm, units)} from the left, ${placeText(yMm, units)} from the top`;
  const moves = (['upper', 'lower'] as const)
    .filter((rail) => Math.abs(slides[rail]) > 0.3)
    .map((rail) => {
      const way = slides[rail] > 0 ? 'right' : 'left';
      return `${rail} rail ${smallLengthText(Math.abs(slides[rail]), units)} to the ${way}`;
    });
  const slide = moves.length > 0 ? ` Sliding helps: ${moves.join(', ')}.` : '';
  return [`${rank}. ${where}; ${look}.${slide}`, ...notes].join(' ');
}

import { openSample } from '../actions/openSample.js';
import { samples } from '../samples.js';
import { tellProblem } from '../state/tell.js';

/** The shipped samples; one tap opens a scored panel. */
export function SampleCards() {
  return (
    <ul className="cards">
      {samples.map((sample) => (
        <li key={sample.title}>
          <button
            type="button"
            className="card"
            onClick={() => openSample(sample).catch((thrown) => tellProblem(thrown, 'The sample'))}
          >
            <img src={`samples/${sample.photos[0]!.file}`} alt="" loading="lazy" />
            <span className="words">
              <strong>{sample.title}</strong>
              <span className="soft">{sample.about}</span>
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}

import { cutPatterns } from '../../report/endgrain/cutLegend.js';
import { cutWords } from '../../report/endgrain/cutWords.js';
import { Drawing } from '../canvas/Drawing.js';

const prefix = 'cut-colours';

/** What the colours of the ring angle mean, with the lines across them. */
export function CutColours() {
  return (
    <div className="row">
      {cutWords.map(({ name, fromDeg, colour }, index) => (
        <span key={name}>
          <svg width={18} height={14} aria-hidden="true">
            <Drawing
              svg={`${index === 0 ? `<defs>${cutPatterns(prefix)}</defs>` : ''}<rect width="18" height="14" fill="${colour}"/><rect width="18" height="14" fill="url(#${prefix}-${name})"/>`}
            />
          </svg>{' '}
          {name}, {fromDeg} to {fromDeg + 30} deg
        </span>
      ))}
    </div>
  );
}

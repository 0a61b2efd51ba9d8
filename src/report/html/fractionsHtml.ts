import { escapeXml } from '../draw/escapeXml.js';
import { fractionParts } from '../draw/fractionParts.js';
import { keepTogether } from '../draw/keepTogether.js';

/** Text as HTML with its fractions set as fractions; copied out it is still `14 3/8 in`. */
export function fractionsHtml(text: string): string {
  return fractionParts(keepTogether(text))
    .map(({ text: plain, fraction }) =>
      fraction
        ? `<span class="fraction"><span>${fraction.above}</span>/<span>${fraction.below}</span></span>`
        : escapeXml(plain),
    )
    .join('');
}

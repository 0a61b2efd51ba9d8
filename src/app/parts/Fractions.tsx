import { fractionParts } from '../../report/draw/fractionParts.js';
import { keepTogether } from '../../report/draw/keepTogether.js';

/** Words with their fractions set as fractions; read aloud and copied they stay `14 3/8 in`. */
export function Fractions({ text }: { readonly text: string }) {
  return fractionParts(keepTogether(text)).map(({ text: plain, fraction }, index) =>
    fraction ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: parts of one text, never reordered
      <span className="fraction" key={index}>
        <sup>{fraction.above}</sup>/<sub>{fraction.below}</sub>
      </span>
    ) : (
      plain
    ),
  );
}

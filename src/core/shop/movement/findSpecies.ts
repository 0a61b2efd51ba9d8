import { SeamgrainError } from '../../errors.js';
import { speciesTable } from './speciesTable.js';
import type { WoodSpecies } from './woodSpecies.js';

/**
 * Finds a species by its English or botanical name: `hard maple`, `Quercus alba`, `sugar maple`.
 * @throws SeamgrainError `wrongUsage` for a name that is unknown or fits several, naming them
 */
export function findSpecies(name: string): WoodSpecies {
  const wanted = plain(name);
  const exact = speciesTable.find((species) => namesOf(species).includes(wanted));
  if (exact) return exact;
  const words = wanted.split(' ').filter(Boolean);
  const near = speciesTable.filter((species) =>
    namesOf(species).some((known) => words.every((word) => known.split(' ').includes(word))),
  );
  if (near.length === 1 && words.length > 0) return near[0]!;
  const listed = near.length > 1 && words.length > 0 ? near : speciesTable;
  throw new SeamgrainError(
    'wrongUsage',
    near.length > 1 && words.length > 0
      ? `'${name}' could be several species`
      : `'${name}' is not in the species table`,
    `one of: ${listed.map((species) => species.name).join(', ')}; or give its shrinkage yourself`,
  );
}

function namesOf({ name, botanical, aliases }: WoodSpecies): string[] {
  return [name, botanical, ...aliases].map(plain);
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z]+/g, ' ')
    .trim();
}

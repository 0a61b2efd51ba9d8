import { type Command, Option, type OptionValues } from '@commander-js/extra-typings';

/** How lengths are written for a person; JSON is always in millimetres. */
export function addUnitsOptions<A extends unknown[], O extends OptionValues>(verb: Command<A, O>) {
  return verb
    .addOption(
      new Option('--units <UNITS>', 'write lengths for a person in inches or millimetres')
        .choices(['in', 'mm'] as const)
        .default('in' as const),
    )
    .addOption(
      new Option('--rule <MARKS>', "marks per inch on the maker's rule")
        .choices(['16', '32', '64'] as const)
        .default('16' as const),
    );
}

import type { Command, OptionValues } from '@commander-js/extra-typings';

/** The options that every verb has. */
export function addOutputOptions<A extends unknown[], O extends OptionValues>(verb: Command<A, O>) {
  return verb
    .option('--json', 'print one JSON document on stdout and nothing else there')
    .option('--debug', 'show where in the program a failure came from');
}

import { Option } from '@commander-js/extra-typings';

/**
 * An option that a reader turns into a value.
 * Long lists of options are added one by one in a loop and read through an interface: chained, the
 * compiler would build a new type from all earlier ones at each link and run out of memory.
 */
export function typedOption(flags: string, description: string, read: (text: string) => unknown) {
  return new Option(flags, description).argParser((text: string) => read(text)) as Option;
}

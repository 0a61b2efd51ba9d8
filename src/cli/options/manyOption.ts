import { Option } from '@commander-js/extra-typings';

/** An option that may be repeated; it reads as the list of all its values. */
export function manyOption(
  flags: string,
  description: string,
  read: (text: string) => unknown,
): Option {
  return new Option(flags, description).argParser((text: string, earlier: unknown) => [
    ...(Array.isArray(earlier) ? earlier : []),
    read(text),
  ]) as Option;
}

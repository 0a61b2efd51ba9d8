/**
 * Rids a document of the dust of binary arithmetic: every number rounded to nine decimals
 * (a millionth of a micrometre), so that 355.6 never prints as 355.59999999999997.
 */
export function tidyNumbers<T>(document: T): T {
  if (typeof document === 'number') return Number(document.toFixed(9)) as T;
  if (Array.isArray(document)) return document.map((item) => tidyNumbers(item)) as T;
  if (document === null || typeof document !== 'object') return document;
  const entries = Object.entries(document).map(([key, value]) => [key, tidyNumbers(value)]);
  return Object.fromEntries(entries) as T;
}

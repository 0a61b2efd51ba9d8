import { expect } from 'vitest';

/** Every number in a result document is finite: JSON would turn the others into null unsaid. */
export function expectFinite(value: unknown, path = 'result'): void {
  if (typeof value === 'number') expect(Number.isFinite(value), `${path} = ${value}`).toBe(true);
  else if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) expectFinite(inner, `${path}.${key}`);
  }
  expect(value, path).not.toBe(undefined);
}

import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const src = resolve(fileURLToPath(new URL('../src', import.meta.url)));
const mayImport: Record<string, readonly string[]> = {
  core: ['core'],
  vision: ['core', 'vision'],
  report: ['core', 'report'],
  job: ['core', 'vision', 'report', 'job'],
  cli: ['core', 'vision', 'report', 'job', 'cli'],
  app: ['core', 'vision', 'report', 'job', 'app'],
};
const forbiddenFolders = ['utils', 'common', 'helpers', 'misc'];

function sourceFiles(): string[] {
  return readdirSync(src, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith('.d.ts'))
    .map((name) => join(src, name));
}

function importsOf(file: string): string[] {
  const text = readFileSync(file, 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
  const pattern = /(?:from|import)\s*\(?\s*['"]([^'"]+)['"]/g;
  return [...text.matchAll(pattern)].map((match) => match[1]!);
}

const roomOf = (file: string) => relative(src, file).split('/')[0]!;
const targetOf = (file: string, spec: string) =>
  resolve(dirname(file), spec).replace(/\.js$/, '.ts');

describe('the rooms', () => {
  const files = sourceFiles();

  it('import one way only', () => {
    const wrong = files.flatMap((file) =>
      importsOf(file)
        .filter((spec) => spec.startsWith('.'))
        .map((spec) => [roomOf(file), roomOf(targetOf(file, spec)), file] as const)
        .filter(([from, to]) => !mayImport[from]?.includes(to))
        .map(([, to, from]) => `${relative(src, from)} -> ${to}`),
    );
    expect(wrong).toEqual([]);
  });

  it('keep the core free of packages that touch DOM, Node or wasm', () => {
    const allowed = new Set(['zod', 'fraction.js']);
    const wrong = files
      .filter((file) => roomOf(file) === 'core')
      .flatMap((file) =>
        importsOf(file).filter((spec) => !spec.startsWith('.') && !allowed.has(spec)),
      );
    expect(wrong).toEqual([]);
  });

  it('open OpenCV by one door', () => {
    const wrong = files.filter(
      (file) =>
        roomOf(file) !== 'vision' &&
        importsOf(file).some((spec) => /^opencv-wasm\b(?!.*\?url)/.test(spec)),
    );
    expect(wrong.map((file) => relative(src, file))).toEqual([]);
  });

  it('have no import cycle', () => {
    const graph = new Map(
      files.map((file) => [
        file,
        importsOf(file)
          .filter((spec) => spec.startsWith('.'))
          .map((spec) => targetOf(file, spec)),
      ]),
    );
    const state = new Map<string, 'open' | 'done'>();
    const cycles: string[] = [];
    const visit = (file: string, path: string[]) => {
      if (state.get(file) === 'done' || !graph.has(file)) return;
      if (state.get(file) === 'open') {
        cycles.push(
          [...path.slice(path.indexOf(file)), file].map((f) => relative(src, f)).join(' > '),
        );
        return;
      }
      state.set(file, 'open');
      for (const next of graph.get(file) ?? []) visit(next, [...path, file]);
      state.set(file, 'done');
    };
    for (const file of files) visit(file, []);
    expect(cycles).toEqual([]);
  });

  it('have no folder for odds and ends', () => {
    const wrong = files.filter((file) =>
      file.split('/').some((part) => forbiddenFolders.includes(part)),
    );
    expect(wrong).toEqual([]);
  });
});

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const folder = fileURLToPath(new URL('../../../samples/', import.meta.url));
const files = readdirSync(folder);
const photos = files.filter((name) => name.endsWith('.jpg'));

describe('the shipped samples', () => {
  it('each have their truth beside them and a line in the README', () => {
    const readme = readFileSync(`${folder}README.md`, 'utf8');
    expect(photos.length).toBeGreaterThanOrEqual(10);
    for (const photo of photos) {
      expect(files).toContain(photo.replace('.jpg', '.truth.json'));
      expect(readme).toContain(photo.replace('.jpg', ''));
    }
  });

  it('weigh less than 6 MB together', () => {
    const bytes = photos.reduce((sum, name) => sum + statSync(folder + name).size, 0);
    expect(bytes).toBeLessThan(6e6);
  });

  it('are called in the README as their truth says', () => {
    const readme = readFileSync(`${folder}README.md`, 'utf8');
    for (const name of files.filter((file) => file.endsWith('.truth.json'))) {
      const { args } = JSON.parse(readFileSync(folder + name, 'utf8')) as { args?: string[] };
      if (args === undefined) continue;
      const line = args.map((word) => (word.includes(' ') ? `"${word}"` : word)).join(' ');
      expect(readme).toContain(line);
    }
  });
});

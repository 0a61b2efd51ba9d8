import { z } from 'zod';
import { SeamgrainError } from '../../core/errors.js';
import type { Project } from '../state/project.js';
import { fromBase64, toBase64 } from './base64.js';
import type { KeptPicture } from './openDatabase.js';
import { restoreProject } from './restoreProject.js';

const format = 'seamgrain/project';

const fileSchema = z.object({
  format: z.literal(format),
  version: z.number(),
  project: z.unknown(),
  pictures: z.array(
    z.object({ id: z.string(), name: z.string(), type: z.string(), base64: z.string() }),
  ),
});

/** Writes a project with its photos as one file; see docs/file-format.md. */
export function writeProjectFile(project: Project, pictures: readonly KeptPicture[]): Blob {
  const head = JSON.stringify({ format, version: 1, project }).slice(0, -1);
  const parts = pictures.flatMap(({ id, name, type, bytes }, index) => [
    index ? ',\n' : '\n',
    JSON.stringify({ id, name, type, base64: toBase64(bytes) }),
  ]);
  return new Blob([head, ',"pictures":[', ...parts, ']}\n'], { type: 'application/json' });
}

/**
 * Reads a project file back.
 * @throws SeamgrainError when the file is no project, cut short, damaged, or lacks a photo
 */
export function readProjectFile(text: string): {
  readonly project: Project;
  readonly pictures: readonly KeptPicture[];
} {
  const checked = fileSchema.safeParse(parse(text));
  if (!checked.success) {
    throw new SeamgrainError(
      'cannotDo',
      'This file is no Seamgrain project.',
      "Choose the file that 'Save as a file' wrote; its name ends in .seamgrain.",
    );
  }
  const project = restoreProject(checked.data.version, checked.data.project);
  const pictures = checked.data.pictures.map(({ base64, ...rest }) => ({
    ...rest,
    bytes: fromBase64(base64),
  }));
  const there = new Set(pictures.map(({ id }) => id));
  const missing = project.photos.find(({ imageId }) => !there.has(imageId));
  if (missing) {
    throw new SeamgrainError(
      'cannotDo',
      `The file lacks the photo '${missing.name}'.`,
      'Open an older copy of the file.',
    );
  }
  return { project, pictures };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new SeamgrainError(
      'cannotDo',
      'This file is damaged or cut short, so nothing was opened.',
      'Copy it again, or open an older copy.',
    );
  }
}

import { SeamgrainError } from '../../core/errors.js';
import type { Project } from '../state/project.js';
import { projectSchema } from './projectSchema.js';

/**
 * Turns a project of any version that was ever written into today's, or says where it is broken.
 * Version 1 is today's; a later version adds its step here, from the one before to its own.
 * @throws SeamgrainError when the version is unknown or a field is damaged
 */
export function restoreProject(version: unknown, project: unknown): Project {
  if (version !== 1) {
    throw new SeamgrainError(
      'cannotDo',
      typeof version === 'number' && version > 1
        ? 'This project was made by a newer Seamgrain.'
        : 'This is no project that Seamgrain knows.',
      'Open it with the version that wrote it.',
    );
  }
  const checked = projectSchema.safeParse(project);
  if (checked.success) return checked.data;
  const where = checked.error.issues[0];
  throw new SeamgrainError(
    'cannotDo',
    `The project is damaged at '${where?.path.join('.') || 'its root'}': ${where?.message ?? ''}`,
    'Open an older copy of it.',
  );
}

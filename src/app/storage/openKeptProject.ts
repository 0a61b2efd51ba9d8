import { SeamgrainError } from '../../core/errors.js';
import type { Project } from '../state/project.js';
import type { ScoreAnswer } from '../state/workbench.js';
import { openDatabase } from './openDatabase.js';
import { restoreProject } from './restoreProject.js';
import { restoreScores } from './restoreScores.js';

/** A kept project, checked, with the answers that were on the page. */
export interface OpenedProject {
  readonly project: Project;
  readonly scores: Readonly<Record<string, ScoreAnswer>>;
}

/** Reads a project back. @throws SeamgrainError when it is not there or damaged */
export async function openKeptProject(id: string): Promise<OpenedProject> {
  const kept = await (await openDatabase()).get('projects', id);
  if (!kept) {
    throw new SeamgrainError(
      'cannotDo',
      'This project is not kept on this device.',
      'If you saved it as a file, open that file.',
    );
  }
  const project = restoreProject(kept.version, kept.project);
  return { project, scores: restoreScores(kept.scores) };
}

import type { Progress } from '../../core/progress.js';
import type { CliIo } from './cliIo.js';
import { progressLine } from './progressLine.js';

/** Runs work whose progress is shown to whoever watches, and clears the line at the end. */
export async function withProgress<Result>(
  io: CliIo,
  work: (progress: Progress) => Promise<Result>,
): Promise<Result> {
  const { progress, end } = progressLine(io);
  try {
    return await work(progress);
  } finally {
    end();
  }
}

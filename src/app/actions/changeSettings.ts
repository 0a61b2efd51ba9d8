import type { GapQuestion, Settings } from '../state/project.js';
import { changeProject } from '../state/workbench.js';

/** Changes numbers that hold for the whole project. */
export function changeSettings(label: string, change: Partial<Settings>): void {
  changeProject(label, (draft) => {
    Object.assign(draft.settings, change);
  });
}

/** Changes what the gap is asked. */
export function changeGap(change: Partial<GapQuestion>): void {
  changeProject('Change the gap', (draft) => {
    Object.assign(draft.gap, change);
  });
}

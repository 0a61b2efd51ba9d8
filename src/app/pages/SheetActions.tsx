import type { GapResult } from '../../core/results/gapResult.js';
import type { LayoutResult } from '../../core/results/layoutResult.js';
import { saveToDisk } from '../actions/saveToDisk.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { Project } from '../state/project.js';

export interface SheetActionsProps {
  readonly project: Project;
  readonly layout: LayoutResult;
  readonly gap: GapResult | null;
  readonly panel: PanelOnShelf | null;
}

/** Print the page, or save its numbers. */
export function SheetActions({ project, layout, gap }: SheetActionsProps) {
  const save = (result: object, name: string) =>
    saveToDisk(
      new Blob([`${JSON.stringify(result, null, 2)}\n`], { type: 'application/json' }),
      `${project.name} ${name}.json`,
    );
  return (
    <div className="row no-print">
      <button type="button" className="main" onClick={() => window.print()}>
        Print the sheet
      </button>
      <button type="button" onClick={() => save(layout, 'layout')}>
        Save the layout
      </button>
      {gap && (
        <button type="button" onClick={() => save(gap, 'gap')}>
          Save the gap
        </button>
      )}
    </div>
  );
}

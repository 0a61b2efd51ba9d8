import type { GapResult } from '../../core/results/gapResult.js';
import type { LayoutResult } from '../../core/results/layoutResult.js';
import { sheetPdf } from '../../report/pdf/sheetPdf.js';
import { sheetCsv } from '../../report/sheet/sheetCsv.js';
import { sheetHtml } from '../../report/sheet/sheetHtml.js';
import type { SheetPage } from '../../report/sheet/sheetPage.js';
import { sheetPages } from '../../report/sheet/sheetPages.js';
import { sheetSvg } from '../../report/sheet/sheetSvg.js';
import { changeSettings } from '../actions/changeSettings.js';
import { printPage } from '../actions/printPage.js';
import { saveToDisk } from '../actions/saveToDisk.js';
import { panelJpeg } from '../images/panelJpeg.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { Choice } from '../parts/Choice.js';
import type { Project } from '../state/project.js';
import { tellProblem } from '../state/tell.js';

export interface SheetActionsProps {
  readonly project: Project;
  readonly layout: LayoutResult;
  readonly gap: GapResult | null;
  readonly panel: PanelOnShelf | null;
}

/** Print the shop sheet, or save it as PDF, picture, table or numbers. */
export function SheetActions({ project, layout, gap, panel }: SheetActionsProps) {
  const { name, settings } = project;
  const { paper } = settings;
  const withPages = (use: (pages: readonly SheetPage[]) => unknown) => async () => {
    try {
      const picture = panel ? await panelJpeg(panel.drawable) : null;
      await use(sheetPages({ layout, gap, picture, title: name, paper }));
    } catch (thrown) {
      tellProblem(thrown, 'Making the sheet');
    }
  };
  const save = (content: BlobPart, type: string, ending: string) =>
    saveToDisk(new Blob([content], { type }), `${name} sheet.${ending}`);
  return (
    <section className="stack" aria-label="Shop sheet">
      <h2>Shop sheet</h2>
      <div className="row">
        <button
          type="button"
          className="main"
          onClick={withPages((pages) => printPage(sheetHtml(pages, name)))}
        >
          Print the sheet
        </button>
        <button
          type="button"
          onClick={withPages((pages) =>
            save(sheetPdf(pages, name) as Uint8Array<ArrayBuffer>, 'application/pdf', 'pdf'),
          )}
        >
          Save as PDF
        </button>
        <button
          type="button"
          onClick={withPages((pages) => {
            for (const [index, each] of pages.entries()) {
              const ending = pages.length > 1 ? `${index + 1}.svg` : 'svg';
              save(sheetSvg(each), 'image/svg+xml', ending);
            }
          })}
        >
          Save as SVG
        </button>
        <button type="button" onClick={() => save(sheetCsv(layout, gap), 'text/csv', 'csv')}>
          Save as CSV
        </button>
        <button
          type="button"
          onClick={() =>
            save(`${JSON.stringify({ layout, gap }, null, 2)}\n`, 'application/json', 'json')
          }
        >
          Save the numbers
        </button>
      </div>
      <Choice
        label="Paper"
        value={paper}
        options={[
          ['Letter', 'Letter'],
          ['A4', 'A4'],
        ]}
        onChange={(next) => changeSettings('Change the paper', { paper: next })}
      />
    </section>
  );
}

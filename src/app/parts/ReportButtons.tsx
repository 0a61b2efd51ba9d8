import { printPage } from '../actions/printPage.js';
import { saveToDisk } from '../actions/saveToDisk.js';
import { tellProblem } from '../state/tell.js';

export interface ReportButtonsProps {
  /** Name of the saved files, without ending. */
  readonly name: string;
  /** Makes the self-contained page. */
  readonly page: () => Promise<string>;
  /** The answer as the command line would print it. */
  readonly answer: object;
}

/** Print the report, save it as one page, or save its numbers. */
export function ReportButtons({ name, page, answer }: ReportButtonsProps) {
  const withPage = (use: (html: string) => unknown) => () =>
    page()
      .then(use)
      .catch((thrown) => tellProblem(thrown, 'Making the report'));
  const save = (text: string, type: string, ending: string) =>
    saveToDisk(new Blob([text], { type }), `${name}.${ending}`);
  return (
    <section className="row" aria-label="Report">
      <button type="button" onClick={withPage(printPage)}>
        Print
      </button>
      <button type="button" onClick={withPage((html) => save(html, 'text/html', 'html'))}>
        Save the report
      </button>
      <button
        type="button"
        onClick={() => save(`${JSON.stringify(answer, null, 2)}\n`, 'application/json', 'json')}
      >
        Save the numbers
      </button>
    </section>
  );
}

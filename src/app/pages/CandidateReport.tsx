import type { CandidateStock } from '../../core/pipeline/candidateStock.js';
import { compareHtml } from '../../report/compare/compareHtml.js';
import { reasonText } from '../../report/compare/reasonText.js';
import { compareAnswer } from '../analysis/compareAnswer.js';
import type { Candidate } from '../analysis/rankCandidates.js';
import { panelDataUrl } from '../images/panelDataUrl.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { ReportButtons } from '../parts/ReportButtons.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Project } from '../state/project.js';

export interface CandidateReportProps {
  readonly project: Project;
  readonly ranked: readonly Candidate[];
  readonly stocks: readonly (CandidateStock | null)[];
  readonly panels: ReadonlyMap<string, PanelOnShelf>;
}

/** The comparison's figures and what they rest on, one tap away; to print and to keep. */
export function CandidateReport({ project, ranked, stocks, panels }: CandidateReportProps) {
  const answer = compareAnswer(ranked, stocks, panels, project);
  const hrefs = (widest: number) =>
    Promise.all(ranked.map(({ board }) => panelDataUrl(panels.get(board.id)!.drawable, widest)));
  const page = async () =>
    compareHtml(answer, {
      ...lengthUnitsOf(project.settings.unit),
      photoHrefs: await hrefs(1600),
      smallHrefs: await hrefs(560),
    });
  const notes = answer.candidates.flatMap((candidate) =>
    [reasonText(answer, candidate), ...candidate.notes].map((note) => ({
      name: candidate.photo,
      note,
    })),
  );
  const distinct = [...new Set(notes.map(({ note }) => note))].filter(Boolean);
  return (
    <>
      <details>
        <summary>The numbers, and what they rest on</summary>
        <ul className="said">
          {distinct.map((note) => {
            const of = notes.filter((each) => each.note === note).map(({ name }) => name);
            const whose = of.length === answer.candidates.length ? '' : `${of.join(', ')}: `;
            return <li key={note}>{`${whose}${note}`}</li>;
          })}
        </ul>
      </details>
      <ReportButtons name={`${project.name} candidates`} answer={answer} page={page} />
    </>
  );
}

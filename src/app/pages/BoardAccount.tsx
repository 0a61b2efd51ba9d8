import type { ArrangeResult } from '../../core/results/arrangeResult.js';
import { arrangeHtml } from '../../report/arrange/arrangeHtml.js';
import { proofOf } from '../../report/arrange/describeArrange.js';
import { panelDataUrl } from '../images/panelDataUrl.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { ReportButtons } from '../parts/ReportButtons.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Photo, Project } from '../state/project.js';
import { JointList } from './JointList.js';

export interface BoardAccountProps {
  readonly project: Project;
  readonly photos: readonly Photo[];
  readonly backs: ReadonlyMap<string, Photo>;
  readonly boards: ReadonlyMap<string, PanelOnShelf> | null;
  readonly result: ArrangeResult;
}

/** The order on the page in words: its joints, what it costs at the bench, what it rests on. */
export function BoardAccount({ project, photos, backs, boards, result }: BoardAccountProps) {
  const { jointMm, distanceMm, unit } = project.settings;
  const page = async () => {
    const photoHrefs: string[] = [];
    for (const { id, backUp } of photos) {
      const shown = (backUp && backs.get(id)?.id) || id;
      photoHrefs.push(await panelDataUrl((boards?.get(shown) ?? boards!.get(id)!).drawable, 1600));
    }
    return arrangeHtml(result, { ...lengthUnitsOf(unit), photoHrefs, jointMm, distanceMm });
  };
  const said = [
    ...(result.laid === 'byHand' ? [] : [proofOf(result)]),
    ...result.conflicts.map(({ text }) => text),
    ...result.notes,
  ];
  return (
    <>
      <JointList result={result} />
      <ul className="said">
        {said.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <ReportButtons name={`${project.name} boards`} answer={result} page={page} />
    </>
  );
}

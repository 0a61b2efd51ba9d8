import { saveProjectFile } from '../actions/projectFiles.js';
import { changeProject, redoChange, undoChange, useWorkbench } from '../state/workbench.js';
import { saveNow } from '../storage/autosave.js';

const savedWords = {
  kept: 'Kept here',
  saving: 'Keeping…',
  problem: 'Not kept yet',
  elsewhere: 'In another tab',
} as const;

/** The project's name, what is kept, and taking back. */
export function TopBar() {
  const history = useWorkbench((state) => state.history);
  const saving = useWorkbench((state) => state.saving);
  return (
    <header className="top">
      <a className="home" href="#/">
        Seamgrain
      </a>
      {history && (
        <>
          <input
            className="project-name"
            aria-label="Name of the project"
            value={history.now.name}
            onChange={({ target }) =>
              changeProject(
                'Rename the project',
                (draft) => {
                  draft.name = target.value;
                },
                'name',
              )
            }
          />
          <span className="saved" role="status">
            {savedWords[saving]}
          </span>
          {saving === 'problem' && (
            <button type="button" onClick={saveNow}>
              Try again
            </button>
          )}
          <div className="row push">
            <UndoButton word="Undo" step={history.past.at(-1)?.label} onClick={undoChange} />
            <UndoButton word="Redo" step={history.future[0]?.label} onClick={redoChange} />
            <button type="button" onClick={saveProjectFile}>
              Save as a file
            </button>
          </div>
        </>
      )}
    </header>
  );
}

function UndoButton(props: {
  readonly word: string;
  readonly step: string | undefined;
  readonly onClick: () => void;
}) {
  const { word, step, onClick } = props;
  return (
    <button
      type="button"
      onClick={onClick}
      disabled={!step}
      aria-label={step ? `${word}: ${step}` : word}
      title={step ? `${word}: ${step}` : word}
    >
      {word}
    </button>
  );
}

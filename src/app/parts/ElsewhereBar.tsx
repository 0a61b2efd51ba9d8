import { workHere } from '../actions/openProject.js';
import { tellProblem } from '../state/tell.js';
import { useWorkbench } from '../state/workbench.js';

/** Says that another tab has the project, and offers to take it over. */
export function ElsewhereBar() {
  const saving = useWorkbench((state) => state.saving);
  if (saving !== 'elsewhere') return null;
  return (
    <div className="elsewhere" role="alert">
      <span>This project is being worked on in another tab. Here you can look, not change.</span>
      <button
        type="button"
        onClick={() => workHere().catch((thrown) => tellProblem(thrown, 'Taking the project over'))}
      >
        Work on it here
      </button>
    </div>
  );
}

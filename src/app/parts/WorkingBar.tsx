import { useWorkbench } from '../state/workbench.js';

/** What the worker is doing, how far it is, and a way to stop it. */
export function WorkingBar() {
  const running = useWorkbench((state) => state.running);
  // The place is always kept, so that the panel does not jump under a finger.
  if (!running) return <div className="working" />;
  const percent = Math.round(100 * running.fraction);
  return (
    <div className="working">
      <span role="status">
        {running.label}: {running.doing}
      </span>
      <progress value={percent} max={100} aria-label={running.label} />
      <button type="button" onClick={running.cancel}>
        Stop
      </button>
    </div>
  );
}

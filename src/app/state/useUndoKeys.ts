import { useEffect } from 'react';
import { redoChange, undoChange } from './workbench.js';

/** Ctrl/Cmd+Z takes back, Ctrl/Cmd+Shift+Z or Ctrl+Y takes again, except while typing. */
export function useUndoKeys(): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if (event.target instanceof HTMLInputElement && event.target.type !== 'range') return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redoChange();
      else undoChange();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
}

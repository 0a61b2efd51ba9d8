import { useCallback, useEffect, useState } from 'react';
import { hashOfRoute } from '../state/route.js';
import { tellProblem } from '../state/tell.js';
import { forgetProject, listProjects } from '../storage/keepProject.js';

interface Row {
  readonly id: string;
  readonly name: string;
  readonly savedAt: string;
  readonly pinned: boolean;
}

/** Projects kept on this device, newest first. */
export function KeptProjects() {
  const [rows, setRows] = useState<readonly Row[]>([]);
  const [asked, setAsked] = useState<string | null>(null);
  const read = useCallback(() => {
    listProjects()
      .then((kept) => setRows(kept.map(rowOf)))
      .catch((thrown) => tellProblem(thrown, 'Reading the kept projects'));
  }, []);
  useEffect(read, [read]);
  if (rows.length === 0) return null;
  const remove = (id: string) =>
    forgetProject(id)
      .then(read)
      .catch((thrown) => tellProblem(thrown, 'Removing the project'));
  return (
    <section className="stack">
      <h2>Kept on this device</h2>
      <ul className="cards">
        {rows.map(({ id, name, savedAt, pinned }) => (
          <li key={id} className="card">
            <span className="words">
              <strong>{name || 'Project without a name'}</strong>
              <span className="soft">{new Date(savedAt).toLocaleString()}</span>
            </span>
            <span className="row">
              <a
                className="button"
                href={hashOfRoute({ page: pinned ? 'joints' : 'pin', projectId: id })}
                aria-label={`Open ${name}`}
              >
                Open
              </a>
              <button
                type="button"
                aria-label={asked === id ? `Yes, remove it: ${name}` : `Remove ${name}`}
                onBlur={() => setAsked(null)}
                onClick={() => (asked === id ? remove(id) : setAsked(id))}
              >
                {asked === id ? 'Yes, remove it' : 'Remove'}
              </button>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function rowOf(kept: { id: string; savedAt: string; project: unknown }): Row {
  const project = kept.project as { name?: unknown; photos?: { scale?: unknown }[] } | null;
  return {
    id: kept.id,
    name: String(project?.name ?? ''),
    savedAt: kept.savedAt,
    pinned: project?.photos?.some(({ scale }) => scale) ?? false,
  };
}

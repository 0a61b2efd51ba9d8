import { useEffect } from 'react';
import { capitalise } from '../../report/words/capitalise.js';
import { closeNotice } from '../state/tell.js';
import { type Notice, useWorkbench } from '../state/workbench.js';

const readingMs = 7000;

/** Words to the maker, spoken to a screen reader as they come; problems stay until closed. */
export function NoticeBox() {
  const notices = useWorkbench((state) => state.notices);
  return (
    <div className="notices no-print">
      {notices.map((notice) => (
        <OneNotice key={notice.id} notice={notice} />
      ))}
    </div>
  );
}

function OneNotice({ notice: { id, kind, text, hint } }: { readonly notice: Notice }) {
  useEffect(() => {
    if (kind !== 'word') return;
    const timer = setTimeout(() => closeNotice(id), readingMs);
    return () => clearTimeout(timer);
  }, [id, kind]);
  return (
    <div className={`notice ${kind}`} role={kind === 'problem' ? 'alert' : 'status'}>
      <div>
        <p>{text}</p>
        {hint && <p>{capitalise(hint)}</p>}
      </div>
      <button type="button" onClick={() => closeNotice(id)}>
        Close
      </button>
    </div>
  );
}

import { useEffect } from 'react';
import { closeNotice } from '../state/tell.js';
import { useWorkbench } from '../state/workbench.js';

/** Words to the maker, spoken to a screen reader as they come; problems stay until closed. */
export function NoticeBox() {
  const notice = useWorkbench((state) => state.notice);
  useEffect(() => {
    if (notice?.kind !== 'word') return;
    const timer = setTimeout(closeNotice, 6000);
    return () => clearTimeout(timer);
  }, [notice]);
  return (
    <div aria-live={notice?.kind === 'problem' ? 'assertive' : 'polite'}>
      {notice && (
        <div
          className={`notice ${notice.kind}`}
          role={notice.kind === 'problem' ? 'alert' : 'status'}
        >
          <div>
            <p>{notice.text}</p>
            {notice.hint && <p className="soft">{capital(notice.hint)}</p>}
          </div>
          <button type="button" onClick={closeNotice}>
            Close
          </button>
        </div>
      )}
    </div>
  );
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

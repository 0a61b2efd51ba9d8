import { useEffect } from 'react';
import { leaveProject, openProject } from './actions/openProject.js';
import { useDropAndPaste } from './intake/useDropAndPaste.js';
import { CurrentPage } from './pages/CurrentPage.js';
import { CatchFault } from './parts/CatchFault.js';
import { ElsewhereBar } from './parts/ElsewhereBar.js';
import { NoticeBox } from './parts/NoticeBox.js';
import { PageLinks } from './parts/PageLinks.js';
import { TopBar } from './parts/TopBar.js';
import { registerOffline } from './registerOffline.js';
import { routeFromHash } from './state/route.js';
import { useUndoKeys } from './state/useUndoKeys.js';
import { useWorkbench } from './state/workbench.js';

/** Follows the address: each page of a project has its own. */
function useRoute(): void {
  useEffect(() => {
    const follow = () => {
      const route = routeFromHash(location.hash);
      useWorkbench.setState({ route });
      if (route.page === 'start') leaveProject();
      else openProject(route.projectId);
      window.scrollTo(0, 0);
    };
    follow();
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, []);
}

/** The whole workbench. */
export function App() {
  useRoute();
  useUndoKeys();
  useDropAndPaste();
  useEffect(registerOffline, []);
  const hash = useWorkbench(({ route, history }) => `${route.page} ${history?.past.length}`);
  return (
    <div className="shell">
      <button type="button" className="skip" onClick={toMain}>
        To the page
      </button>
      <TopBar />
      <div>
        <PageLinks />
        <ElsewhereBar />
      </div>
      <main className="page" id="main" tabIndex={-1}>
        <CatchFault about={hash}>
          <CurrentPage />
        </CatchFault>
      </main>
      <NoticeBox />
    </div>
  );
}

function toMain(): void {
  document.getElementById('main')?.focus();
}

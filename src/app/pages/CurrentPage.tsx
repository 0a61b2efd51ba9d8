import { lazy, Suspense } from 'react';
import { useWorkbench } from '../state/workbench.js';
import { StartPage } from './StartPage.js';

const PinPage = lazy(() => import('./PinPage.js').then((m) => ({ default: m.PinPage })));
const JointsPage = lazy(() => import('./JointsPage.js').then((m) => ({ default: m.JointsPage })));
const SheetPage = lazy(() => import('./SheetPage.js').then((m) => ({ default: m.SheetPage })));
const RipPage = lazy(() => import('./RipPage.js').then((m) => ({ default: m.RipPage })));
const BoardsPage = lazy(() => import('./BoardsPage.js').then((m) => ({ default: m.BoardsPage })));
const EndPage = lazy(() => import('./EndPage.js').then((m) => ({ default: m.EndPage })));
const CandidatesPage = lazy(() =>
  import('./CandidatesPage.js').then((m) => ({ default: m.CandidatesPage })),
);

const pages = {
  pin: PinPage,
  joints: JointsPage,
  rip: RipPage,
  candidates: CandidatesPage,
  boards: BoardsPage,
  end: EndPage,
  sheet: SheetPage,
} as const;

/** The page that the address names. */
export function CurrentPage() {
  const route = useWorkbench((state) => state.route);
  const ready = useWorkbench((state) => state.history !== null);
  if (route.page === 'start') return <StartPage />;
  if (!ready) return <p role="status">Opening the project…</p>;
  const Page = pages[route.page];
  return (
    <Suspense fallback={<p role="status">One moment…</p>}>
      <Page />
    </Suspense>
  );
}

import { useEffect, useRef } from 'react';
import { hashOfRoute, type JobPage, jobPages } from '../state/route.js';
import { useWorkbench } from '../state/workbench.js';

/** The pages' names, in the order of the work. */
export const pageNames: Record<JobPage, string> = {
  pin: 'Panel',
  joints: 'Joints',
  rip: 'Before the rip',
  candidates: 'Candidates',
  boards: 'Boards',
  end: 'End grain',
  sheet: 'Shop sheet',
};

/** The way from page to page of a project. */
export function PageLinks() {
  const route = useWorkbench((state) => state.route);
  const links = useRef<HTMLElement>(null);
  // On a phone the row is wider than the screen: the page that is open is always seen in it.
  useEffect(() => {
    const row = links.current;
    const open = row?.querySelector<HTMLElement>(`a[href="${hashOfRoute(route)}"]`);
    if (row && open) row.scrollLeft = open.offsetLeft + open.offsetWidth / 2 - row.clientWidth / 2;
  }, [route]);
  if (route.page === 'start') return <nav />;
  return (
    <nav ref={links} className="pages" aria-label="Pages of the project">
      {jobPages.map((page) => (
        <a
          key={page}
          href={hashOfRoute({ page, projectId: route.projectId })}
          aria-current={route.page === page ? 'page' : undefined}
        >
          {pageNames[page]}
        </a>
      ))}
    </nav>
  );
}

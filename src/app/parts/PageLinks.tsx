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
  if (route.page === 'start') return <nav />;
  return (
    <nav className="pages" aria-label="Pages of the project">
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

/** The pages of a project, in the order of the work. */
export const jobPages = ['pin', 'joints', 'rip', 'candidates', 'boards', 'end', 'sheet'] as const;
export type JobPage = (typeof jobPages)[number];

/** Where the maker is. */
export type Route =
  | { readonly page: 'start' }
  | { readonly page: JobPage; readonly projectId: string };

/** Reads the address's hash; anything not understood is the start page. */
export function routeFromHash(hash: string): Route {
  const match = /^#\/([\w-]+)\/(\w+)$/.exec(hash);
  const page = jobPages.find((name) => name === match?.[2]);
  return page && match ? { page, projectId: match[1]! } : { page: 'start' };
}

/** The hash that `routeFromHash` reads back. */
export function hashOfRoute(route: Route): string {
  return route.page === 'start' ? '#/' : `#/${route.projectId}/${route.page}`;
}

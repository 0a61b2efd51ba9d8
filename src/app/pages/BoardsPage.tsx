/** Filled in when its jobs land. */
export function BoardsPage() {
  return <h1>Boards</h1>;
}

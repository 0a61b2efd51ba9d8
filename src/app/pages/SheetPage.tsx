/** Filled in when its jobs land. */
export function SheetPage() {
  return <h1>Sheet</h1>;
}

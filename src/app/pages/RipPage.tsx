/** Filled in when its jobs land. */
export function RipPage() {
  return <h1>Rip</h1>;
}

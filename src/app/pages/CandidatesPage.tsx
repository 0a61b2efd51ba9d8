/** Filled in when its jobs land. */
export function CandidatesPage() {
  return <h1>Candidates</h1>;
}

import { BringButtons } from '../parts/BringButtons.js';

/** A project without a photo. */
export function BringFirst() {
  return (
    <section className="stack">
      <h1>No photo yet.</h1>
      <p className="soft">
        Bring one in: stand square to the panel, fill the frame, no lamp glare.
      </p>
      <BringButtons />
    </section>
  );
}

import { Fractions } from './Fractions.js';

/** The answer as a sentence on top of the page; a screen reader hears it when it changes. */
export function Answer({ text, busy = false }: { readonly text: string; readonly busy?: boolean }) {
  return (
    <>
      <h1 className="answer" aria-busy={busy}>
        <Fractions text={text} />
      </h1>
      <p className="heard-only" role="status">
        {busy ? '' : text}
      </p>
    </>
  );
}

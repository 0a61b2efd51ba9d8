import { applyPatches, enablePatches, type Patch, produceWithPatches } from 'immer';

enablePatches();

/** One step that can be taken back. */
export interface Step {
  readonly label: string;
  /** Steps with the same gesture merge: a drag is one step, however many moves it had. */
  readonly gesture: string | null;
  readonly forward: readonly Patch[];
  readonly backward: readonly Patch[];
}

/** A value with the steps that led to it and those taken back from it. */
export interface History<T> {
  readonly now: T;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

const longestPast = 200;

/** A value with no steps behind it. */
export function startHistory<T>(now: T): History<T> {
  return { now, past: [], future: [] };
}

/**
 * Changes the value by an immer recipe and remembers how to take it back.
 * A recipe that changes nothing leaves no step. Steps of one `gesture` in a row become one.
 */
export function record<T extends object>(
  history: History<T>,
  label: string,
  recipe: (draft: Writable<T>) => void,
  gesture: string | null = null,
): History<T> {
  const [now, forward, backward] = produceWithPatches(history.now, (draft) => {
    recipe(draft as Writable<T>);
  });
  if (forward.length === 0) return history;
  const last = history.past.at(-1);
  const merges = gesture !== null && last?.gesture === gesture;
  const step: Step = {
    label,
    gesture,
    forward: merges ? [...last.forward, ...forward] : forward,
    backward: merges ? [...backward, ...last.backward] : backward,
  };
  const before = merges ? history.past.slice(0, -1) : history.past;
  const past = [...before, step].slice(-longestPast);
  return { now, past, future: [] };
}

/** Takes the last step back; the same history when there is none. */
export function undo<T extends object>(history: History<T>): History<T> {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    now: applyPatches(history.now, step.backward as Patch[]),
    past: history.past.slice(0, -1),
    future: [step, ...history.future],
  };
}

/** Takes again the step that was last taken back. */
export function redo<T extends object>(history: History<T>): History<T> {
  const step = history.future[0];
  if (!step) return history;
  return {
    now: applyPatches(history.now, step.forward as Patch[]),
    past: [...history.past, step],
    future: history.future.slice(1),
  };
}

/** A readonly document as a recipe sees it. */
export type Writable<T> = T extends readonly [infer A, infer B, infer C, infer D]
  ? [A, B, C, D]
  : T extends readonly (infer E)[]
    ? Writable<E>[]
    : T extends object
      ? { -readonly [K in keyof T]: Writable<T[K]> }
      : T;

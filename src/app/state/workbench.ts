import { create } from 'zustand';
import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import type { GrainResult } from '../../core/results/grainResult.js';
import type { ScoreResult } from '../../core/results/scoreResult.js';
import { type History, record, redo, startHistory, undo, type Writable } from './history.js';
import type { Project } from './project.js';
import { type Route, routeFromHash } from './route.js';

/** An answer and the question it belongs to, so that a stale one is never shown as fresh. */
export interface Answer<T> {
  readonly question: string;
  readonly result: T;
}

/** A score with the viewing distance that its visibilities are for. */
export interface ScoreAnswer extends Answer<ScoreResult> {
  readonly distanceMm: number;
}

/** Work under way in the worker. */
export interface Running {
  readonly question: string;
  readonly label: string;
  /** What is being done just now. */
  readonly doing: string;
  readonly fraction: number;
  readonly cancel: () => void;
}

/** Something to tell the maker; `problem` stays until closed. */
export interface Notice {
  readonly id: number;
  readonly kind: 'word' | 'problem';
  readonly text: string;
  readonly hint: string;
}

/** How the last save went. */
export type Saving = 'kept' | 'saving' | 'problem' | 'elsewhere';

/** What may be drawn over the panel. */
export interface Layers {
  readonly grain: boolean;
  readonly seams: boolean;
  readonly worst: boolean;
}

/** All that the page shows, save the pixels. */
export interface Workbench {
  readonly history: History<Project> | null;
  readonly route: Route;
  readonly scores: Readonly<Record<string, ScoreAnswer>>;
  readonly grains: Readonly<Record<string, Answer<GrainResult>>>;
  readonly ends: Readonly<Record<string, Answer<EndgrainResult>>>;
  readonly running: Running | null;
  readonly notices: readonly Notice[];
  readonly saving: Saving;
  readonly layers: Layers;
  readonly chosenSeamId: string | null;
  /** The page is in the browser's cache and needs no network. */
  readonly worksOffline: boolean;
  /** Counts up to ask a cancelled question anew. */
  readonly asked: number;
}

export const useWorkbench = create<Workbench>()(() => ({
  history: null,
  route: routeFromHash(typeof location === 'undefined' ? '' : location.hash),
  scores: {},
  grains: {},
  ends: {},
  running: null,
  notices: [],
  saving: 'kept',
  layers: { grain: true, seams: true, worst: true },
  chosenSeamId: null,
  worksOffline: false,
  asked: 0,
}));

/** Changes the project as one step that can be taken back. */
export function changeProject(
  label: string,
  recipe: (draft: Writable<Project>) => void,
  gesture: string | null = null,
): void {
  useWorkbench.setState(({ history, saving }) =>
    history && saving !== 'elsewhere' ? { history: record(history, label, recipe, gesture) } : {},
  );
}

/** Takes the last change back. */
export function undoChange(): void {
  useWorkbench.setState(({ history }) => (history ? { history: undo(history) } : {}));
}

/** Takes the change again. */
export function redoChange(): void {
  useWorkbench.setState(({ history }) => (history ? { history: redo(history) } : {}));
}

/** Puts a whole project on the page, with nothing to take back. */
export function showProject(
  project: Project,
  scores: Readonly<Record<string, ScoreAnswer>> = {},
): void {
  useWorkbench.setState({
    history: startHistory(project),
    scores,
    grains: {},
    ends: {},
    chosenSeamId: null,
    saving: 'kept',
  });
}

/** The project on the page, or null on the start page. */
export const currentProject = (): Project | null => useWorkbench.getState().history?.now ?? null;

/** The project for a component; every page but the first has one. */
export const useProject = (): Project | null => useWorkbench((state) => state.history?.now ?? null);

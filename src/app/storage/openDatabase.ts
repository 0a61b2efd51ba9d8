import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Answer } from '../state/workbench.js';

/** A project as it lies in the database. */
export interface KeptProject {
  readonly id: string;
  readonly version: 1;
  readonly savedAt: string;
  /** Checked by `restoreProject` when read. */
  readonly project: unknown;
  readonly scores: Readonly<Record<string, Answer<unknown>>>;
}

/** A photograph's own bytes, as they came from the camera. */
export interface KeptPicture {
  readonly id: string;
  readonly name: string;
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

/** Layout of the database; see docs/file-format.md. */
export interface Kept extends DBSchema {
  projects: { key: string; value: KeptProject };
  pictures: { key: string; value: KeptPicture };
}

export type Database = IDBPDatabase<Kept>;

let opened: Promise<Database> | null = null;

/** Opens the page's database, making it on the first visit. */
export function openDatabase(): Promise<Database> {
  opened ??= openDB<Kept>('seamgrain', 1, {
    upgrade(database) {
      database.createObjectStore('projects', { keyPath: 'id' });
      database.createObjectStore('pictures', { keyPath: 'id' });
    },
    terminated() {
      opened = null;
    },
  }).catch((thrown) => {
    opened = null;
    throw thrown;
  });
  return opened;
}

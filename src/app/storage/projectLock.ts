/** This tab's hold on a project. */
export interface ProjectLock {
  /** True when this tab may write. */
  readonly held: boolean;
  /** Asks the tab that holds it to let go, and waits until it has. */
  takeOver(): Promise<void>;
  release(): void;
}

const nameOf = (id: string) => `seamgrain-project-${id}`;

/**
 * Takes hold of a project so that only one tab writes it. When another tab asks for it,
 * `letGo` is awaited (it saves), then the hold passes on.
 */
export async function lockProject(id: string, letGo: () => Promise<void>): Promise<ProjectLock> {
  const channel = new BroadcastChannel(nameOf(id));
  let drop: (() => void) | null = null;
  const hold = (options: LockOptions) =>
    new Promise<boolean>((resolve, reject) => {
      navigator.locks
        .request(nameOf(id), options, (lock) => {
          if (!lock) return resolve(false);
          resolve(true);
          return new Promise<void>((done) => {
            drop = done;
          });
        })
        .catch(reject);
    });
  const release = () => {
    drop?.();
    drop = null;
  };
  channel.addEventListener('message', async () => {
    if (!drop) return;
    await letGo();
    release();
  });
  const held = await hold({ ifAvailable: true });
  return {
    held,
    async takeOver() {
      const waiting = hold({});
      channel.postMessage('letGo');
      await waiting;
    },
    release() {
      release();
      channel.close();
    },
  };
}

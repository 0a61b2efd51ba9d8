import { MessageChannel } from 'node:worker_threads';
import { afterEach, describe, expect, it } from 'vitest';
import { SeamgrainError } from '../../src/core/errors.js';
import { runJob } from '../../src/job/runJob.js';
import { createJobClient, type JobClient, type WorkerLike } from '../../src/job/webWorkerClient.js';
import { hostJobs, type WorkerScope } from '../../src/job/webWorkerHost.js';
import { loadOpenCv } from '../../src/vision/node/loadOpenCv.js';

const photo = { width: 200, height: 150, data: new Uint8Array(3 * 200 * 150).fill(120) };
const scale = { kind: 'pxPerMm', pxPerMm: 10 } as const;

let open: JobClient | null = null;
afterEach(() => {
  open?.close();
  open = null;
});

/** A worker in this thread: real messages, structured clones and transfers over a real channel. */
function channelWorker(started: () => void): WorkerLike {
  started();
  const { port1, port2 } = new MessageChannel();
  hostJobs(port2 as unknown as WorkerScope, loadOpenCv);
  port2.start();
  return {
    postMessage: (message, transfer) => port1.postMessage(message, transfer),
    addEventListener: (type: string, listener: (event: never) => void) => {
      port1.addEventListener(type as 'message', listener as unknown as (event: unknown) => void);
      port1.start();
    },
    terminate: () => {
      port1.close();
      port2.close();
    },
  };
}

function client(): { client: JobClient; started: () => number } {
  let count = 0;
  open = createJobClient(() => channelWorker(() => count++));
  return { client: open, started: () => count };
}

describe('a job in a worker', () => {
  it('gives the same panel as in this thread, and tells how far it is', async () => {
    const told: string[] = [];
    const { client: jobs } = client();
    const { result } = jobs.start(
      'rectify',
      { photo, scale },
      { progress: (_, what) => told.push(what) },
    );
    const here = await runJob('rectify', { photo, scale }, { vision: loadOpenCv });
    expect(await result).toEqual(here);
    expect(told.length).toBeGreaterThan(0);
    expect(photo.data.length).toBe(3 * 200 * 150);
  });

  it('passes a failure on with its code, message and hint', async () => {
    const { client: jobs } = client();
    const { result } = jobs.start('rectify', { photo, scale: { kind: 'pxPerMm', pxPerMm: 0 } });
    const failure = await result.catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(SeamgrainError);
    expect(failure).toMatchObject({ code: 'badPanel', hint: expect.stringMatching(/size/) });
  });

  it('serves one after another from one worker', async () => {
    const { client: jobs, started } = client();
    const results = [5, 6, 7].map(
      (maxPxPerMm) => jobs.start('rectify', { photo, scale, maxPxPerMm }).result,
    );
    expect((await Promise.all(results)).map((panel) => panel.pxPerMm)).toEqual([5, 6, 7]);
    expect(started()).toBe(1);
  });

  it('ends the worker when the running job is cancelled; the next job gets a fresh one', async () => {
    const { client: jobs, started } = client();
    const first = jobs.start('rectify', { photo, scale });
    const second = jobs.start('rectify', { photo, scale });
    first.cancel();
    await expect(first.result).rejects.toMatchObject({ name: 'JobCancelled' });
    expect((await second.result).pxPerMm).toBe(7);
    expect(started()).toBe(2);
    first.cancel();
    second.cancel();
  });

  it('drops a waiting job without disturbing the running one', async () => {
    const { client: jobs, started } = client();
    const first = jobs.start('rectify', { photo, scale });
    const second = jobs.start('rectify', { photo, scale });
    second.cancel();
    await expect(second.result).rejects.toMatchObject({ name: 'JobCancelled' });
    expect((await first.result).pxPerMm).toBe(7);
    expect(started()).toBe(1);
  });
});

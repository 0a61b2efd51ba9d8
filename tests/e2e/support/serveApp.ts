import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const script = fileURLToPath(new URL('../../../src/app/build/serve.mjs', import.meta.url));

/** A served app; `stop` ends the server. */
export interface ServedApp {
  readonly url: string;
  stop(): void;
}

/** Serves dist/app as `npm start` does, on a port of its own. */
export function serveApp(): Promise<ServedApp> {
  const server: ChildProcess = spawn(process.execPath, [script], {
    env: { ...process.env, PORT: '0' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return new Promise((resolve, reject) => {
    let said = '';
    server.stdout!.on('data', (chunk) => {
      said += chunk;
      const url = /http:\/\/localhost:\d+\//.exec(said)?.[0];
      if (url) resolve({ url, stop: () => server.kill() });
    });
    server.on('exit', (code) => reject(new Error(`The server ended (${code}): ${said}`)));
  });
}

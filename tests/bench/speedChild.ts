import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** How a child process went. */
export interface ChildRun {
  readonly status: number | null;
  readonly wallMs: number;
  /** Most memory in use, MB; null where /proc does not tell. */
  readonly peakMb: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a command to its end, timing it and watching its memory. */
export function speedChild(command: string, args: readonly string[]): Promise<ChildRun> {
  return new Promise((resolve, reject) => {
    const start = performance.now();
    const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'pipe'] });
    let peakMb: number | null = null;
    const watch = setInterval(() => {
      peakMb = Math.max(peakMb ?? 0, peakOf(child.pid) ?? 0) || null;
    }, 20);
    const out = { stdout: '', stderr: '' };
    child.stdout.on('data', (text) => (out.stdout += text));
    child.stderr.on('data', (text) => (out.stderr += text));
    child.on('error', (error) => {
      clearInterval(watch);
      reject(error);
    });
    child.on('close', (status) => {
      clearInterval(watch);
      resolve({ status, wallMs: performance.now() - start, peakMb, ...out });
    });
  });
}

function peakOf(pid: number | undefined): number | null {
  try {
    const line = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'));
    return line ? Number(line[1]) / 1024 : null;
  } catch {
    return null;
  }
}

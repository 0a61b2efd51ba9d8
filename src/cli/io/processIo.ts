import type { CliIo } from './cliIo.js';

/**
 * The process's own streams. A reader that stops early (`| head`) ends the output quietly
 * instead of with a stack trace.
 */
export function processIo(): CliIo {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
    });
  }
  return {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    watched: process.stderr.isTTY === true,
  };
}

import { runCli } from '../../src/cli/runCli.js';

/** Runs a command line in this process and keeps what it said. */
export async function runCliHere(...args: string[]): Promise<{
  status: number;
  out: string;
  err: string;
  json: () => Record<string, unknown>;
}> {
  let out = '';
  let err = '';
  const status = await runCli(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    watched: false,
  });
  return { status, out, err, json: () => JSON.parse(out) as Record<string, unknown> };
}

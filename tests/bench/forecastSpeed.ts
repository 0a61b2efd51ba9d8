import { join } from 'node:path';
import { speedChild } from './speedChild.js';
import { speedPicture } from './speedPicture.js';

/** Processor seconds of both verbs on one 12 MP photo, the least of some runs. */
export interface SpeedResult {
  readonly scoreS: number;
  readonly forecastS: number;
}

/** `forecast` with curve, a rip with slides and a whole search, against `score` on the same photo. */
export async function forecastSpeed(root: string, runs: number): Promise<SpeedResult> {
  const { photo, widthMm, heightMm } = await speedPicture(
    join(root, 'out', 'bench'),
    640,
    480,
    6.25,
  );
  const bin = join(root, 'dist', 'cli', 'bin.js');
  const size = ['--size', `${widthMm}mmx${heightMm}mm`, '--json'];
  const timed = async (...args: string[]) => {
    let least = Number.POSITIVE_INFINITY;
    for (let run = 0; run < runs; run++) {
      const child = await speedChild('/usr/bin/env', [
        'bash',
        '-c',
        'TIMEFORMAT="%U %S"; time "$@" >/dev/null',
        '-',
        process.execPath,
        bin,
        ...args,
      ]);
      const [user, system] = child.stderr.trim().split('\n').at(-1)!.split(' ').map(Number);
      if (child.status !== 0) throw new Error(child.stderr);
      least = Math.min(least, user! + system!);
    }
    return least;
  };
  return {
    scoreS: await timed('score', photo, ...size),
    forecastS: await timed('forecast', photo, ...size, '--rip', '150mm', '--front', '360mmx110mm'),
  };
}

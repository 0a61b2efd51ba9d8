import { execFileSync, execSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Puts a file of a Debian package at `target`, by the ordinary package client; never installed,
 * never committed. Leaves a file that is there alone.
 *
 * @returns whether the file is there; false where there is no package client or no network.
 */
export function fetchDebianFile(debianPackage: string, path: string, target: string): boolean {
  if (existsSync(target)) return true;
  const folder = mkdtempSync(join(tmpdir(), 'bench-photo-'));
  const options = { cwd: folder, stdio: 'pipe' } as const;
  try {
    execFileSync('apt-get', ['download', debianPackage], options);
    const archive = readdirSync(folder).find((name) => name.endsWith('.deb'));
    execSync(`dpkg-deb --fsys-tarfile '${archive}' | tar x '.${path}'`, options);
    mkdirSync(join(target, '..'), { recursive: true });
    copyFileSync(join(folder, path), target);
    return true;
  } catch {
    return false;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

import { existsSync } from 'node:fs';

/** The Chromium to test with: $CHROMIUM, else Debian's; null when there is none. */
export function findBrowser(): string | null {
  const asked = process.env.CHROMIUM;
  if (asked) return asked;
  return (
    ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync) ??
    null
  );
}

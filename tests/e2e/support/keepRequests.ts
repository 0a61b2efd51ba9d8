import type { BrowserContext } from 'playwright-core';

/** Records the address of every request that any page or worker of the context makes. */
export function keepRequests(context: BrowserContext): string[] {
  const addresses: string[] = [];
  context.on('request', (request) => addresses.push(request.url()));
  return addresses;
}

import { registerSW } from 'virtual:pwa-register';
import { tell } from './state/tell.js';

/** Lets the page work without a network after the first visit. */
export function registerOffline(): void {
  if (!('serviceWorker' in navigator)) return;
  registerSW({
    onOfflineReady: () => tell('The workbench is on this device now and works without a network.'),
    onNeedRefresh: () => tell('A newer workbench is ready; it starts when you next open the page.'),
  });
}

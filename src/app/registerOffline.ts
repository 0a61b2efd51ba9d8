import { registerSW } from 'virtual:pwa-register';
import { tell } from './state/tell.js';
import { useWorkbench } from './state/workbench.js';

/** Lets the page work without a network after the first visit. */
export function registerOffline(): void {
  if (!('serviceWorker' in navigator)) return;
  if (navigator.serviceWorker.controller) useWorkbench.setState({ worksOffline: true });
  registerSW({
    onOfflineReady: () => useWorkbench.setState({ worksOffline: true }),
    onNeedRefresh: () => tell('A newer workbench is ready; it starts when you next open the page.'),
  });
}

import type { Ask } from './asks';
import type { SharedFile } from './shared';

/** Longest wait for the worker, in milliseconds. */
const WAIT_MS = 3000;

/** Asks the service worker for the file that another app shared; null where there is none, or no worker. */
export function askShared(): Promise<SharedFile | null> {
  const worker = navigator.serviceWorker?.controller ?? null;
  if (worker === null) return Promise.resolve(null);
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    const late = window.setTimeout(() => resolve(null), WAIT_MS);
    port1.onmessage = ({ data }) => {
      window.clearTimeout(late);
      port1.close();
      resolve(data?.file instanceof File ? data : null);
    };
    worker.postMessage('what was shared' satisfies Ask, [port2]);
  });
}

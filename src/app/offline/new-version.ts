import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Ask } from './asks';
import { readNews, type VersionNews } from './news';

/** Time between two looks for a new version while the page stays open, in milliseconds. */
const BETWEEN_LOOKS = 60 * 60 * 1000;

/** Time between two askings of the new version to take over, in milliseconds, until it has: a busy browser may lose one. */
const BETWEEN_ASKS = 2000;

/** Whether a new version is ready to be used. */
interface NewVersionState {
  readonly ready: boolean;
}

export interface NewVersion
  extends Pick<StoreApi<NewVersionState>, 'getState' | 'getInitialState' | 'subscribe'> {
  /** What the new version and those before it brought; never comes from a worker that does not know the question. */
  readonly news: () => Promise<readonly VersionNews[]>;
  /** Loads the page again with the new version. */
  readonly use: () => void;
}

const ask = (worker: ServiceWorker | null, what: Ask): void => worker?.postMessage(what);

/** What the worker's own version, which may not be the page's, says about itself. */
const askNews = (worker: ServiceWorker | null): Promise<readonly VersionNews[]> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => {
      port1.close();
      resolve(readNews(String(data)));
    };
    worker?.postMessage('what is new' satisfies Ask, [port2]);
  });

/** The browser's service workers, or null where there are none: an old browser, a private window, a plain file. */
function workers(): ServiceWorkerContainer | null {
  try {
    return navigator.serviceWorker ?? null;
  } catch {
    return null;
  }
}

/**
 * Starts the service worker and follows its versions. A new version never takes over by itself while a page is open.
 * Null where the browser has no service worker or refuses it: then everything works while there is a network.
 */
export async function followVersions(): Promise<NewVersion | null> {
  const container = workers();
  const registration = await container?.register('./sw.js', { updateViaCache: 'none' }).catch(() => null);
  if (container === null || !registration) return null;

  const store = createStore<NewVersionState>(() => ({ ready: false }));
  let controlled = container.controller !== null;
  let asked = false;
  const look = () => {
    if (registration.waiting !== null && controlled) store.setState({ ready: true });
  };
  look();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', look);
  });
  container.addEventListener('controllerchange', () => {
    if (asked) window.location.reload();
    // Another window has let the new version take over; this one goes on with its own until it is told.
    else if (controlled) store.setState({ ready: true });
    controlled = true;
  });
  ask(container.controller, 'tidy up');

  let lastLook = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden' || performance.now() - lastLook < BETWEEN_LOOKS) return;
    lastLook = performance.now();
    // Without a network there is nothing new.
    registration.update().catch(() => {});
  });

  const takeOver = (): void => {
    if (registration.waiting === null) {
      window.location.reload();
    } else {
      ask(registration.waiting, 'take over');
      setTimeout(takeOver, BETWEEN_ASKS);
    }
  };

  return {
    getState: store.getState,
    getInitialState: store.getInitialState,
    subscribe: store.subscribe,
    news: () => askNews(registration.waiting ?? registration.active),
    use: () => {
      if (asked) return;
      asked = true;
      takeOver();
    },
  };
}

/**
 * The service worker: after the first visit the app opens without a network. A new version is fetched beside the one
 * in use and waits until no page of the old one is open, or until the page says that it may take over.
 */
import { isAsk } from './asks';
import { NEWS_FILE } from './news';
import { receiveShare, SHARE_ADDRESS, takeShared } from './shared';
import { answer, type Build, fileFor, install, keptText, tidy, type World } from './shelf';

declare const self: ServiceWorkerGlobalScope & { readonly groundBassBuild: Build };

const build = self.groundBassBuild;
const { scope } = self.registration;
const world: World = { caches: self.caches, fetch: (request) => self.fetch(request), scope };

/** Earlier versions are deleted while no further page could still be using one. */
async function tidyUp(): Promise<void> {
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (windows.filter(({ url }) => url.startsWith(scope)).length <= 1) await tidy(build, world);
}

self.addEventListener('install', (event) => event.waitUntil(install(build, world)));

self.addEventListener('activate', (event) => event.waitUntil(tidyUp().then(() => self.clients.claim())));

self.addEventListener('message', (event) => {
  if (isAsk(event.data, 'take over')) event.waitUntil(self.skipWaiting());
  if (isAsk(event.data, 'tidy up')) event.waitUntil(tidyUp());
  if (isAsk(event.data, 'what was shared')) {
    const [reply] = event.ports;
    event.waitUntil(takeShared(world).then((file) => reply?.postMessage(file)));
  }
  if (isAsk(event.data, 'what is new')) {
    const [reply] = event.ports;
    event.waitUntil(keptText(NEWS_FILE, build, world).then((text) => reply?.postMessage(text)));
  }
});

self.addEventListener('fetch', (event) => {
  const { url, method, mode } = event.request;
  if (method === 'POST' && url === scope + SHARE_ADDRESS) {
    event.respondWith(
      event.request
        .formData()
        .then((form) => receiveShare(form, world))
        .then((address) => Response.redirect(address, 303)),
    );
    return;
  }
  const file = fileFor({ url, method, page: mode === 'navigate' }, build, scope);
  if (file !== null) event.respondWith(answer(file, build, event.request, world));
});

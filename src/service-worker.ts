/// <reference types="@sveltejs/kit" />
/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
// Keeps the whole page for use without a network: everything is fetched once at install and answered from there.

import { base, build, files, prerendered, version } from '$service-worker';

const worker = globalThis.self as unknown as ServiceWorkerGlobalScope;
const CACHE = `layerwright-${version}`;
const KEPT = [...build, ...files, ...prerendered, `${base}/`];

worker.addEventListener('install', (event) => {
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll([...new Set(KEPT)])));
});

worker.addEventListener('activate', (event) => {
  const forget = caches
    .keys()
    .then((names) =>
      Promise.all(
        names
          .filter((name) => name.startsWith('layerwright-') && name !== CACHE)
          .map((name) => caches.delete(name)),
      ),
    );
  event.waitUntil(forget);
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== worker.location.origin) return;
  event.respondWith(answer(request));
});

/** The kept copy first; in development, where nothing is kept, the network. */
async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  return (await cache.match(request, { ignoreSearch: true })) ?? fetch(request);
}

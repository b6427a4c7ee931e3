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

// the page says when: a new version takes over once everything on it is kept
worker.addEventListener('message', ({ data }) => {
  if (data === 'take over') void worker.skipWaiting();
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(forgetOlder());
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== worker.location.origin) return;
  event.respondWith(answer(request));
});

/** While other pages are open they may be of an older version, which still loads its own parts. */
async function forgetOlder(): Promise<void> {
  const open = await worker.clients.matchAll({ includeUncontrolled: true });
  if (open.length > 1) return;
  const older = (await caches.keys()).filter((name) => name.startsWith('layerwright-') && name !== CACHE);
  await Promise.all(older.map((name) => caches.delete(name)));
}

/** The kept copy first, that of an older version where only there is one; in development, where nothing is kept, the network. */
async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  const kept =
    (await cache.match(request, { ignoreSearch: true })) ??
    (isIndex(request) ? await cache.match(`${base}/`) : undefined) ??
    (await caches.match(request, { ignoreSearch: true }));
  return kept ?? fetch(request);
}

/** The page under its file's name. */
const isIndex = ({ url }: Request): boolean => new URL(url).pathname === `${base}/index.html`;

// Keeps the page for when its server is gone: what the network gives comes first, what was kept stands in for it.
const KEPT = 'garland-VERSION';
const FILES = ['./garland.html', './garland.webmanifest', './icon-192.png', './icon-512.png'];

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(KEPT)
      .then((kept) => kept.addAll(FILES))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name !== KEPT).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(fetch(request).catch(() => keptFor(request)));
});

/** A page that was served with a design on it is never kept: in its place comes the page itself, with what the browser stores. */
async function keptFor(request) {
  const hit = await caches.match(request.mode === 'navigate' ? './garland.html' : request);
  return hit ?? Response.error();
}

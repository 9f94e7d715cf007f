// The service worker of the hosted build: keeps one whole release and answers
// from it, so that everything works without a network after the first visit.
// POURWRIGHT_FILES is [[url, digest], …], put in by the build.

const prefix = "pourwright-files-";
const release = prefix + POURWRIGHT_FILES.map(([, digest]) => digest.slice(7, 13)).join("");

// Every file must have the digest of this release: when the host is being
// updated under our hands, keep nothing and try again at the next visit.
self.addEventListener("install", (event) => {
  event.waitUntil(
    caches.open(release).then((cache) =>
      cache.addAll(POURWRIGHT_FILES.map(([url, integrity]) => new Request(url, { cache: "no-cache", integrity }))),
    ),
  );
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((n) => n.startsWith(prefix) && n !== release).map((n) => caches.delete(n))))
      .then(() => self.clients.claim()),
  );
});

// A new release waits until every page of the old one is closed, or until a
// page asks for it and then reloads.
self.addEventListener("message", ({ data }) => {
  if (data === "take over") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") return;
  const url = new URL(event.request.url);
  const key = url.href === new URL("index.html", self.registration.scope).href ? self.registration.scope : event.request;
  event.respondWith(
    caches
      .open(release)
      .then((cache) => cache.match(key, { ignoreSearch: true }))
      .then((kept) => kept ?? fetch(event.request)),
  );
});

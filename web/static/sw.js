// Keeps one version of the reckoner whole. The two marked lines are written by the build.
"use strict";

const VERSION = "unversioned"; // written by the build
const FILES = {}; // written by the build: address -> SHA-256

const PREFIX = `rebuild-reckoner ${self.registration.scope} `;
const STORE = PREFIX + VERSION;

const sum = async (response) => {
  const digest = await crypto.subtle.digest("SHA-256", await response.arrayBuffer());
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");
};

// Every file is fetched past the browser's own store and must be exactly the one that was built, so a half-finished
// upload or a cut connection leaves the old version in place.
const fetchAll = async () => {
  const store = await caches.open(STORE);
  await Promise.all(
    Object.entries(FILES).map(async ([address, wanted]) => {
      const response = await fetch(new Request(address, { cache: "reload", credentials: "same-origin" }));
      if (!response.ok) throw new Error(`${address}: ${response.status}`);
      if ((await sum(response.clone())) !== wanted) throw new Error(`${address}: not the file that was built`);
      await store.put(address, response);
    }),
  );
};

const complete = async () => {
  const store = await caches.open(STORE);
  const found = await Promise.all(Object.keys(FILES).map((address) => store.match(address)));
  return found.length > 0 && found.every(Boolean);
};

const dropOthers = async () => {
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX) && name !== STORE) await caches.delete(name);
  }
};

// The page itself, and not some other page that lies deeper on the same host.
const isPage = (request) => {
  const address = request.url.replace(/[?#].*$/, "");
  return request.mode === "navigate" && [self.registration.scope, `${self.registration.scope}index.html`].includes(address);
};

const answer = async (request) => {
  const store = await caches.open(STORE);
  const kept = isPage(request) ? await store.match("./") : await store.match(request, { ignoreSearch: true });
  return kept ?? fetch(request);
};

self.addEventListener("install", (event) => event.waitUntil(fetchAll()));
self.addEventListener("activate", (event) => event.waitUntil(dropOthers()));

self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
  else if (event.data === "complete?") {
    event.waitUntil(complete().then((whole) => event.ports[0]?.postMessage(whole), () => event.ports[0]?.postMessage(false)));
  }
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(self.registration.scope)) event.respondWith(answer(request));
});

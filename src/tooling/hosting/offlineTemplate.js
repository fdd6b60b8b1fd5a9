/* global self, caches, fetch, Request */
// Keeps the local workbook for use without a network. What is named by its content comes from the store; everything else is asked for
// afresh, and comes from the store only where the network does not answer, so that a new version shows at the next visit.
const FILES = "FILES";
// One store a build and place: a host may serve several of these folders.
const STORES = `retort ${self.registration.scope} `;
const STORE = `${STORES}BUILD`;
const HASHED = new URL("hashed/", self.registration.scope).href;

self.addEventListener("install", (event) => {
  const afresh = FILES.map(
    (file) => new Request(new URL(file, self.registration.scope), { cache: file.startsWith("hashed/") ? "default" : "no-cache" }),
  );
  event.waitUntil(caches.open(STORE).then((store) => store.addAll(afresh)));
});

// Only when no page of an earlier build is open any more: such a page may still need one of that build's files.
self.addEventListener("activate", (event) => {
  const earlier = (names) => names.filter((name) => name.startsWith(STORES) && name !== STORE);
  event.waitUntil(caches.keys().then((names) => Promise.all(earlier(names).map((name) => caches.delete(name)))));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(self.registration.scope)) return;
  event.respondWith(request.url.startsWith(HASHED) ? stored(request).then((kept) => kept ?? fetch(request)) : current(request));
});

const stored = async (request) => {
  const address = new URL(request.url);
  if (address.pathname.endsWith("/")) address.pathname += "index.html";
  return (await caches.open(STORE)).match(address.href, { ignoreSearch: true });
};

/** From the network; from the store where there is no answer. */
async function current(request) {
  try {
    return await fetch(request);
  } catch (noAnswer) {
    const kept = await stored(request);
    if (kept === undefined) throw noAnswer;
    return kept;
  }
}

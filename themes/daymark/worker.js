// Keeps this guide on the phone. `GUIDE` stands before this text: the guide's fingerprint, and its files with their hashes.
// A guide is kept under its fingerprint: all of its text or nothing. A newer one is filled beside the old one, which stays
// as it is until the newer one is whole; so no page ever shows parts of two guides.
"use strict";

const ROOT = new URL("./", location.href);
const KEPT = `guide ${ROOT.pathname} `;
const NAME = KEPT + GUIDE.fingerprint;
const SAVED = new URL("saved-on-this-phone", ROOT);
const address = (path) => new URL(path, ROOT).href;

const TYPES = { html: "text/html; charset=utf-8", css: "text/css; charset=utf-8", js: "text/javascript; charset=utf-8", svg: "image/svg+xml", json: "application/json", webmanifest: "application/manifest+json", ics: "text/calendar; charset=utf-8", png: "image/png", jpg: "image/jpeg", jpeg: "image/jpeg", webp: "image/webp", pdf: "application/pdf" };

async function hash(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...digest.slice(0, 8)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** The bytes of a file that an earlier guide has kept under the same hash. */
async function known(older, path, wanted) {
  for (const cache of older) {
    const answer = await cache.match(address(path));
    if (answer?.headers.get("x-hash") === wanted) return answer.arrayBuffer();
  }
  return undefined;
}

/** The bytes of a file from the server; a file of another guide than this one is as bad as none. */
async function fetched(path, wanted) {
  const answer = await fetch(address(path), { cache: "no-cache" });
  if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
  const bytes = await answer.arrayBuffer();
  if ((await hash(bytes)) !== wanted) throw new Error(`${path} is of another guide`);
  return bytes;
}

async function keep(cache, older, path, wanted) {
  const kept = await cache.match(address(path));
  if (kept?.headers.get("x-hash") === wanted) return;
  const bytes = (await known(older, path, wanted)) ?? (await fetched(path, wanted));
  const type = TYPES[path.split(".").pop()] ?? "application/octet-stream";
  await cache.put(address(path), new Response(bytes, { headers: { "content-type": type, "x-hash": wanted } }));
}

/** Keeps all `files`, four at a time. */
async function keepAll(files) {
  const names = (await caches.keys()).filter((name) => name.startsWith(KEPT) && name !== NAME);
  const older = await Promise.all(names.map((name) => caches.open(name)));
  const cache = await caches.open(NAME);
  const left = Object.entries(files);
  const line = async () => {
    for (let next = left.shift(); next; next = left.shift()) await keep(cache, older, ...next);
  };
  await Promise.all([line(), line(), line(), line()]);
  return cache;
}

async function tell(message) {
  const pages = await self.clients.matchAll({ includeUncontrolled: true, type: "window" });
  pages.filter((page) => page.url.startsWith(ROOT.href)).forEach((page) => page.postMessage(message));
}

/** What failed, for the reader: the phone is full, or the way to the server broke. What was kept so far is used next time, unless room is short. */
async function failed(error) {
  const full = error?.name === "QuotaExceededError";
  if (full) await caches.delete(NAME);
  await tell({ saved: full ? "full" : "broken" });
  throw error;
}

async function install() {
  const cache = await keepAll(GUIDE.text);
  await cache.put(SAVED, Response.json({ on: new Date().toISOString() }));
}

/** Older guides go once this one is whole and in use; open pages then belong to it. */
async function activate() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(KEPT) && name !== NAME).map((name) => caches.delete(name)));
  await self.clients.claim();
  await tell(await state());
}

async function state() {
  const cache = await caches.open(NAME);
  const saved = await (await cache.match(SAVED))?.json();
  const there = await Promise.all(Object.keys(GUIDE.photos).map((path) => cache.match(address(path))));
  return { saved: saved ? "whole" : "no", on: saved?.on, fingerprint: GUIDE.fingerprint, photos: there.filter(Boolean).length, of: there.length };
}

async function photos() {
  await keepAll(GUIDE.photos);
  await tell(await state());
}

/** The file that an address means: `KEY/G1/` and `KEY/G1/index.html` are one page. */
function path(url) {
  const inner = decodeURIComponent(url.pathname.slice(ROOT.pathname.length));
  return inner === "" || inner.endsWith("/") ? `${inner}index.html` : inner;
}

async function answer(request) {
  const url = new URL(request.url);
  const cache = await caches.open(NAME);
  const kept = await cache.match(address(path(url)));
  if (kept) return kept;
  if (request.mode === "navigate" && `${path(url)}/index.html` in GUIDE.text) return Response.redirect(`${url.href}/`);
  return fetch(request);
}

/** When a newer guide is whole and waits, it takes over before the next page opens. */
async function page(request) {
  const { waiting } = self.registration;
  if (waiting && request.method === "GET") {
    waiting.postMessage("take over");
    const again = `<!doctype html><meta charset="utf-8"><meta http-equiv="refresh" content="0"><title>${GUIDE.fingerprint}</title><a href="">${GUIDE.fingerprint}</a>`;
    return new Response(again, { headers: { "content-type": TYPES.html } });
  }
  return answer(request);
}

self.addEventListener("install", (event) => event.waitUntil(install().catch(failed)));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("message", (event) => {
  if (event.data === "take over") event.waitUntil(self.skipWaiting());
  if (event.data === "state") event.waitUntil(state().then((said) => event.source?.postMessage(said)));
  if (event.data === "photos") event.waitUntil(photos().catch(failed).catch(() => undefined));
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(ROOT.href)) return;
  // Whatever goes wrong here, the server may still answer.
  const asked = request.mode === "navigate" ? page(request) : answer(request);
  event.respondWith(asked.catch(() => fetch(request)));
});

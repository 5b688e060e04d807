// Saves the whole guide on this phone while it is read, and says so. From a folder it stays silent: the guide is there already.
(() => {
  "use strict";

  const box = document.querySelector(".saved");
  if (!box || !/^https?:$/.test(location.protocol)) return;
  const [says, fingerprint] = [".saved-says", ".saved-fingerprint"].map((name) => box.querySelector(name));
  const [takeOver, forget] = ["take-over", "forget"].map((name) => box.querySelector(`[data-do=${name}]`));
  const workers = navigator.serviceWorker;
  let leaving = false;
  let asked = false;

  function say(words, whole) {
    says.textContent = words;
    box.hidden = false;
    box.classList.toggle("saved-whole", Boolean(whole));
  }

  function show({ saved, on, fingerprint: of, photos, of: all }) {
    if (saved === "full" || saved === "broken") {
      if (!workers.controller) say(box.dataset[saved]);
      return;
    }
    if (saved !== "whole") return say(box.dataset.busy);
    if (!takeOver.hidden) return;
    const day = new Intl.DateTimeFormat(box.dataset.locale, { dateStyle: "long" }).format(new Date(on));
    const pictures = all ? ` ${box.dataset.photos}: ${photos} ${box.dataset.of} ${all}.` : "";
    say(`${box.dataset.whole} ${day}.${pictures}`, true);
    fingerprint.textContent = of;
    forget.hidden = false;
    if (all > photos && !asked) {
      asked = true;
      workers.controller?.postMessage("photos");
    }
  }

  /** The next page brings the newer guide: this one need not be read again on the way. */
  function leave() {
    leaving = true;
    setTimeout(() => (leaving = false), 5000);
  }

  /** A newer guide that is whole waits for the next page, or for this button. */
  function newer(registration) {
    takeOver.hidden = !registration.waiting;
    if (!registration.waiting) return;
    say(box.dataset.newer, true);
    addEventListener("beforeunload", leave);
  }

  function watch(registration) {
    registration.addEventListener("updatefound", () => {
      const next = registration.installing;
      next?.addEventListener("statechange", () => newer(registration));
    });
    newer(registration);
  }

  async function take() {
    const registration = await workers.getRegistration();
    registration?.waiting?.postMessage("take over");
  }

  /** The way out for whoever mistrusts what is saved: everything of this guide goes from the phone, and comes anew. */
  async function start() {
    const registration = await workers.getRegistration();
    const path = registration ? new URL(registration.scope).pathname : "";
    await registration?.unregister();
    const names = await caches.keys();
    await Promise.all(names.filter((name) => path && name.startsWith(`guide ${path} `)).map((name) => caches.delete(name)));
    location.reload();
  }

  /** Browsers complain of a manifest in a folder, so only a server's pages have it. */
  function manifest() {
    const link = document.createElement("link");
    link.rel = "manifest";
    link.href = box.dataset.manifest;
    document.head.append(link);
  }

  async function register() {
    manifest();
    if (!workers || !window.caches) return say(box.dataset.refused);
    let had = Boolean(workers.controller);
    workers.addEventListener("message", (event) => show(event.data));
    workers.addEventListener("controllerchange", () => {
      workers.controller?.postMessage("state");
      // A page of the old guide must not read on in the new one; a page that is being left is left alone.
      if (had && !leaving) location.reload();
      had = true;
    });
    try {
      const registration = await workers.register(box.dataset.worker, { updateViaCache: "none" });
      watch(registration);
      if (!workers.controller) say(box.dataset.busy);
      workers.controller?.postMessage("state");
      document.addEventListener("visibilitychange", () => document.hidden || registration.update().catch(() => undefined));
    } catch (error) {
      // Away from the server the worker cannot be asked for, and what is saved goes on.
      if (workers.controller) workers.controller.postMessage("state");
      else say(box.dataset[error.name === "QuotaExceededError" ? "full" : "refused"]);
    }
  }

  takeOver.addEventListener("click", take);
  forget.addEventListener("click", start);
  if (document.readyState === "complete") register();
  else addEventListener("load", register);
})();

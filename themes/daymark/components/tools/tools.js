// Text size that is remembered, share, print, and the fingerprint in a message to the dealer. Without it the browser has all of these of its own.
(() => {
  "use strict";

  const NAME = "text size";
  const root = document.documentElement;
  const box = document.querySelector(".tools");

  function kept() {
    try {
      return localStorage.getItem(NAME);
    } catch {
      return null;
    }
  }

  function keep(size) {
    try {
      localStorage.setItem(NAME, size);
    } catch {
      // A phone that may keep nothing still shows this page as asked.
    }
  }

  function resize(size) {
    if (size === "large" || size === "largest") root.dataset.size = size;
    else delete root.dataset.size;
  }

  resize(kept());
  if (!box) return;
  const status = box.querySelector("[role=status]");
  const button = (name) => box.querySelector(`[data-do=${name}]`);
  const here = () => (/^https?:$/.test(location.protocol) ? location.href : box.dataset.address);

  function sizes() {
    const choices = box.querySelector(".tools-size");
    choices.hidden = false;
    const now = choices.querySelector(`[value="${root.dataset.size ?? "usual"}"]`);
    now.checked = true;
    choices.addEventListener("change", (event) => {
      resize(event.target.value);
      keep(event.target.value);
    });
  }

  async function share() {
    const what = { title: document.title, url: here() };
    try {
      if (navigator.share) await navigator.share(what);
      else {
        await navigator.clipboard.writeText(what.url);
        status.textContent = box.dataset.copied;
        status.className = "";
      }
    } catch {
      // Who turns back from sharing need not be told.
    }
  }

  /** The fingerprint comes from a file of its own, as it is made from all the others. */
  function sign() {
    const tell = box.querySelector(".tools-tell");
    if (!tell) return;
    const script = document.createElement("script");
    script.src = box.dataset.fingerprint;
    script.onload = () => {
      const line = `${box.dataset.says}: ${globalThis.guideFingerprint}\r\n`;
      tell.href += encodeURIComponent(line);
    };
    document.head.append(script);
  }

  sizes();
  button("print").hidden = false;
  button("print").addEventListener("click", () => window.print());
  button("share").hidden = !navigator.share && !navigator.clipboard;
  button("share").addEventListener("click", share);
  addEventListener("load", sign);
})();

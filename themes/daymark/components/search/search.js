// Search: finds while you type, in the guide's own words and its owners'. Without it the box is a form that leads to the page from A to Z.
(() => {
  "use strict";

  const form = document.querySelector(".search");
  if (!form) return;
  const { box, status, say } = { box: form.elements.find, status: form.querySelector("[role=status]"), say: form.dataset };
  const index = new URL(say.index, location.href);
  let loading;
  let wait;

  /** What was told of each result is text, never markup. */
  function make(tag, className, text) {
    const element = document.createElement(tag);
    if (className) element.className = className;
    if (text) element.textContent = text;
    return element;
  }

  function script(src) {
    return new Promise((done, failed) => {
      const element = make("script");
      element.src = src;
      element.onload = done;
      element.onerror = failed;
      document.head.append(element);
    });
  }

  /** The scripts of search come when the box is first used. */
  function ready() {
    loading ??= Promise.all([...say.scripts.split(" "), say.index].map(script))
      .then(() => globalThis.makeFinder(globalThis.guideSearch, globalThis.MiniSearch, globalThis.guideWording))
      .catch(() => {
        loading = undefined;
        return undefined;
      });
    return loading;
  }

  function row(found) {
    const to = new URL(found.page ? `${found.page}/index.html` : "index.html", index);
    to.hash = found.anchor;
    const link = make("a", "row");
    link.href = to;
    const text = make("span", "row-text");
    const name = make("span", "", found.title);
    if (found.part && found.part !== found.title) name.append(" ", make("span", "row-part", found.part));
    text.append(name);
    for (const code of found.places.slice(0, 3)) {
      const place = make("span", "code", code);
      place.prepend(make("span", "hidden", `${say.place} `));
      text.append(" ", place);
    }
    if (found.signal) text.append(" ", make("span", `note-tag note-tag-${found.signal}`, globalThis.guideSearch.signals[found.signal]));
    link.append(text);
    const item = make("li");
    item.append(link);
    return item;
  }

  function close() {
    form.querySelector(".search-found")?.remove();
    status.textContent = "";
  }

  function show(results, failed) {
    close();
    const around = make("div", "search-found");
    const panel = make("div", "search-panel");
    const found = results.length === 1 ? say.one : `${results.length} ${say.many}`;
    const said = failed ? say.fails : results.length ? found : say.none;
    if (results.length) {
      const list = make("ul", "list");
      list.setAttribute("aria-label", say.results);
      list.append(...results.map(row));
      panel.append(list);
    } else {
      panel.append(make("p", "", said));
    }
    around.append(panel);
    form.append(around);
    status.textContent = said;
  }

  async function search() {
    const asked = box.value.trim();
    if (asked.length < 2) return close();
    const finder = await ready();
    // Who typed on meanwhile is answered by what came last.
    if (asked === box.value.trim()) show(finder ? finder.find(asked) : [], !finder);
  }

  function move(event) {
    const links = [...form.querySelectorAll(".search-found a")];
    const at = links.indexOf(document.activeElement);
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (event.key === "Escape") {
      close();
      box.focus();
    } else if (step && links.length && (at >= 0 || step > 0)) {
      event.preventDefault();
      (links[at + step] ?? (step < 0 ? box : links[at])).focus();
    }
  }

  box.addEventListener("focus", ready);
  box.addEventListener("input", () => {
    clearTimeout(wait);
    wait = setTimeout(search, 40);
  });
  form.addEventListener("keydown", move);
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    clearTimeout(wait);
    await search();
    const first = form.querySelector(".search-found a");
    if (first) first.focus();
    else form.submit();
  });
  form.addEventListener("click", (event) => event.target.closest(".search-found a") && close());
  document.addEventListener("pointerdown", (event) => form.contains(event.target) || close());
  form.addEventListener("focusout", (event) => event.relatedTarget && !form.contains(event.relatedTarget) && close());

  // The page from A to Z is asked by the form's own address.
  const asked = new URLSearchParams(location.search).get("find");
  if (asked) {
    box.value = asked.slice(0, 80);
    search();
  }
})();

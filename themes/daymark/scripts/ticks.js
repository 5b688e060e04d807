// A routine's ticks: kept on this phone for each page, counted, and cleared by a button. Without it the boxes tick until the page is left.
// A plain script in a scope of its own: browsers load no modules from a folder.
(() => {
  "use strict";

  const list = document.querySelector(".steps");
  const boxes = list ? [...list.querySelectorAll(".step-tick")] : [];
  const name = `ticks ${location.pathname}`;

  /** The steps that are ticked; none where the phone keeps nothing. */
  function kept() {
    try {
      return JSON.parse(localStorage.getItem(name)) ?? [];
    } catch {
      return [];
    }
  }

  function keep() {
    try {
      localStorage.setItem(name, JSON.stringify(boxes.filter((box) => box.checked).map((box) => box.value)));
    } catch {
      // A phone that may keep nothing still ticks.
    }
  }

  function bar() {
    const state = document.createElement("div");
    state.className = "steps-state screen";
    const count = document.createElement("p");
    count.className = "steps-count lettering";
    count.setAttribute("role", "status");
    const reset = document.createElement("button");
    reset.type = "button";
    reset.className = "button quiet lettering";
    reset.textContent = list.dataset.reset;
    state.append(count, reset);
    list.after(state);
    return { count, reset };
  }

  function start() {
    const { count, reset } = bar();
    const show = () => {
      const done = boxes.filter((box) => box.checked).length;
      count.textContent = `${list.dataset.ticked}: ${done} ${list.dataset.of} ${boxes.length}`;
      reset.disabled = done === 0;
    };
    const ticked = kept();
    boxes.forEach((box) => (box.checked = ticked.includes(box.value)));
    show();
    list.addEventListener("change", () => {
      keep();
      show();
    });
    reset.addEventListener("click", () => {
      boxes.forEach((box) => (box.checked = false));
      keep();
      show();
      boxes[0].focus();
    });
  }

  if (boxes.length > 0) {
    start();
  }
})();

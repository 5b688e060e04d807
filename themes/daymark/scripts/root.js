// The root page: takes a typed key, with or without a place's code, to its guide. Without it the page says what to type where.
// A plain script in a scope of its own: browsers load no modules from a folder.
(() => {
  "use strict";

  const form = document.querySelector(".door-form");

  /** `m7qk-3wzd/g1` becomes `./M7QK3WZD/G1/index.html`; what is not a whole key becomes nothing. */
  function address(typed) {
    const whole = typed.toUpperCase().replace(/[\s-]/g, "");
    const found = /^(?:.*\/)?([2-9A-HJKMNP-TV-Z]{8})(?:\/([A-Z]{1,2}[0-9]{1,2}))?\/?$/.exec(whole);
    return found && `./${found[1]}/${found[2] ? `${found[2]}/` : ""}index.html`;
  }

  function open(event) {
    event.preventDefault();
    const key = form.elements.key;
    const wrong = form.querySelector(".door-wrong");
    const to = address(key.value);
    wrong.textContent = to ? "" : wrong.dataset.wrong;
    key.setAttribute("aria-invalid", String(!to));
    if (to) {
      location.assign(to);
    } else {
      key.focus();
    }
  }

  if (form) {
    form.hidden = false;
    form.addEventListener("submit", open);
  }
})();


"use strict";
// Ticks are kept in the browser, drawings can be made larger than the screen, and what is wider than the
// screen can be moved by keys. Without this script the page says all the same.
// The page is XML as well: no less-than sign and no ampersand stands in here.
(() => {
  const key = document.documentElement.dataset.ticks;
  const boxes = Array.from(document.querySelectorAll("input[data-tick]"));
  const foot = document.querySelector("footer");

  // The names of ticks that are kept; null where the browser keeps nothing.
  const kept = () => {
    try {
      const names = JSON.parse(localStorage.getItem(key));
      return new Set(Array.isArray(names) ? names : []);
    } catch {
      return null;
    }
  };
  const keep = () => {
    const names = boxes.filter((box) => box.checked).map((box) => box.dataset.tick);
    try {
      localStorage.setItem(key, JSON.stringify(names));
    } catch {
      foot.hidden = true;
    }
  };
  // What is done is marked in the contents too.
  const mark = () => {
    for (const box of boxes.filter((box) => box.dataset.place)) {
      for (const link of document.querySelectorAll("nav a")) {
        if (link.hash === "#" + box.dataset.place) {
          link.classList.toggle("is-done", box.checked);
        }
      }
    }
  };
  const show = () => {
    const names = kept();
    if (names) {
      for (const box of boxes) {
        box.checked = names.has(box.dataset.tick);
      }
    }
    mark();
  };
  const changed = () => {
    mark();
    keep();
  };

  foot.hidden = boxes.length === 0;
  show();
  for (const box of boxes) {
    box.addEventListener("change", changed);
  }
  // Another window of the same plan.
  addEventListener("storage", (event) => {
    if (event.key === key) {
      show();
    }
  });
  // Some browsers tick boxes anew when they come back to a page.
  addEventListener("pageshow", show);
  const clear = foot.querySelector("button");
  clear.addEventListener("click", () => {
    if (confirm(clear.dataset.ask)) {
      for (const box of boxes) {
        box.checked = false;
      }
      changed();
    }
  });

  for (const button of document.querySelectorAll("button.larger")) {
    const sheet = button.previousElementSibling;
    button.addEventListener("click", () => {
      const large = sheet.classList.toggle("is-large");
      button.setAttribute("aria-pressed", String(large));
    });
  }

  // What is wider than its place is reached by keys, to be moved by them.
  const fit = (entries) => {
    for (const { target } of entries) {
      const table = target.querySelector("table");
      if (target.scrollWidth > target.clientWidth + 1) {
        target.tabIndex = 0;
        target.setAttribute("role", "group");
        if (table) {
          target.setAttribute("aria-labelledby", table.getAttribute("aria-labelledby"));
        } else {
          const drawing = target.querySelector("svg");
          target.setAttribute("aria-label", drawing.getAttribute("aria-label"));
        }
      } else {
        target.removeAttribute("tabindex");
        target.removeAttribute("role");
        target.removeAttribute("aria-label");
        target.removeAttribute("aria-labelledby");
      }
      const button = target.nextElementSibling;
      if (button) {
        if (button.classList.contains("larger")) {
          const drawing = target.querySelector("svg");
          const own = drawing.width.baseVal.value;
          const is_whole = drawing.getBoundingClientRect().width > own - 1;
          button.hidden = target.classList.contains("is-large") ? false : is_whole;
        }
      }
    }
  };
  const watch = new ResizeObserver(fit);
  for (const part of document.querySelectorAll(".scroll, .sheet")) {
    watch.observe(part);
  }
})();

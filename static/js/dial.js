/* A control that is turned: a slider for the number, and what it does shown at once.

   The page has every position of the control in a list, all hidden but one. */
(() => {
  "use strict";
  const PAGE = 5;

  const listsOf = (dial) => {
    const scope = dial.closest(".practice") ?? document;
    return [...scope.querySelectorAll(`[data-positions-of="${dial.dataset.positions}"]`)];
  };

  /* A list may have but some of the positions: then the nearest is shown. */
  const show = (list, at) => {
    const places = [...list.children];
    const off = (place) => Math.abs(place.value - at);
    const nearest = places.reduce((best, place) => (off(place) < off(best) ? place : best));
    for (const place of places) place.hidden = place !== nearest;
    return nearest.querySelector(".position-told");
  };

  const follow = (dial) => {
    const [told] = listsOf(dial).map((list) => show(list, Number(dial.value)));
    if (!told) return;
    const words = told.textContent.replace(/\s+/g, " ").trim().replace(/^Position \d+: /, "");
    dial.setAttribute("aria-valuetext", words);
    dial.closest(".dial").querySelector("output").textContent = words.split(".")[0];
  };

  const begin = (root) => {
    for (const dial of root.querySelectorAll("input[type=number][data-positions]")) {
      dial.type = "range";
      dial.closest(".dial").classList.add("turns");
      for (const list of listsOf(dial)) list.classList.add("turns");
      follow(dial);
    }
  };

  const turnBy = (dial, steps) => {
    dial.value = Number(dial.value) + steps;
    dial.dispatchEvent(new Event("input", { bubbles: true }));
  };

  document.addEventListener("input", (event) => {
    if (event.target.matches("[data-positions]")) follow(event.target);
  });
  document.addEventListener("keydown", (event) => {
    const steps = { PageUp: PAGE, PageDown: -PAGE }[event.key];
    if (!steps || !event.target.matches("[data-positions]")) return;
    event.preventDefault();
    turnBy(event.target, steps);
  });
  document.addEventListener("htmx:load", (event) => begin(event.target));
  document.addEventListener("DOMContentLoaded", () => begin(document));
})();

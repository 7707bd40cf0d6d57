/* A control that is turned: a slider for the number, and what it does shown at once.

   The page has every position of the control in a list, all hidden but one. */
(() => {
  "use strict";
  const PAGE = 5;

  const shownBy = (dial) => {
    const scope = dial.closest(".practice") ?? document;
    return scope.querySelector(`[data-positions-of="${dial.dataset.positions}"]`);
  };

  const follow = (dial) => {
    const list = shownBy(dial);
    if (!list) return;
    for (const place of list.children) place.hidden = place.value !== Number(dial.value);
    const told = list.querySelector("li:not([hidden]) .position-told");
    if (!told) return;
    const words = told.textContent.replace(/\s+/g, " ").trim().replace(/^Position \d+: /, "");
    dial.setAttribute("aria-valuetext", words);
    dial.closest(".dial").querySelector("output").textContent = words.split(".")[0];
  };

  const begin = (root) => {
    for (const dial of root.querySelectorAll("input[type=number][data-positions]")) {
      dial.type = "range";
      dial.closest(".dial").classList.add("turns");
      shownBy(dial)?.classList.add("turns");
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

// The board by arrow keys: one stop for the Tab key, and from there from link to link, across and
// down. Without this file every link of it is a stop of its own.
(() => {
  "use strict";
  const board = document.querySelector(".board");
  if (!board) return;

  const rows = [...board.rows].map((row) => [...row.cells].map((cell) => cell.querySelector("a")));
  const links = rows.flat().filter(Boolean);
  let here = rows[1][0];

  const isShown = (link) => link?.checkVisibility({ visibilityProperty: true });
  const first = (list) => list.find(isShown);
  const place = () => {
    const row = rows.findIndex((each) => each.includes(here));
    return [row, rows[row].indexOf(here)];
  };

  const goals = {
    ArrowRight: (row, column) => first(rows[row].slice(column + 1)),
    ArrowLeft: (row, column) => first(rows[row].slice(0, column).reverse()),
    ArrowDown: (row, column) => first(rows.slice(row + 1).map((each) => each[column])),
    ArrowUp: (row, column) => first(rows.slice(0, row).reverse().map((each) => each[column])),
    Home: (row) => first(rows[row]),
    End: (row) => first([...rows[row]].reverse()),
  };

  const stopAt = (link) => {
    here.tabIndex = -1;
    here = link;
    here.tabIndex = 0;
  };

  board.setAttribute("role", "grid");
  for (const cell of board.querySelectorAll("[role=cell]")) cell.setAttribute("role", "gridcell");
  for (const link of links) link.tabIndex = -1;
  stopAt(here);

  board.addEventListener("focusin", (event) => {
    if (links.includes(event.target)) stopAt(event.target);
  });
  board.addEventListener("keydown", (event) => {
    const goal = goals[event.key];
    if (!goal || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault(); // the page would scroll
    goal(...place())?.focus();
  });
})();

// A form that comes back refused begins where it has to be put right. Not before the page has
// loaded: going to a fragment of the address would take the focus away again.
addEventListener("load", () => {
  document.querySelector("main [aria-invalid=true]")?.focus();
});

// A form that comes back refused begins where it has to be put right.
document.addEventListener("DOMContentLoaded", () => {
  document.querySelector("main [aria-invalid=true]")?.focus();
});

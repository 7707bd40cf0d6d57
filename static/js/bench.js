// At the practice bench: what was typed is kept while a panel around it changes, and what did not
// reach the site is told.

const UNREACHED = "That did not reach the site, and nothing was done. Try it again.";
const UNANSWERED = "The site did not answer. Load this page again to see how the bench stands.";

function tell(sentence) {
  const notice = document.createElement("p");
  notice.className = "notice";
  notice.textContent = sentence;
  document.querySelector("#bench-refused").replaceChildren(notice);
}

let sent = null;

document.addEventListener("htmx:beforeRequest", (event) => {
  sent = event.detail.elt;
});

document.addEventListener("htmx:oobBeforeSwap", (event) => {
  const { target, fragment } = event.detail;
  for (const field of target.querySelectorAll("input[id]:not([type=hidden])")) {
    if (sent?.contains(field) || field.value === field.defaultValue) continue;
    const next = fragment.querySelector(`#${CSS.escape(field.id)}`);
    if (next) next.value = field.value;
  }
});

document.addEventListener("htmx:sendError", () => tell(UNREACHED));
document.addEventListener("htmx:timeout", () => tell(UNANSWERED));

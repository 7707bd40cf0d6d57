// Tells an element of the class "dwell" when it has been in view for three seconds: the event
// "dwelt". What is only scrolled past has not been read.

const LONG_ENOUGH = 3000;
const waiting = new Map();

const dwelling = new IntersectionObserver((entries) => {
  for (const { target, isIntersecting } of entries) {
    clearTimeout(waiting.get(target));
    if (isIntersecting) waiting.set(target, setTimeout(tell, LONG_ENOUGH, target));
  }
});

function tell(element) {
  dwelling.unobserve(element);
  element.dispatchEvent(new CustomEvent("dwelt"));
}

document.querySelectorAll(".dwell").forEach((element) => dwelling.observe(element));

// Pictures one after another: without this file a row of them, with it one that is played or
// stepped through. Nothing moves before somebody asks for it.

const still = matchMedia("(prefers-reduced-motion: reduce)");

function moving(motion) {
  const window = motion.querySelector(".motion-window");
  const [play, back, on] = motion.querySelectorAll("button");
  const place = motion.querySelector("output");
  const { count, rate, width } = motion.dataset;
  const times = motion.dataset.times?.split(" ");
  let at = 0;
  let timer = null;

  const show = (number) => {
    at = Math.min(Math.max(number, 0), count - 1);
    window.style.setProperty("--left", `${-at * width}px`);
    place.value = `Picture ${at + 1} of ${count}${times ? `, ${times[at]}` : ""}`;
  };
  const stop = () => {
    clearInterval(timer);
    timer = null;
    play.textContent = "Play";
  };
  const start = () => {
    if (at >= count - 1) show(0);
    play.textContent = "Stop";
    timer = setInterval(() => {
      if (!motion.isConnected || at >= count - 1) stop();
      else show(at + 1);
    }, 1000 / rate);
  };
  const step = (by) => () => {
    stop();
    show(at + by);
  };

  play.addEventListener("click", () => (timer ? stop() : start()));
  back.addEventListener("click", step(-1));
  on.addEventListener("click", step(1));
  play.hidden = still.matches;
  motion.classList.add("motion-stepped");
  window.removeAttribute("tabindex");
  show(0);
}

function prepare(root) {
  root.querySelectorAll(".motion:not(.motion-stepped)").forEach(moving);
}

prepare(document);
document.addEventListener("htmx:load", (event) => prepare(event.target));

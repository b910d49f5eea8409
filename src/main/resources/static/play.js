// Plays a simulation moment by moment; without this script the slider and its button do.
(() => {
  "use strict";
  const PACE_MS = 400;
  let clock = 0;

  const button = () => document.getElementById("play");
  const slider = () => document.getElementById("at");

  const say = (plays) => {
    const at = button();
    if (!at) return;
    at.hidden = false;
    at.querySelector(".to-play").hidden = plays;
    at.querySelector(".to-pause").hidden = !plays;
  };

  const go = (value) => {
    slider().value = String(value);
    slider().dispatchEvent(new Event("input", { bubbles: true }));
  };

  const stop = () => {
    clearInterval(clock);
    clock = 0;
    say(false);
  };

  const step = () => {
    const at = slider();
    if (!at || Number(at.value) >= Number(at.max)) stop();
    else go(Number(at.value) + 1);
  };

  document.addEventListener("click", (event) => {
    if (!event.target.closest || !event.target.closest("#play")) return;
    if (clock) {
      stop();
      return;
    }
    if (Number(slider().value) >= Number(slider().max)) go(0);
    say(true);
    clock = setInterval(step, PACE_MS);
  });
  // the part of the page with the slider comes when the run is done
  document.addEventListener("htmx:afterSettle", () => {
    if (!clock) say(false);
  });
  say(false);
})();

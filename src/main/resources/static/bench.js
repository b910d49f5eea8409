// The page's own script: timers that ring, and keys. All else works without it.
"use strict";
(() => {
  const $ = (selector, root) => (root || document).querySelector(selector);
  const strip = $("#bells");
  const lost = $("#clock-lost");
  const words = $("#words");
  const say = (word) => (words && words.getAttribute("data-say-" + word)) || word;
  const title = document.title;
  let skew = 0; // server clock minus this device's clock, milliseconds
  let heard = Date.now();
  let audio = null;
  let rings = false;

  // ---- time left -------------------------------------------------------------------------
  const two = (n) => String(n).padStart(2, "0");
  const clock = (ms) => {
    const late = ms <= 0;
    const s = late ? Math.floor(-ms / 1000) : Math.ceil(ms / 1000);
    const h = Math.floor(s / 3600);
    const m = Math.floor((s % 3600) / 60);
    return (late ? "+" : "") + (h ? h + ":" + two(m) : m) + ":" + two(s % 60);
  };

  const tick = () => {
    if (!strip) return;
    const now = Date.now() + skew;
    let loudest = 0;
    for (const bell of strip.querySelectorAll(".bell")) {
      const left = Number(bell.dataset.deadline) - now;
      const figure = $(".bell-left", bell);
      const text = clock(left);
      if (figure && figure.textContent !== text) figure.textContent = text;
      const due = left <= 0;
      if (due && !bell.classList.contains("bell-rings")) {
        bell.classList.add("bell-rings");
        refresh();
      }
      if (due) loudest = Math.max(loudest, -left + 1);
    }
    rings = loudest > 0;
    document.title = rings && Math.floor(now / 1000) % 2 ? "\u25cf " + say("rings") + " \u25cf " + title : title;
    if (lost) lost.hidden = Date.now() - heard < 15000;
    if (rings) ring(loudest, now);
  };

  // ---- sound -----------------------------------------------------------------------------
  const unlock = () => {
    const Sound = window.AudioContext || window.webkitAudioContext;
    if (!Sound) return;
    if (!audio) audio = new Sound();
    if (audio.state === "suspended") audio.resume();
  };
  for (const kind of ["pointerdown", "keydown"]) document.addEventListener(kind, unlock, { passive: true });

  let lastRing = 0;
  const ring = (unansweredMs, now) => {
    const every = unansweredMs > 60000 ? 2000 : 4000;
    if (now - lastRing < every) return;
    lastRing = now;
    if (navigator.vibrate && audio) navigator.vibrate([300, 150, 300]);
    if (!audio || audio.state !== "running") return;
    const loud = Math.min(0.9, 0.15 + unansweredMs / 120000);
    [0, 0.35].forEach((at, i) => {
      const tone = audio.createOscillator();
      const gain = audio.createGain();
      const start = audio.currentTime + at;
      tone.type = "triangle";
      tone.frequency.value = i ? 660 : 880;
      gain.gain.setValueAtTime(0.0001, start);
      gain.gain.exponentialRampToValueAtTime(loud, start + 0.02);
      gain.gain.exponentialRampToValueAtTime(0.0001, start + 0.32);
      tone.connect(gain).connect(audio.destination);
      tone.start(start);
      tone.stop(start + 0.34);
    });
  };

  // ---- what the studio says --------------------------------------------------------------
  let asking = false;
  let askAgain = false; // something changed while an answer was on its way
  const refresh = async () => {
    if (!strip) return;
    if (asking) {
      askAgain = true;
      return;
    }
    asking = true;
    try {
      const answer = await fetch(strip.dataset.poll + "?back=" + encodeURIComponent(location.pathname), { headers: { "X-Part": "bells" } });
      if (answer.ok && !answer.redirected) {
        heard = Date.now();
        const at = Number(answer.headers.get("X-Studio-Time"));
        if (at) skew = at - Date.now();
        const html = await answer.text();
        const list = $("#bell-list");
        const busy = list && list.contains(document.activeElement);
        const fresh = new DOMParser().parseFromString(html, "text/html").querySelector("#bell-list");
        if (list && fresh && !busy) list.replaceWith(fresh);
      }
    } catch (e) {
      // no connection: 'clock lost' says so after a while
    } finally {
      asking = false;
      if (askAgain) {
        askAgain = false;
        refresh();
      }
    }
  };

  let stream = null;
  const listen = () => {
    if (!strip || !window.EventSource || stream) return;
    stream = new EventSource(strip.dataset.stream);
    stream.addEventListener("bells", (event) => {
      heard = Date.now();
      const at = Number(String(event.data).split(" ")[0]);
      if (at) skew = at - Date.now();
      if (String(event.data).split(" ")[1] !== strip.dataset.known) {
        strip.dataset.known = String(event.data).split(" ")[1];
        refresh();
      }
    });
  };
  const stopListening = () => {
    if (stream) stream.close();
    stream = null;
  };

  if (strip) {
    listen();
    refresh();
    setInterval(tick, 250);
    setInterval(() => {
      if (Date.now() - heard > 6000) refresh();
    }, 5000);
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "visible") {
        stopListening();
        listen();
        refresh();
      }
    });
    window.addEventListener("pagehide", stopListening);
  }
  // a page taken from the browser's memory may carry a request key that was used
  window.addEventListener("pageshow", (event) => {
    if (event.persisted) location.reload();
  });

  // ---- keys ------------------------------------------------------------------------------
  let go = 0;
  const typing = (target) => target.closest && target.closest("input, textarea, select, [contenteditable]");
  document.addEventListener("keydown", (event) => {
    if (event.key === "F1") {
      event.preventDefault();
      const help = $("[data-key=F1]");
      location.href = help ? help.getAttribute("href") : "/help";
      return;
    }
    if (event.ctrlKey || event.metaKey || event.altKey || typing(event.target)) return;
    if (event.key === "/") {
      event.preventDefault();
      $("#find-mark").focus();
    } else if (event.key === "g") {
      go = Date.now();
    } else if (/^[1-9]$/.test(event.key) && Date.now() - go < 1500) {
      const link = document.querySelectorAll(".places a")[Number(event.key) - 1];
      if (link) link.click();
    }
  });

  // ---- a double tap counts once ----------------------------------------------------------
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (form.dataset.sent) {
      event.preventDefault();
      return;
    }
    form.dataset.sent = "yes";
    setTimeout(() => delete form.dataset.sent, 1000);
  });
})();

// Big keys for a number at the bench: wet hands, a knuckle, a glove. Without it the device's own keys serve.
"use strict";
(() => {
  const small = window.matchMedia("(pointer: coarse), (max-width: 700px)");
  const words = document.getElementById("words");
  const mark = (document.querySelector('meta[name="decimal"]') || {}).content || ".";
  const say = (word) => (words && words.getAttribute("data-say-" + word)) || word;
  let pad = null;
  let field = null;
  let before = "";
  let fresh = true; // the first key takes the place of what stood there

  const show = () => {
    pad.querySelector(".pad-figure").textContent = field.value || "\u2013";
  };
  const change = (text) => {
    field.value = text;
    field.dispatchEvent(new Event("input", { bubbles: true }));
  };
  const press = (key) => {
    if (key === "back") change(fresh ? "" : field.value.slice(0, -1));
    else if (key === mark) {
      if (fresh || !field.value.includes(mark)) change((fresh ? "0" : field.value || "0") + mark);
    } else change((fresh ? "" : field.value) + key);
    fresh = false;
  };
  const close = (keep) => {
    if (!pad) return;
    if (!keep && field.value !== before) change(before);
    pad.remove();
    pad = null;
    document.body.classList.remove("pad-open");
    field = null;
  };

  const key = (text, name, act, kind) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = text;
    if (name) button.setAttribute("aria-label", name);
    if (kind) button.className = kind;
    button.addEventListener("pointerdown", (event) => event.preventDefault());
    button.addEventListener("click", act);
    return button;
  };

  const open = (input) => {
    if (pad && field === input) return;
    close(true);
    field = input;
    before = input.value;
    fresh = true;
    pad = document.createElement("div");
    pad.className = "pad";
    pad.setAttribute("role", "group");
    pad.setAttribute("aria-label", say("numbers"));
    const head = document.createElement("p");
    head.className = "pad-head";
    const label = document.createElement("span");
    label.className = "pad-label";
    label.textContent = input.labels && input.labels[0] ? input.labels[0].textContent.trim() : "";
    const figure = document.createElement("span");
    figure.className = "pad-figure";
    const unit = input.parentElement.querySelector(".unit");
    const of = document.createElement("span");
    of.textContent = unit ? unit.textContent : "";
    head.append(label, figure, of);
    const keys = document.createElement("div");
    keys.className = "pad-keys";
    for (const n of ["7", "8", "9", "4", "5", "6", "1", "2", "3"]) keys.append(key(n, "", () => press(n)));
    const whole = input.inputMode === "numeric" || input.dataset.pad === "numeric";
    keys.append(whole ? document.createElement("span") : key(mark, say("mark"), () => press(mark)));
    keys.append(key("0", "", () => press("0")), key("\u232b", say("back"), () => press("back")));
    const ends = document.createElement("div");
    ends.className = "pad-ends";
    ends.append(key(say("leave"), "", () => close(false)), key(say("put"), "", () => close(true), "primary"));
    pad.append(head, keys, ends);
    (document.getElementById("main") || document.body).append(pad);
    document.body.classList.add("pad-open");
    show();
  };

  const wanted = (target) =>
    small.matches && target.matches && target.matches(".bench input[inputmode='decimal'], .bench input[inputmode='numeric'], .bench input[data-pad]");
  document.addEventListener("pointerdown", (event) => {
    if (!wanted(event.target)) return;
    const input = event.target;
    if (!input.dataset.pad) input.dataset.pad = input.inputMode;
    input.inputMode = "none"; // the device's own keys stay away; a keyboard with cable still types
  });
  document.addEventListener("click", (event) => {
    if (wanted(event.target)) open(event.target);
  });
  document.addEventListener("focusin", (event) => {
    if (pad && event.target !== field && !pad.contains(event.target)) close(true);
  });
  document.addEventListener("keydown", (event) => {
    if (!pad) return;
    if (event.key === "Escape") close(false);
    else fresh = false;
  });
  document.addEventListener("input", (event) => {
    if (pad && event.target === field) show();
  });
})();

// Long forms are saved while they are typed: 'saved' is said only after the studio has answered, and
// it answers only after the commit. Without it a form is kept by its button, as ever.
"use strict";
(() => {
  const SOON = 700; // milliseconds after the first key that is not saved yet
  const AGAIN = 1500; // milliseconds after a try that got no answer
  const NEVER = ["token", "request_key", "kept"];
  const SILENT = ["file", "password", "submit", "button", "image", "reset"];
  const words = document.getElementById("words");
  const say = (word) => (words && words.getAttribute("data-say-" + word)) || word;
  const token = (document.querySelector("meta[name=token]") || {}).content || "";
  const word = document.getElementById("saved");
  const states = new Map();
  const tell = (text) => {
    if (word && word.textContent !== text) word.textContent = text;
  };
  const address = (form) => new URL(form.getAttribute("action"), location.href).pathname;
  const key = (form) => (form.querySelector("input[name=request_key]") || {}).value || "";

  // ---- reading and filling fields ----------------------------------------------------------
  const unitOf = (field) => {
    const entry = field.type === "hidden" ? null : field.closest(".entry");
    const unit = entry && entry.querySelector(".unit");
    return unit ? unit.textContent : "";
  };
  const labelOf = (field) => (field.labels && field.labels[0] ? field.labels[0].textContent.trim() : field.name);
  const box = (field) => field.type === "checkbox" || field.type === "radio";
  // each field with its name and the how-many-th of this name it is
  const fields = (form) => {
    const seen = {};
    return Array.from(form.elements)
      .filter((e) => e.name && !e.disabled && !SILENT.includes(e.type) && !NEVER.includes(e.name))
      .map((field) => ({ field, nth: (seen[field.name] = (seen[field.name] || 0) + 1) }));
  };
  const read = (form) =>
    fields(form).map(({ field, nth }) => {
      const one = { name: field.name, nth, value: field.value };
      if (box(field)) one.on = field.checked;
      if (unitOf(field)) one.unit = unitOf(field);
      return one;
    });
  const fill = (form, draft, touched) => {
    const there = new Map(fields(form).map(({ field, nth }) => [field.name + " " + nth, field]));
    const told = [];
    const others = new Set();
    let changed = false;
    const pairs = draft.map((one) => ({ one, field: there.get(one.name + " " + one.nth) })).filter((p) => p.field);
    for (const { one, field } of pairs) {
      if (field.type === "hidden" || touched.has(field) || box(field) !== "on" in one) continue;
      if ((one.unit || "") !== unitOf(field)) {
        // a figure typed in another unit would be read as something else: told, not filled in
        others.add("shown-as." + one.name);
        if (one.value !== field.value) told.push(labelOf(field) + " " + one.value + " " + (one.unit || ""));
        continue;
      }
      if (box(field) ? field.checked === one.on : field.value === one.value) continue;
      if (box(field)) field.checked = one.on;
      else field.value = one.value;
      changed = true;
      for (let fold = field.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
    }
    // what the fields were typed upon, such as the version of the card: so that two hands still meet
    for (const { one, field } of pairs) {
      if (changed && field.type === "hidden" && !others.has(one.name)) field.value = one.value;
    }
    return { changed, told };
  };

  // ---- saving ------------------------------------------------------------------------------
  const post = (form, more, leaving) =>
    fetch("/draft", {
      method: "POST",
      body: new URLSearchParams({ token, draft_form: address(form), ...more }),
      keepalive: Boolean(leaving),
    });
  const typedIn = (form) => ({ draft_key: key(form), draft_typed: JSON.stringify(read(form)) });
  const later = (form, state, wait) => {
    if (!state.timer && !state.over) state.timer = setTimeout(() => save(form, state), wait);
  };
  const save = async (form, state) => {
    state.timer = 0;
    if (state.over || state.busy) return;
    state.busy = true;
    const typed = state.typed;
    let wait = SOON;
    try {
      if (!state.recalled) await recall(form, state);
      const answer = await post(form, typedIn(form));
      const at = await answer.text();
      if (answer.status === 413) {
        state.saved = typed;
        tell(say("long"));
      } else if (!answer.ok) {
        throw new Error(String(answer.status));
      } else {
        state.saved = typed;
        // what was typed while the answer was on its way is not saved yet
        if (state.typed === typed) tell(answer.status === 204 ? "" : say("saved") + " \u00b7 " + at);
      }
    } catch (e) {
      wait = AGAIN;
      tell(say("unsaved"));
    } finally {
      state.busy = false;
      if (state.typed !== state.saved) later(form, state, wait);
    }
  };
  const touch = (form) => {
    const state = states.get(form);
    if (!state || state.over) return;
    state.typed++;
    if (word && word.parentElement !== form) form.append(word);
    tell(say("editing"));
    if (!state.busy) later(form, state, SOON);
  };
  const leave = (form, state) => {
    clearTimeout(state.timer);
    if (state.over || !state.recalled || state.typed === state.saved) return;
    state.over = true;
    post(form, typedIn(form), true).catch(() => {});
  };

  // ---- what was typed before -----------------------------------------------------------------
  const line = (text) => {
    const p = document.createElement("p");
    p.textContent = text;
    return p;
  };
  const offer = (form, state, at, told) => {
    const note = document.createElement("div");
    note.className = "said draft";
    note.setAttribute("role", "status");
    note.append(line(say("typed") + " \u00b7 " + at));
    if (told.length) note.append(line(say("units") + ": " + told.join("; ")));
    const anew = document.createElement("button");
    anew.type = "button";
    anew.textContent = say("anew");
    anew.addEventListener("click", async () => {
      state.over = true;
      clearTimeout(state.timer);
      try {
        const answer = await post(form, { draft_drop: "yes" });
        if (!answer.ok) throw new Error(String(answer.status));
        form.reset();
        location.reload();
      } catch (e) {
        state.over = false;
        tell(say("unsaved"));
      }
    });
    note.append(anew);
    form.before(note);
  };
  // Before anything is saved over it; what she types meanwhile stays.
  const recall = async (form, state) => {
    const answer = await fetch("/draft?form=" + encodeURIComponent(address(form)), { cache: "no-store" });
    if (!answer.ok) throw new Error(String(answer.status));
    const draft = answer.status === 200 ? await answer.json() : [];
    if (state.recalled) return;
    state.recalled = true;
    const { changed, told } = fill(form, draft, state.touched);
    if (changed || told.length) offer(form, state, answer.headers.get("X-Typed-At") || "", told);
  };

  for (const form of document.querySelectorAll("form[data-autosave]")) {
    const state = { typed: 0, saved: 0, timer: 0, busy: false, over: false, recalled: false, touched: new Set() };
    states.set(form, state);
    // a page that answers a form shows what was typed last, which is newer than any draft
    state.recalled = Boolean(document.body.dataset.answers);
    if (!state.recalled) recall(form, state).catch(() => {});
    else if (location.pathname === address(form)) touch(form);
    form.addEventListener("submit", () => leave(form, state));
    window.addEventListener("pagehide", () => leave(form, state));
  }
  document.addEventListener("input", (event) => {
    const state = states.get(event.target.form);
    if (!state) return;
    state.touched.add(event.target);
    touch(event.target.form);
  });
})();

"use strict";
// Turns a vessel on the screen: arrow keys, buttons, or a drag. Without this script the drawn
// section stands alone. Faces turned away are left out; the rest is painted from far to near,
// cavity first, then the outside, then the rim.
(() => {
  const figure = document.getElementById("turn");
  if (!figure) return;
  const canvas = figure.querySelector("canvas");
  const pen = canvas.getContext("2d");
  if (!pen) return;
  const [outer, cavity] = figure.dataset.body.split("|").map(part =>
    part.split(";").map(ring => {
      const [z, points] = ring.split(":");
      return points.split(" ").map(p => { const [x, y] = p.split(",").map(Number); return [x, y, Number(z)]; });
    }));
  let turn = -0.6;
  let tilt = 0.5;
  const high = outer[outer.length - 1][0][2];
  let reach = 1;
  for (const ring of outer) for (const p of ring) reach = Math.max(reach, Math.hypot(p[0], p[1], p[2] - high / 2));

  const wall = (rings, inward) => {
    const faces = [];
    for (let j = 1; j < rings.length; j++) {
      const a = rings[j - 1];
      const b = rings[j];
      if (a.length !== b.length) continue;
      for (let i = 0; i < a.length; i++) {
        const k = (i + 1) % a.length;
        faces.push(inward ? [a[i], b[i], b[k], a[k]] : [a[i], a[k], b[k], b[i]]);
      }
    }
    return faces;
  };
  const outside = wall(outer, false);
  const inside = wall(cavity, true);
  const rimOut = outer[outer.length - 1];
  const rimIn = cavity[cavity.length - 1];

  const seen = p => {
    const c = Math.cos(turn), s = Math.sin(turn);
    const x = c * p[0] - s * p[1];
    const y = s * p[0] + c * p[1];
    const z = p[2] - high / 2;
    const ct = Math.cos(tilt), st = Math.sin(tilt);
    return [x, ct * z + st * y, ct * y - st * z]; // right, up, away
  };
  const normal = ([a, b, c, d]) => {
    const u = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
    const v = [d[0] - b[0], d[1] - b[1], d[2] - b[2]];
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const l = Math.hypot(...n) || 1;
    return n.map(x => -x / l); // right, up and away are left-handed
  };
  const hex = name => {
    const text = getComputedStyle(document.documentElement).getPropertyValue(name).trim();
    const full = text.length === 4 ? text.replace(/[0-9a-f]/gi, "$&$&") : text;
    return [1, 3, 5].map(i => parseInt(full.slice(i, i + 2), 16));
  };
  const dark = () => {
    const [r, g, b] = hex("--sheet");
    return r + g + b < 380;
  };

  const draw = () => {
    const size = canvas.clientWidth || 320;
    const scale = window.devicePixelRatio || 1;
    canvas.width = canvas.height = Math.round(size * scale);
    const zoom = canvas.width / 2.2 / reach;
    const to = p => [canvas.width / 2 + p[0] * zoom, canvas.height / 2 - p[1] * zoom];
    const stone = dark() ? [150, 160, 166] : [214, 210, 200];
    const tone = n => {
      // light from above, left and in front
      const lit = 0.58 + 0.42 * Math.max(0, -0.45 * n[0] + 0.65 * n[1] - 0.6 * n[2]);
      return "rgb(" + stone.map(c => Math.round(c * lit)).join(",") + ")";
    };
    const fill = (points, colour) => {
      pen.beginPath();
      points.forEach((p, i) => { const [x, y] = to(p); if (i) pen.lineTo(x, y); else pen.moveTo(x, y); });
      pen.closePath();
      pen.fillStyle = pen.strokeStyle = colour;
      pen.fill();
      pen.stroke();
    };
    pen.lineWidth = scale * 0.6;
    const paint = faces => faces
      .map(face => face.map(seen))
      .map(face => ({ face, n: normal(face), far: face.reduce((sum, p) => sum + p[2], 0) }))
      .filter(f => f.n[2] < 0)
      .sort((a, b) => b.far - a.far)
      .forEach(f => fill(f.face, tone(f.n)));
    const above = tilt > 0;
    if (above) {
      const floor = cavity[0].map(seen);
      const up = [0, Math.cos(tilt), -Math.sin(tilt)];
      fill(floor, tone(up));
      paint(inside);
    }
    paint(outside);
    if (above) {
      const up = [0, Math.cos(tilt), -Math.sin(tilt)];
      pen.beginPath();
      for (const ring of [rimOut, rimIn]) {
        ring.map(seen).forEach((p, i) => { const [x, y] = to(p); if (i) pen.lineTo(x, y); else pen.moveTo(x, y); });
        pen.closePath();
      }
      pen.fillStyle = tone(up);
      pen.fill("evenodd");
      const [r, g, b] = hex("--ink");
      pen.strokeStyle = "rgba(" + [r, g, b, 0.5].join(",") + ")";
      pen.stroke();
    } else {
      fill(outer[0].map(seen), tone([0, -Math.cos(tilt), Math.sin(tilt)]));
    }
    const degrees = a => Math.round(a * 180 / Math.PI);
    canvas.setAttribute("aria-valuenow", ((degrees(turn) % 360) + 360) % 360);
    canvas.setAttribute("aria-valuetext", "turned " + ((degrees(turn) % 360) + 360) % 360 + "°, seen from " + Math.abs(degrees(tilt)) + "° " + (above ? "above" : "below"));
  };

  const move = (by, up) => {
    turn += by;
    tilt = Math.max(-1.5, Math.min(1.5, tilt + up));
    draw();
  };
  const STEP = Math.PI / 24;
  const ways = { left: [-STEP, 0], right: [STEP, 0], up: [0, STEP], down: [0, -STEP] };
  const keys = { ArrowLeft: "left", ArrowRight: "right", ArrowUp: "up", ArrowDown: "down" };
  canvas.addEventListener("keydown", e => {
    const way = ways[keys[e.key]];
    if (!way || e.ctrlKey || e.altKey || e.metaKey) return;
    e.preventDefault();
    move(...way);
  });
  figure.querySelectorAll("button[data-way]").forEach(b =>
    b.addEventListener("click", () => move(...ways[b.dataset.way])));
  let at = null;
  canvas.addEventListener("pointerdown", e => { at = [e.clientX, e.clientY]; canvas.setPointerCapture(e.pointerId); });
  canvas.addEventListener("pointermove", e => {
    if (!at) return;
    move((e.clientX - at[0]) / 90, (e.clientY - at[1]) / 90);
    at = [e.clientX, e.clientY];
  });
  ["pointerup", "pointercancel"].forEach(name => canvas.addEventListener(name, () => { at = null; }));
  window.addEventListener("resize", draw);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", draw);
  figure.hidden = false;
  draw();
})();

/* A hair line that reads the pens. The drawn lines are the data: nothing is kept twice, and without this script nothing is lost but the hair line. */
(() => {
  "use strict";
  const MINUTE_MS = 60000;
  const WEEKDAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
  const two = n => String(n).padStart(2, "0");

  /* Points of a path made of M and relative l; a new M lifts the pen. */
  function points(d) {
    const found = [];
    let x = 0, y = 0, relative = false, numbers = [];
    for (const token of d.match(/[Ml]|-?\d+/g) || []) {
      if (token === "M" || token === "l") {
        relative = token === "l";
      } else {
        numbers.push(Number(token));
        if (numbers.length === 2) {
          const lifted = !relative;
          x = relative ? x + numbers[0] : numbers[0];
          y = relative ? y + numbers[1] : numbers[1];
          found.push({x, y, lifted});
          numbers = [];
        }
      }
    }
    return found;
  }

  function valueAt(pen, column) {
    const list = pen.points;
    let low = 0, high = list.length - 1;
    if (high < 0 || column < list[0].x || column > list[high].x) {
      return null;
    }
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (list[middle].x <= column) { low = middle; } else { high = middle; }
    }
    const a = list[low], b = list[high];
    if (b.lifted && column > a.x && column < b.x) {
      return null;
    }
    const share = b.x === a.x ? 0 : (column - a.x) / (b.x - a.x);
    const y = a.y + share * (b.y - a.y);
    return pen.high - (pen.high - pen.low) * y / pen.height;
  }

  function pensOf(strip) {
    return [...strip.querySelectorAll("path[data-name]")].map(path => {
      const frame = path.ownerSVGElement;
      return {
        name: path.dataset.name, unit: path.dataset.unit, decimals: Number(path.dataset.decimals),
        low: Number(frame.dataset.low), high: Number(frame.dataset.high),
        height: frame.viewBox.baseVal.height, width: frame.viewBox.baseVal.width,
        points: points(path.getAttribute("d"))
      };
    });
  }

  function spellsOf(strip) {
    return [...strip.querySelectorAll("svg[data-line]")].map(frame => ({
      name: frame.dataset.line,
      spells: [...frame.firstElementChild.getAttribute("d").matchAll(/M(\d+) 0h(\d+)/g)]
        .map(m => [Number(m[1]), Number(m[1]) + Number(m[2])])
    }));
  }

  function dress(strip) {
    const fromMs = strip.dataset.from * 1000, toMs = strip.dataset.to * 1000, offsetMs = strip.dataset.offset * 1000;
    const pens = pensOf(strip), duties = spellsOf(strip);
    const columns = pens.length ? pens[0].width : 1;
    const hair = document.createElement("div");
    hair.className = "hair";
    for (const [name, value] of Object.entries({role: "slider", tabindex: 0, "aria-label": "Time on the strip",
        "aria-valuemin": 0, "aria-valuemax": Math.round((toMs - fromMs) / MINUTE_MS)})) {
      hair.setAttribute(name, value);
    }
    strip.append(hair);
    let atMs = fromMs;

    function say() {
      const column = (atMs - fromMs) / (toMs - fromMs) * columns;
      const local = new Date(atMs + offsetMs);
      const parts = pens.filter((pen, i) => pens.findIndex(p => p.name === pen.name) === i).map(pen => ({pen, value: valueAt(pen, column)})).filter(p => p.value !== null)
        .map(({pen, value}) => pen.name + " " + value.toFixed(pen.decimals).replace("-", "\u2212") + " " + pen.unit);
      const holders = duties.filter(d => d.spells.some(s => column >= s[0] && column < s[1])).map(d => d.name);
      return WEEKDAYS[local.getUTCDay()] + " " + two(local.getUTCHours()) + ":" + two(local.getUTCMinutes())
        + " \u2014 " + parts.join(" \u00b7 ") + (holders.length ? " \u00b7 duty: " + holders.join(", ") : "");
    }

    function show(ms) {
      atMs = Math.min(toMs, Math.max(fromMs, Math.round(ms / MINUTE_MS) * MINUTE_MS));
      hair.classList.add("drawn");
      readout.hidden = false;
      hair.style.left = "calc(var(--gutter) + (100% - var(--gutter)) * " + (atMs - fromMs) / (toMs - fromMs) + ")";
      const said = say();
      readout.textContent = said;
      hair.setAttribute("aria-valuenow", Math.round((atMs - fromMs) / MINUTE_MS));
      hair.setAttribute("aria-valuetext", said);
    }

    strip.addEventListener("pointermove", event => {
      const paper = strip.querySelector("svg.paper").getBoundingClientRect();
      show(fromMs + (event.clientX - paper.left) / paper.width * (toMs - fromMs));
    });
    strip.addEventListener("pointerleave", () => { readout.hidden = true; });
    hair.addEventListener("focus", () => show(atMs));
    hair.addEventListener("blur", () => { readout.hidden = true; });
    hair.addEventListener("keydown", event => {
      const stepMs = (event.shiftKey ? 60 : 5) * MINUTE_MS;
      const to = {ArrowLeft: atMs - stepMs, ArrowDown: atMs - stepMs, ArrowRight: atMs + stepMs, ArrowUp: atMs + stepMs,
        PageDown: atMs - 12 * stepMs, PageUp: atMs + 12 * stepMs, Home: fromMs, End: toMs}[event.key];
      if (to !== undefined) {
        event.preventDefault();
        show(to);
      }
    });
    hair.setAttribute("aria-valuenow", 0);
    hair.setAttribute("aria-valuetext", say());
  }

  const readout = document.createElement("p");
  readout.className = "readout";
  readout.hidden = true;
  readout.setAttribute("aria-hidden", "true");
  document.body.append(readout);

  document.querySelectorAll(".strip[data-from]").forEach(dress);
})();

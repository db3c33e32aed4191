/**
 * Paper strips: pens above, machines' lanes below, one time across. Drawn by uPlot (window.uPlot, of /chart.js); ruling, hatching and lanes are ours.
 *
 * @typedef {{name: string, ink: string, width?: number, dash?: number[], values: (number|null)[], until?: boolean, band?: boolean}} Pen
 *   values are in the reader's unit; `band` fills between this pen and the lower one before it
 * @typedef {{name: string, heightPx: number, unit: string, decimals: number, pens: Pen[], limits?: {name: string, value: number, ink: string, hatch?: boolean}[],
 *   low?: number, high?: number}} Panel
 * @typedef {{name: string, ink: string, spells: {from: number, to: number, share: number}[]}} Lane
 * @typedef {{label: string, x: number[], from: number, to: number, ticks: {at: number, text: string, bold?: boolean}[], tell: function(number): string,
 *   panels: Panel[], lanes: Lane[], marks?: {at: number, text: string, ink: string}[], seam?: number, hint?: string, stepBy?: number, choose?: function(number): void}} Strip
 */

import {el} from "./make.js";
import {number} from "./words.js";

const HINT = "Touch the strip, or use the arrow keys, to read it.";
const GUTTER_PX = 58;
const LANE_PX = 20;
const CLOCK_PX = 22;
const FONT = '11px system-ui, "Liberation Sans", Arial, sans-serif';
const px = () => devicePixelRatio || 1;

let strips = 0;

const inkOf = name => getComputedStyle(document.documentElement).getPropertyValue("--" + name).trim() || "#000";

/** Steps that people count in. */
function stepFor(reach, most) {
  const raw = reach / most;
  const ten = 10 ** Math.floor(Math.log10(raw));
  return [1, 2, 5, 10].map(n => n * ten).find(n => n >= raw) ?? raw;
}

function reach(panel) {
  const values = panel.pens.flatMap(p => p.values.filter(v => v !== null && v !== undefined)).concat((panel.limits || []).map(l => l.value));
  let low = panel.low ?? Math.min(...values);
  let high = panel.high ?? Math.max(...values);
  if (!Number.isFinite(low) || !Number.isFinite(high)) {
    [low, high] = [0, 10];
  }
  const room = Math.max(1, (high - low) * 0.08);
  return [panel.low ?? Math.floor(low - room), panel.high ?? Math.ceil(high + room)];
}

function line(ctx, x1, y1, x2, y2) {
  ctx.beginPath();
  ctx.moveTo(x1, y1);
  ctx.lineTo(x2, y2);
  ctx.stroke();
}

function hatch(ctx, x, y, width, height) {
  ctx.save();
  ctx.beginPath();
  ctx.rect(x, y, width, height);
  ctx.clip();
  const gap = 7 * px();
  for (let d = -height; d < width; d += gap) {
    line(ctx, x + d, y + height, x + d + height, y);
  }
  ctx.restore();
}

/** Words on the paper, with the paper's colour around them. */
function write(ctx, text, x, y, ink) {
  ctx.save();
  ctx.textAlign = "left";
  ctx.textBaseline = "alphabetic";
  ctx.strokeStyle = inkOf("sheet");
  ctx.lineWidth = 3 * px();
  ctx.lineJoin = "round";
  ctx.strokeText(text, x, y);
  ctx.fillStyle = inkOf(ink);
  ctx.fillText(text, x, y);
  ctx.restore();
}

function ground(strip, fineY, boldY) {
  return u => {
    const {ctx} = u;
    const {left, top, width, height} = u.bbox;
    ctx.save();
    ctx.fillStyle = inkOf("sheet");
    ctx.fillRect(left, top, width, height);
    ctx.lineWidth = px();
    const [low, high] = [u.scales.y.min, u.scales.y.max];
    for (const [step, ink] of [[fineY, "rule"], [boldY, "rule-bold"]]) {
      ctx.strokeStyle = inkOf(ink);
      for (let v = Math.ceil(low / step) * step; step && v <= high; v += step) {
        const y = Math.round(u.valToPos(v, "y", true)) + 0.5;
        line(ctx, left, y, left + width, y);
      }
    }
    for (const tick of strip.ticks) {
      ctx.strokeStyle = inkOf(tick.bold ? "rule-bold" : "rule");
      const x = Math.round(u.valToPos(tick.at, "x", true)) + 0.5;
      if (x > left && x < left + width) {
        line(ctx, x, top, x, top + height);
      }
    }
    ctx.restore();
  };
}

function over(strip, panel) {
  return u => {
    const {ctx} = u;
    const {left, top, width, height} = u.bbox;
    ctx.save();
    ctx.font = FONT.replace("11px", 11 * px() + "px");
    let lastX = -Infinity;
    for (const limit of panel?.limits || []) {
      const y = u.valToPos(limit.value, "y", true);
      ctx.strokeStyle = inkOf(limit.ink);
      ctx.lineWidth = 1.2 * px();
      if (limit.hatch && y < top + height) {
        ctx.lineWidth = 0.6 * px();
        hatch(ctx, left, y, width, Math.min(12 * px(), top + height - y));
        ctx.lineWidth = 1.6 * px();
      }
      ctx.setLineDash(limit.hatch ? [] : [9 * px(), 3 * px()]);
      line(ctx, left, y, left + width, y);
      ctx.setLineDash([]);
    }
    for (const mark of strip.marks || []) {
      const x = u.valToPos(mark.at, "x", true);
      ctx.strokeStyle = inkOf(mark.ink);
      ctx.setLineDash([3 * px(), 3 * px()]);
      line(ctx, x, top, x, top + height);
      ctx.setLineDash([]);
      if (panel?.first && x > lastX + 46 * px()) {
        write(ctx, mark.text, x + 4 * px(), top + 12 * px(), mark.ink);
        lastX = x;
      }
    }
    if (strip.seam !== undefined) {
      const x = u.valToPos(strip.seam, "x", true);
      ctx.fillStyle = inkOf("night");
      ctx.fillRect(x, top, left + width - x, height);
      ctx.strokeStyle = inkOf("text");
      ctx.lineWidth = 1.5 * px();
      line(ctx, x, top, x, top + height);
      if (panel?.first) {
        write(ctx, "expected", x + 5 * px(), top + 12 * px(), "quiet");
      }
    }
    ctx.strokeStyle = inkOf("edge");
    ctx.lineWidth = px();
    ctx.strokeRect(left + 0.5, top + 0.5, width - 1, height - 1);
    ctx.restore();
  };
}

function lanesDrawn(lanes) {
  return u => {
    const {ctx} = u;
    const {left, width} = u.bbox;
    ctx.save();
    lanes.forEach((lane, i) => {
      const foot = u.valToPos(lanes.length - 1 - i + 0.08, "y", true);
      const head = u.valToPos(lanes.length - 1 - i + 0.86, "y", true);
      ctx.fillStyle = inkOf(lane.ink);
      for (const spell of lane.spells) {
        const from = Math.max(left, u.valToPos(spell.from, "x", true));
        const to = Math.min(left + width, u.valToPos(spell.to, "x", true));
        const high = (foot - head) * Math.min(1, spell.share);
        if (to > from && high > 0) {
          ctx.fillRect(from, foot - high, Math.max(px(), to - from), high);
        }
      }
    });
    ctx.restore();
  };
}

/** What every sheet of a strip shares. */
function frame(strip, width, heightPx, isLast, cursor) {
  return {
    width, height: heightPx + (isLast ? CLOCK_PX : 0),
    padding: [6, 1, isLast ? 0 : 2, 0],
    legend: {show: false},
    select: {show: false},
    cursor,
    scales: {x: {time: false, range: () => [strip.from, strip.to]}, y: {}}
  };
}

function clockAxis(strip, isLast) {
  const named = strip.ticks.filter(t => t.text);
  return {
    show: isLast, size: CLOCK_PX, gap: 4, font: FONT, stroke: () => inkOf("quiet"), grid: {show: false}, ticks: {show: false},
    splits: () => named.map(t => t.at), values: () => named.map(t => t.text)
  };
}

const gutterAxis = (splits, values, strong) => ({
  size: GUTTER_PX, gap: 4, font: strong ? "600 " + FONT : FONT, stroke: () => inkOf(strong ? "text" : "quiet"),
  grid: {show: false}, ticks: {show: false}, splits, values
});

function penSeries(pen) {
  return {
    label: pen.name, stroke: () => (pen.width === 0 ? "transparent" : inkOf(pen.ink)), width: pen.width ?? 1.4, dash: pen.dash,
    points: {show: pen.dots === true, size: 4, fill: () => inkOf(pen.ink), stroke: () => inkOf(pen.ink)}, spanGaps: false
  };
}

function bands(pens) {
  return pens.flatMap((pen, i) => (pen.band ? [{series: [i + 1, i], fill: () => inkOf(pen.ink) + "2e"}] : []));
}

function panelOptions(strip, panel, width, isLast, cursor) {
  const [low, high] = reach(panel);
  const bold = stepFor(high - low, Math.max(2, panel.heightPx / 34));
  const fine = (high - low) / (bold / 5) <= panel.heightPx / 5 ? bold / 5 : bold / 2;
  const splits = () => {
    const all = [];
    for (let v = Math.ceil(low / bold) * bold; v <= high; v += bold) {
      all.push(v);
    }
    return all.filter(v => v - low > 0.04 * (high - low) || low >= 0); // a number at the foot would run into the next sheet
  };
  const options = frame(strip, width, panel.heightPx, isLast, cursor);
  options.scales.y.range = () => [low, high];
  options.axes = [clockAxis(strip, isLast), gutterAxis(splits, (u, all) => all.map((v, i) => number(v, bold < 1 ? 1 : 0) + (i === all.length - 1 ? " " + panel.unit : "")), false)];
  options.series = [{}, ...panel.pens.map(penSeries)];
  options.bands = bands(panel.pens);
  options.hooks = {drawClear: [ground(strip, fine, bold)], draw: [over(strip, panel)]};
  return options;
}

function laneOptions(strip, width, cursor) {
  const {lanes} = strip;
  const options = frame(strip, width, lanes.length * LANE_PX + 8, true, {...cursor, points: {show: false}});
  options.scales.y.range = () => [0, lanes.length];
  const short = name => (name.length > 10 ? name.slice(0, 9) + "…" : name);
  options.axes = [clockAxis(strip, true), gutterAxis(() => lanes.map((_, i) => lanes.length - 1 - i + 0.5), () => lanes.map(l => short(l.name)), true)];
  options.series = [{}, {stroke: "transparent", points: {show: false}}];
  options.hooks = {drawClear: [ground(strip, 1, 1)], draw: [lanesDrawn(lanes), over(strip, null)]};
  return options;
}

/** A legend whose samples are the pens themselves. */
function legend(strip) {
  const pens = strip.panels.flatMap(p => p.pens).filter(p => p.name && p.width !== 0);
  return el("ul", {class: "legend", "aria-hidden": "true"}, pens.map(pen =>
    el("li", null, el("i", {class: "sample " + pen.ink + (pen.dash ? " dashed" : "") + (pen.dots ? " dotted" : "")}), pen.name)));
}

/** Where the hair line stands, in words. */
function readAt(strip, at) {
  let i = strip.x.findIndex(x => x >= at);
  i = i < 0 ? strip.x.length - 1 : i > 0 && at - strip.x[i - 1] < strip.x[i] - at ? i - 1 : i;
  const parts = strip.panels.flatMap(panel => panel.pens.filter(pen => pen.name && pen.values[i] !== null && pen.values[i] !== undefined)
    .map(pen => pen.name + " " + number(pen.values[i], panel.decimals) + "\u00a0" + panel.unit));
  const on = strip.lanes.filter(l => l.spells.some(s => at >= s.from && at < s.to)).map(l => l.name);
  return strip.tell(at) + ": " + (parts.join(", ") || "nothing written") + (on.length ? "; on: " + on.join(", ") : "");
}

/** A slider over the paper, so that the hair line goes by keys too. */
function hair(strip, move) {
  let at = strip.seam ?? strip.to;
  const stepBig = (strip.to - strip.from) / 24;
  const step = strip.stepBy ?? stepBig / 4;
  const node = el("div", {class: "hair", role: "slider", tabindex: "0", "aria-label": strip.label + ": where to read",
    "aria-valuemin": 0, "aria-valuemax": 100});
  const show = to => {
    at = Math.max(strip.from, Math.min(strip.to, to));
    node.setAttribute("aria-valuenow", Math.round(100 * (at - strip.from) / (strip.to - strip.from)));
    node.setAttribute("aria-valuetext", readAt(strip, at));
  };
  node.addEventListener("keydown", event => {
    const to = {ArrowLeft: at - step, ArrowDown: at - step, ArrowRight: at + step, ArrowUp: at + step,
      PageDown: at - stepBig, PageUp: at + stepBig, Home: strip.from, End: strip.to}[event.key];
    if (to !== undefined) {
      event.preventDefault();
      show(to);
      move(at);
    } else if (event.key === "Enter" && strip.choose) {
      strip.choose(at);
    }
  });
  show(at);
  return {node, show};
}

/**
 * Draws a strip into a node, which it empties first.
 * @param {Element} host
 * @param {Strip} strip
 * @returns {function(): void} takes it away
 */
export function draw(host, strip) {
  const key = "strip-" + ++strips;
  const paper = el("div", {class: "paper"});
  const said = el("p", {class: "readout", "aria-hidden": "true"}, strip.hint ?? HINT);
  const plots = [];
  const slider = hair(strip, at => plots.forEach(u => u.setCursor({left: u.valToPos(at, "x"), top: 10})));
  host.replaceChildren(legend(strip), el("div", {class: "strip", role: "group", "aria-label": strip.label}, paper, slider.node), said);
  const widthPx = () => Math.max(200, Math.floor(paper.clientWidth || host.clientWidth));
  const cursor = {sync: {key, setSeries: false}, y: false, drag: {x: false, y: false, setScale: false}, points: {size: 7}};
  const hooks = options => {
    options.hooks.setCursor = [u => {
      const {left} = u.cursor;
      if (left >= 0 && strip.x.length) {
        const at = u.posToVal(left, "x");
        said.textContent = readAt(strip, at);
        slider.show(at);
      } else {
        said.textContent = strip.hint ?? HINT;
      }
    }];
    return options;
  };
  strip.panels.forEach((panel, i) => {
    const isLast = !strip.lanes.length && i === strip.panels.length - 1;
    plots.push(new uPlot(hooks(panelOptions(strip, {...panel, first: i === 0}, widthPx(), isLast, cursor)), [strip.x, ...panel.pens.map(p => p.values)], paper));
  });
  if (strip.lanes.length) {
    plots.push(new uPlot(hooks(laneOptions(strip, widthPx(), cursor)), [strip.x, strip.x.map(() => null)], paper));
  }
  if (strip.choose) {
    paper.classList.add("chosen-by-click");
    plots.forEach(u => u.over.addEventListener("click", () => strip.choose(u.posToVal(u.cursor.left, "x"))));
  }
  const watch = new ResizeObserver(() => plots.forEach(u => u.width !== widthPx() && u.setSize({width: widthPx(), height: u.height})));
  watch.observe(paper);
  return () => {
    watch.disconnect();
    plots.forEach(u => u.destroy());
  };
}

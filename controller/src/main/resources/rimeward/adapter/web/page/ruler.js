/** Straight rulers, drawn: where each temperature lies on one scale, and how sure a number is. */

import {el, svg} from "./make.js";
import {degreeSign, number, toReader} from "./words.js";


const share = (value, low, high) => 100 * (value - low) / (high - low);

function rules(low, high, bottom, step, boldStep) {
  const marks = [];
  for (let v = Math.ceil(low / step) * step; v <= high; v += step) {
    const bold = Math.abs(v / boldStep - Math.round(v / boldStep)) < 1e-9;
    const x = share(v, low, high) + "%";
    marks.push(svg("line", {x1: x, x2: x, y1: bottom - (bold ? 12 : 6), y2: bottom, class: bold ? "bold" : "fine"}));
    if (bold) {
      marks.push(svg("text", {x, y: bottom + 13, class: "scale", "text-anchor": "middle"}, number(v, 0)));
    }
  }
  return marks;
}

const CHAR_PX = 6.6; // of an 11 px letter, roughly; labels are only kept apart by it

/** Labels in rows, so that none lies on another. */
function place(marks, low, high, widthPx) {
  const rows = [];
  return [...marks].sort((a, b) => a.at - b.at).map(mark => {
    const x = share(mark.at, low, high) / 100 * widthPx;
    const wide = mark.text.length * CHAR_PX + 8;
    const ends = x + wide > widthPx;
    const from = ends ? x - wide : x;
    let row = rows.findIndex(until => until <= from);
    if (row < 0) {
      row = rows.length;
    }
    rows[row] = from + wide;
    return {...mark, row, ends, x: share(mark.at, low, high) + "%"};
  });
}

/**
 * One scale of degrees with marks on it; what lies below the floor is hatched.
 * @param {{name: string, airC: number, ink: string}[]} points those that are known
 * @param {number} floorC
 * @param {number} widthPx room there is
 */
export function degreesRuler(points, floorC, widthPx) {
  const each = points.map(p => ({...p, at: toReader(p.airC), text: p.name + " " + number(toReader(p.airC))}));
  const floor = {name: "floor", at: toReader(floorC), text: "floor " + number(toReader(floorC)), ink: "floor"};
  const all = [...each, floor];
  const low = Math.floor(Math.min(...all.map(p => p.at)) - 1);
  const high = Math.ceil(Math.max(...all.map(p => p.at)) + 1);
  const placed = place(all, low, high, widthPx);
  const rowsPx = 15 * (1 + Math.max(...placed.map(p => p.row)));
  const bottom = rowsPx + 20;
  const boldStep = high - low > 60 ? 20 : high - low > 24 ? 10 : 5;
  const words = "On one scale, " + degreeSign() + ": " + [...all].sort((a, b) => a.at - b.at).map(p => p.text).join(", ");
  return svg("svg", {class: "ruler", width: "100%", height: bottom + 18, role: "img", "aria-label": words},
    svg("rect", {class: "below", x: 0, y: rowsPx + 2, height: 18, width: share(floor.at, low, high) + "%"}),
    rules(low, high, bottom, 1, boldStep),
    svg("line", {class: "base", x1: 0, x2: "100%", y1: bottom, y2: bottom}),
    placed.map(p => svg("line", {class: "lead " + p.ink, x1: p.x, x2: p.x, y1: 15 * p.row + 2, y2: bottom})),
    placed.map(p => svg("text", {class: "mark " + p.ink, x: p.x, y: 15 * p.row + 12, dx: p.ends ? -4 : 4, "text-anchor": p.ends ? "end" : "start"}, p.text)));
}

/** Least, likeliest and most of a number, and what was assumed before, on a scale from 0. */
export function sureness({value, least, most}, assumed) {
  const high = Math.max(most ?? value, assumed ?? 0, value) * 1.12 || 1;
  const x = v => share(v, 0, high) + "%";
  return el("div", {class: "sure", "aria-hidden": "true"},
    svg("svg", {width: "100%", height: 30},
      svg("line", {class: "base", x1: 0, x2: "100%", y1: 22, y2: 22}),
      least !== undefined && most !== undefined && svg("rect", {class: "reach", x: x(least), width: share(most - least, 0, high) + "%", y: 13, height: 9}),
      svg("line", {class: "found", x1: x(value), x2: x(value), y1: 8, y2: 26}),
      assumed !== undefined && svg("line", {class: "assumed", x1: x(assumed), x2: x(assumed), y1: 4, y2: 26})));
}

/** How much of a whole: a filled stretch of paper. */
export function filled(part, whole, ink = "") {
  const partPercent = Math.max(0, Math.min(100, 100 * part / whole)) || 0;
  return svg("svg", {class: "filled " + ink, width: "100%", height: 14, "aria-hidden": "true"},
    svg("rect", {class: "room", x: 0, y: 1, width: "100%", height: 12}),
    svg("rect", {class: "part", x: 0, y: 1, width: partPercent + "%", height: 12}));
}


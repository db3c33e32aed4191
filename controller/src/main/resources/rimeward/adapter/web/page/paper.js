/** From the record's columns and the plan's hours to pens, lanes and ruled hours: what every strip of a night shares. */

import {el, table} from "./make.js";
import {clock, dayClock, degreeSign, hour, hourMinute, number, percent, temperature, toReader} from "./words.js";

const known = value => typeof value === "number" && Number.isFinite(value);
const degreesOf = values => values.map(v => (known(v) ? toReader(v) : null));

/** Seconds of an RFC 3339 time. */
export const seconds = text => Date.parse(text) / 1000;

/** Hours to rule, by the clock of the place: each is a fine line, every third, sixth or twelfth has its name. */
export function hourTicks(from, to, widthPx) {
  const room = Math.max(2, widthPx / 46);
  const every = [1, 2, 3, 6, 12].find(n => (to - from) / 3600 / n <= room) ?? 24;
  const ticks = [];
  for (let at = Math.ceil(from / 900) * 900; at <= to; at += 900) { // some zones lie a quarter of an hour apart
    const [h, minute] = hourMinute(at);
    if (minute === 0) {
      const isNamed = h % every === 0 && (to - at) * widthPx > (to - from) * 12; // one at the very edge would be cut off
      ticks.push({at, text: isNamed ? hour(at) : "", bold: h % every === 0});
    }
  }
  return ticks;
}

/** The times of a set of columns. @returns {number[]} */
export const times = columns => (columns.columns.coldestC || columns.columns.outsideC || []).map((_, i) => columns.startEpochS + i * columns.stepS);

export const PENS = {
  coldest: {ink: "coldest", width: 2.2},
  outside: {ink: "outside", width: 1.4},
  dew: {ink: "dew", width: 1.4, dash: [7, 3]},
  rh: {ink: "rh", width: 1.8}
};

/** @param {Object} columns as /api/day tells them @returns {{temperatures: Object[], damp: Object[]}} pens */
export function pensOf(columns) {
  const each = columns.columns;
  const pen = (name, kind, values, turn) => (values ? [{name, ...PENS[kind], values: turn(values)}] : []);
  return {
    temperatures: [...pen("outside", "outside", each.outsideC, degreesOf), ...pen("dew point", "dew", each.dewPointC, degreesOf), ...pen("coldest bench", "coldest", each.coldestC, degreesOf)],
    damp: pen("humidity", "rh", each.rhPercent, values => values.map(v => (known(v) ? v : null)))
  };
}

/** Lanes of power: as high as the share of the most that is drawn in them. */
export function powerLanes(columns) {
  const at = times(columns);
  return [["heater", "heaterW"], ["dryer", "dryerW"]].filter(([, name]) => columns.columns[name]).map(([name, column]) => {
    const watts = columns.columns[column];
    const most = Math.max(1, ...watts.filter(known));
    return {name, ink: name, spells: merged(watts.map((w, i) => ({from: at[i], to: at[i] + columns.stepS, share: known(w) ? w / most : 0})))};
  });
}

/** Neighbours that are alike become one. */
function merged(spells) {
  return spells.reduce((all, s) => {
    const last = all.at(-1);
    if (last && last.to === s.from && last.share === s.share) {
      last.to = s.to;
    } else {
      all.push({...s});
    }
    return all;
  }, []).filter(s => s.share > 0);
}

/** The floor as it stood; where it changed, the last. */
export function floorLimit(floorC) {
  return {name: "floor", value: toReader(floorC), ink: "floor", hatch: true};
}

export const temperaturePanel = (pens, floorC, heightPx) => ({name: "temperature", heightPx, unit: degreeSign(), decimals: 1, pens, limits: known(floorC) ? [floorLimit(floorC)] : []});
export const dampPanel = (pens, heightPx, limits = []) => ({name: "humidity", heightPx, unit: "%", decimals: 0, pens, limits, low: 30, high: 100});

/** The plan's hours as pens that begin where the record ends. @param {Object} plan */
export function planPens(plan) {
  const middle = plan.hours.map(h => seconds(h.from) + h.lengthS / 2);
  const of = (pick, sign) => plan.hours.map(h => toReader(h[pick].value + sign * (h[pick].spread || 0)));
  const band = (name, ink, pick, dash, width) => [
    {name: "", ink, width: 0, values: of(pick, -1)},
    {name: "", ink, width: 0, values: of(pick, 1), band: true},
    {name, ink, width, dash, values: of(pick, 0)}
  ];
  return {x: middle, pens: [...band("outside, expected", "outside", "outsideC", [2, 3], 1.4), ...band("coldest, expected", "coldest", "benchC", [8, 3], 2)]};
}

/** Machines' lanes of a plan: each hour as high as its share. */
export function planLanes(plan) {
  const ids = Object.keys(plan.hours[0]?.shares || {});
  return ids.map(id => ({
    name: id, ink: inkFor(id),
    spells: plan.hours.map(h => ({from: seconds(h.from), to: seconds(h.from) + h.lengthS, share: h.shares[id] || 0})).filter(s => s.share > 0)
  })).filter(lane => lane.spells.length);
}

const ORDER = ["heater", "dryer", "fan"];

/** Machines' lanes of a night out of what was switched. */
export function switchLanes(switches, from, to) {
  const ids = [...new Set(switches.map(s => s.machine))].sort((a, b) => ORDER.indexOf(inkFor(a)) - ORDER.indexOf(inkFor(b)) || (a < b ? -1 : 1));
  return ids.map(id => {
    const spells = [];
    let since = null;
    for (const each of switches.filter(s => s.machine === id)) {
      if (each.on && since === null) {
        since = each.s;
      } else if (!each.on) {
        if (since !== null || !spells.length) {
          spells.push({from: since ?? from, to: each.s, share: 1});
        }
        since = null;
      }
    }
    if (since !== null) {
      spells.push({from: since, to, share: 1});
    }
    return {name: id, ink: inkFor(id), spells};
  });
}

/** By the word in its name or role; what is neither gets the fan's. */
export function inkFor(name) {
  return /heat|stage/i.test(name) ? "heater" : /dr(y|ier)/i.test(name) ? "dryer" : "fan";
}

/** Joins two runs of time with their pens, holes where the other one writes. */
export function join(a, b) {
  const holes = list => list.map(() => null);
  return {
    x: [...a.x, ...b.x],
    pens: [...a.pens.map(p => ({...p, values: [...p.values, ...holes(b.x)]})), ...b.pens.map(p => ({...p, values: [...holes(a.x), ...p.values]}))]
  };
}

export const tellAt = at => dayClock(at);

/** The same numbers as a table, by the hour, made when it is opened. */
export function hourly(columns) {
  const at = times(columns);
  const stepRows = Math.max(1, Math.round(3600 / columns.stepS));
  const each = columns.columns;
  const build = () => table("By the hour", [
    {head: "time", cell: i => clock(at[i])},
    {head: "coldest bench", cell: i => temperature(each.coldestC?.[i])},
    {head: "outside", cell: i => temperature(each.outsideC?.[i])},
    {head: "humidity", cell: i => percent(each.rhPercent?.[i])},
    {head: "dew point", cell: i => temperature(each.dewPointC?.[i])},
    {head: "heater W", cell: i => number(each.heaterW?.[i], 0)},
    {head: "dryer W", cell: i => number(each.dryerW?.[i], 0)}
  ], at.map((_, i) => i).filter(i => i % stepRows === 0), "numbers");
  return opened("The same as a table, by the hour", build);
}

/** Something to open, made only then. */
export function opened(title, build) {
  const node = el("details", {toggle: () => node.open && node.childElementCount === 1 && node.append(build())}, el("summary", null, title));
  return node;
}

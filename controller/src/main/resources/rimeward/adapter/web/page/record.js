/** What was: the season's nights as a strip, and one night in detail with its machines, decisions and downloads. */

import {el, ledger, table, waits} from "./make.js";
import {dampPanel, hourly, hourTicks, opened, pensOf, switchLanes, temperaturePanel, tellAt, times} from "./paper.js";
import {draw} from "./strip.js";
import {get, latest, listen} from "./wire.js";
import {clockS, degreeSign, kilowattHours, lasting, litres, money, nightName, number, sentence, span, temperature, toReader} from "./words.js";

export const title = "Record";

const NEWEST = 21; // nights in the list before it is opened. Own choice

const degreesOr = airC => (airC === undefined ? null : toReader(airC));

/** Months to rule, by the first night in each. */
function months(nights, widthPx) {
  const firsts = nights.map((n, i) => ({at: i - 0.5, month: n.night.slice(0, 7), i})).filter(({month, i}) => i === 0 || nights[i - 1].night.slice(0, 7) !== month);
  return firsts.map((f, k) => {
    const roomPx = ((firsts[k + 1]?.at ?? nights.length) - f.at) / nights.length * widthPx;
    return {at: f.at, bold: true, text: roomPx > 30 ? nightName(nights[f.i].night, {month: "short"}) : ""};
  });
}

function season(nights, floorC, widthPx) {
  const old = [...nights].reverse(); // oldest first, as paper runs
  const most = Math.max(0.1, ...old.map(n => n.kwh ?? 0));
  const bars = (pick, top) => old.flatMap((n, i) => (pick(n) > 0 ? [{from: i - 0.4, to: i + 0.4, share: pick(n) / top}] : []));
  return {
    label: "The nights of the season", x: old.map((_, i) => i), from: -0.6, to: old.length - 0.4, ticks: months(old, widthPx - 58), stepBy: 1,
    tell: at => nightName((old[Math.max(0, Math.min(old.length - 1, Math.round(at)))] || {}).night || ""),
    hint: "Touch the strip to open a night, or take it from the list.",
    choose: at => { location.hash = "#record/" + old[Math.max(0, Math.min(old.length - 1, Math.round(at)))].night; },
    panels: [{
      name: "lowest", heightPx: 190, unit: degreeSign(), decimals: 1,
      pens: [
        {name: "lowest outside", ink: "outside", width: 1.4, values: old.map(n => degreesOr(n.outsideLowestC))},
        {name: "lowest bench", ink: "coldest", width: 2.2, values: old.map(n => degreesOr(n.lowestC)), dots: old.length < 40}
      ],
      limits: floorC === undefined ? [] : [{name: "floor", value: toReader(floorC), ink: "floor", hatch: true}]
    }],
    lanes: [
      {name: "kWh", ink: "heater", spells: bars(n => n.kwh ?? 0, most)},
      {name: "alerts", ink: "floor", spells: bars(n => n.alerts ?? 0, Math.max(1, ...old.map(n => n.alerts ?? 0)))}
    ]
  };
}

function nightsTable(nights, currency, floorC) {
  return table("Nights, the newest first", [
    {head: "night of", cell: n => el("a", {href: "#record/" + n.night}, nightName(n.night))},
    {head: "lowest bench", cell: n => temperature(n.lowestC)},
    {head: "outside", cell: n => temperature(n.outsideLowestC)},
    {head: "kWh", cell: n => number(n.kwh, 1)},
    {head: "cost", cell: n => money(n.cost, currency)},
    {head: "water", cell: n => litres(n.litres)},
    {head: "above floor", cell: n => (n.lowestC < floorC ? el("strong", null, span(n.lowestC - floorC)) : n.lowestC === undefined ? "–" : span(n.lowestC - floorC))},
    {head: "alerts", cell: n => number(n.alerts ?? 0, 0)}
  ], nights, "numbers");
}

function sums(nights, currency) {
  const sum = pick => nights.reduce((all, n) => all + (n[pick] ?? 0), 0);
  const lows = nights.filter(n => n.lowestC !== undefined);
  const coldest = lows.reduce((a, b) => (a && a.lowestC <= b.lowestC ? a : b), undefined);
  return ledger([
    ["nights", String(nights.length)],
    coldest && ["lowest bench of all", temperature(coldest.lowestC), el("small", null, " " + nightName(coldest.night))],
    ["electricity", kilowattHours(sum("kwh"))],
    nights.some(n => n.cost !== undefined) && ["cost", money(sum("cost"), currency)],
    ["water", litres(sum("litres"))]
  ]);
}

function openSeason(host) {
  const room = el("div");
  host.append(el("h1", {tabindex: "-1"}, "Record"), room);
  let told = null, take = null, closed = false;

  function show() {
    take?.();
    take = null;
    if (!told || closed) {
      return;
    }
    if (told.failed || !told.nights.length) {
      room.replaceChildren(waits(told.failed ?? "The first night is written here when it is over, in the morning."));
      return;
    }
    const paper = el("div", {class: "strip-room"});
    const floorC = latest()?.site.floorC;
    room.replaceChildren(paper, sums(told.nights, told.currency), el("h2", null, "Nights"),
      nightsTable(told.nights.slice(0, NEWEST), told.currency, floorC), told.nights.length > NEWEST && opened("All " + told.nights.length + " nights", () => nightsTable(told.nights, told.currency, floorC)) || "");
    take = draw(paper, season(told.nights, floorC, paper.clientWidth || 360));
  }

  async function fetchNights() {
    try {
      told = await get("/api/nights");
    } catch (failed) {
      told = {failed: "The record cannot be read. " + failed.message};
    }
    show();
  }

  const end = listen("nights", fetchNights);
  fetchNights();
  return {update: () => {}, redraw: show, close: () => { closed = true; end(); take?.(); }};
}

function facts(n, currency) {
  return ledger([
    ["lowest bench", temperature(n.lowestC), n.lowestBench && el("small", null, " " + n.lowestBench)],
    n.plan?.lowestC !== undefined && ["planned", temperature(n.plan.lowestC), n.lowestC !== undefined && el("small", null, " off by " + span(Math.abs(n.plan.lowestC - n.lowestC)))],
    ["lowest outside", temperature(n.outsideLowestC)],
    n.coldestC !== undefined && ["as control judged it", temperature(n.coldestC), el("small", null, " less the sensor's uncertainty")],
    n.underFloorS !== undefined && ["below the floor", n.underFloorS > 0 ? lasting(n.underFloorS) : "never"],
    n.wetS !== undefined && ["wet", lasting(n.wetS)],
    n.seenS !== undefined && ["watched", lasting(n.seenS)],
    ["electricity", kilowattHours(n.kwh), n.plan?.kwh !== undefined && el("small", null, " planned " + number(n.plan.kwh, 1))],
    n.cost !== undefined && ["cost", money(n.cost, currency)],
    ["water", litres(n.litres)],
    ["alerts", number(n.alerts ?? 0, 0)]
  ]);
}

function nightStrip(told, widthPx) {
  const {columns, switches = [], alerts = []} = told;
  const x = times(columns);
  const from = columns.startEpochS;
  const to = from + columns.stepS * x.length;
  const {temperatures, damp} = pensOf(columns);
  const floors = (columns.columns.floorC || []).filter(v => v !== null);
  return {
    label: "The night of " + nightName(told.night.night), x, from, to, ticks: hourTicks(from, to, widthPx - 58), tell: tellAt, stepBy: 900,
    panels: [temperaturePanel(temperatures, floors.at(-1), widthPx < 600 ? 200 : 260), dampPanel(damp, 80)],
    lanes: switchLanes(switches, from, to),
    marks: alerts.map(a => ({at: a.s, text: "alert", ink: "floor"}))
  };
}

/** Decisions and alerts in one log, in their order. */
function log(told) {
  const lines = [
    ...(told.switches || []).map(s => ({s: s.s, who: s.machine + (s.on ? " on" : " off"), why: s.why, kind: "switch"})),
    ...(told.alerts || []).map(a => ({s: a.s, who: "alert, " + String(a.severity || "").toLowerCase(), why: a.text, kind: "alert"}))
  ].sort((a, b) => a.s - b.s);
  return lines.length
    ? table("What was decided, and why", [{head: "time", cell: l => clockS(l.s)}, {head: "what", words: true, cell: l => l.who}, {head: "why", words: true, cell: l => sentence(l.why)}], lines, "log")
    : el("p", null, "Nothing was switched, and no alert was raised.");
}

function openNight(host, night) {
  const room = el("div");
  host.append(el("p", {class: "back"}, el("a", {href: "#record"}, "All nights")), el("h1", {tabindex: "-1"}, "The night of " + nightName(night)), room);
  let told = null, take = null, closed = false;

  function show() {
    take?.();
    take = null;
    if (!told || closed) {
      return;
    }
    if (told.failed) {
      room.replaceChildren(waits(told.failed));
      return;
    }
    const paper = el("div", {class: "strip-room"});
    const file = "/night/" + encodeURIComponent(night);
    room.replaceChildren(facts(told.night, latest()?.site.currency), paper, hourly(told.columns),
      el("p", {class: "row"}, told.night.report !== false && el("a", {href: file + ".html"}, "Report of this night, to print"), el("a", {href: file + ".csv", download: "night-" + night + ".csv"}, "All numbers (CSV)")),
      el("h2", null, "What was decided, and why"), log(told));
    if (times(told.columns).length) {
      take = draw(paper, nightStrip(told, paper.clientWidth || 360));
    }
  }

  (async () => {
    try {
      told = await get("/api/night/" + encodeURIComponent(night));
    } catch (failed) {
      told = {failed: "This night cannot be shown. " + failed.message};
    }
    show();
  })();
  return {update: () => {}, redraw: show, close: () => { closed = true; take?.(); }};
}

/** @param {Element} host @param {string} [night] "2026-01-27" */
export const open = (host, night) => (/^\d{4}-\d\d-\d\d$/.test(night || "") ? openNight(host, night) : openSeason(host));


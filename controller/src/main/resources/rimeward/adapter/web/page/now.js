/** The first sheet: are the plants safe, who holds the floor, what will tonight bring, what needs hands. Then the last day and the coming night. */

import {order} from "./asking.js";
import {el, fill, ledger, waits} from "./make.js";
import {dampPanel, hourly, hourTicks, join, pensOf, planPens, powerLanes, temperaturePanel, tellAt, times} from "./paper.js";
import {degreesRuler} from "./ruler.js";
import {draw} from "./strip.js";
import {get, hearing, latest, listen} from "./wire.js";
import {chance, clockS, day, degrees, kilowattHours, money, number, percent, sentence, span, temperature} from "./words.js";

export const title = "Now";

const STAMP = {safe: "Safe", near: "Near the floor", under: "Below the floor", unseen: "Not seen"};
const TRUST = {reduced: "some readings are missing", blind: "no inside reading can be believed"};
const KIND = {safe: "safe", near: "near", under: "under"}; // of stamp; all else is dotted
const DAY_AGAIN_MS = 2000; // between two looks at the last day, at most; matters only where time runs fast

function row(name, id) {
  const body = el("div", {class: "body"});
  return {body, node: el("section", {class: "entry", id, "aria-labelledby": id + "-head"}, el("h2", {id: id + "-head"}, name), body)};
}

/** A stretch of words that says whether the coldest bench rises or falls. */
function drift(kPerH) {
  if (kPerH === undefined) {
    return "";
  }
  return Math.abs(kPerH) < 0.1 ? "steady" : (kPerH < 0 ? "falling " : "rising ") + span(Math.abs(kPerH)) + " an hour";
}

function plants(now, hears) {
  const {plants} = now;
  const isOld = hears.state === "lost" || hears.state === "stands";
  const notes = ["coldest" + (plants.coldestSensor ? ": " + plants.coldestSensor : " bench"), drift(plants.slopeKPerH), TRUST[plants.trust]];
  return [
    el("div", {class: "verdict"},
      el("p", {class: "stamp " + (isOld ? "old" : KIND[plants.state] || "old")}, isOld ? "Not heard" : STAMP[plants.state] || plants.state),
      el("b", {class: "reading"}, temperature(plants.coldestC)),
      el("span", {class: "fine-print"}, notes.filter(Boolean).join("; "))),
    el("p", {class: "says"}, isOld ? "Last heard at " + clockS(now.epochS) + ": " : "", sentence(plants.sentence))
  ];
}

function points(now) {
  const {plants, air, outside} = now;
  return [
    outside.airC !== undefined && {name: "outside", airC: outside.airC, ink: "outside"},
    air.dewPointC !== undefined && {name: "dew point", airC: air.dewPointC, ink: "dew"},
    plants.coldestC !== undefined && {name: "coldest", airC: plants.coldestC, ink: "coldest"}
  ].filter(Boolean);
}

function holding(now) {
  return [
    el("p", {class: "says"}, sentence(now.holding.sentence)),
    el("ul", {class: "machines"}, (now.holding.machines || []).map(m =>
      el("li", {class: m.closed ? "on" : "off"}, el("i", {class: "box", "aria-hidden": "true"}), m.id + (m.closed ? " on" : " off"))))
  ];
}

function tonight(now) {
  const t = now.tonight;
  if (t.waitingFor) {
    return waits(sentence(t.waitingFor));
  }
  const give = t.lowestSpreadK === undefined ? "" : " ±\u00a0" + number(t.lowestSpreadK * (degrees() === "F" ? 1.8 : 1));
  return [
    ledger([
      t.lowestC !== undefined && ["lowest bench", temperature(t.lowestC), el("small", null, give)],
      t.frostChancePercent !== undefined && ["chance of cold", chance(t.frostChancePercent)],
      t.kwh !== undefined && ["electricity", kilowattHours(t.kwh)],
      t.cost !== undefined && ["cost", money(t.cost, now.site.currency)]
    ], "ledger tight"),
    el("p", {class: "says small"}, firstOf(sentence(t.sentence)), " ", el("a", {href: "#tonight"}, "The plan"))
  ];
}

/** The first sentence: the numbers beside it say the rest. */
const firstOf = text => text.match(/^.*?[.!?](?= [A-Z]|$)/s)?.[0] ?? text;

/** @param {Object} each what needs hands, or an alert, with its incident */
const seen = each => el("button", {type: "button", click: () => order({order: "acknowledge", incident: each.incident})}, "I have seen it");

function hands(now) {
  if (!now.hands.length) {
    return el("p", {class: "says"}, "Nothing needs doing.");
  }
  const alertOf = job => now.alerts.find(a => a.incident === job.incident);
  return el("ol", {class: "jobs"}, now.hands.map(job => el("li", {class: String(job.severity || "").toLowerCase()},
    alertOf(job)?.title && el("b", null, alertOf(job).title + ". "), !alertOf(job)?.acknowledged && el("span", null, sentence(job.sentence)),
    job.incident && (alertOf(job)?.acknowledged ? el("em", null, "Seen; it stands below.") : seen(job)))));
}

function air(now) {
  const {air, outside} = now;
  return [
    el("p", {class: "says small"}, sentence(air.sentence)),
    ledger([
      ["humidity", percent(air.rhPercent), air.wettest && el("small", null, " " + air.wettest)],
      ["dew point", temperature(air.dewPointC)],
      ["coldest bench above it", span(air.dewGapK)],
      ["outside", temperature(outside.airC), outside.rhPercent !== undefined && el("small", null, " " + percent(outside.rhPercent))],
      ["lift over outside", span(outside.liftK)]
    ])
  ];
}

function alerts(now) {
  if (!now.alerts.length) {
    return el("p", null, "None stands.");
  }
  return el("ul", {class: "alerts"}, now.alerts.map(a => el("li", {class: String(a.severity).toLowerCase()},
    el("p", null, el("b", null, a.title || sentence(a.kind)), ", " + String(a.severity).toLowerCase() + ", since " + clockS(a.sinceEpochS) + " on " + day(a.sinceEpochS) + (a.subject ? ", " + a.subject : "")),
    el("p", null, sentence(a.text)),
    a.acknowledged ? el("p", {class: "fine-print"}, "Somebody has seen it.") : seen(a))));
}

function strip(data, plan, now, widthPx) {
  const pens = pensOf(data);
  const x = times(data);
  const expected = plan ? planPens(plan) : {x: [], pens: []};
  const later = expected.x.map((at, i) => i).filter(i => expected.x[i] > now.epochS);
  const cut = {x: later.map(i => expected.x[i]), pens: expected.pens.map(p => ({...p, values: later.map(i => p.values[i])}))};
  const hours = widthPx < 600 ? 12 : 24;
  const begun = x.find((_, i) => pens.temperatures.some(p => p.values[i] !== null)) ?? now.epochS - 3600;
  const from = Math.max(now.epochS - hours * 3600, begun);
  const to = Math.max(now.epochS + 60, cut.x.at(-1) ?? 0);
  const all = join({x, pens: pens.temperatures}, cut);
  const damp = pens.damp.map(p => ({...p, values: [...p.values, ...cut.x.map(() => null)]}));
  return {
    label: plan ? "The last hours and the coming night" : "The last hours",
    x: all.x, from, to, ticks: hourTicks(from, to, widthPx - 58), tell: tellAt, seam: plan ? now.epochS : undefined, stepBy: 900,
    panels: [temperaturePanel(all.pens, now.site.floorC, widthPx < 600 ? 180 : 240), dampPanel(damp, 80, dampLimits(now.site))],
    lanes: powerLanes(data)
  };
}

const dampLimits = site => (site.dryOnPercent === undefined ? [] : [{name: "dryer on", value: site.dryOnPercent, ink: "rh"}]);

/** @param {Element} host */
export function open(host) {
  const rows = {plants: row("The plants", "plants"), holding: row("Holding the floor", "holding"), tonight: row("Tonight", "tonight-row"), hands: row("Your hands", "hands-row")};
  const ruler = el("div", {class: "ruler-room"});
  const stripHead = el("h2", null, "The last hours");
  const paper = el("div", {class: "strip-room"});
  const under = el("div");
  const airRoom = el("div");
  const alertRoom = el("div");
  host.append(
    el("h1", {class: "unseen", tabindex: "-1"}, "Now"),
    el("div", {class: "book"}, Object.values(rows).map(r => r.node)),
    stripHead, paper, under,
    el("div", {class: "two"}, el("section", null, el("h2", null, "The air"), airRoom), el("section", null, el("h2", null, "Alerts"), alertRoom)));
  let data = null, plan = null, take = null, dayMs = -Infinity, closed = false;

  /** What cannot wait comes right after the plants; else it is last, and the lines keep their places. */
  function urge(isUrgent) {
    const {node} = rows.hands;
    if (node.classList.contains("urgent") !== isUrgent) {
      node.classList.toggle("urgent", isUrgent);
      (isUrgent ? rows.plants : rows.tonight).node.after(node);
    }
  }

  function show() {
    const now = latest(), hears = hearing();
    if (!now) {
      fill(rows.plants.body, [hears.state], () => waits(hears.state === "lost" ? "The controller does not answer. Nobody here knows how the plants are." : "Listening for the controller…"));
      return;
    }
    fill(rows.plants.body, [now.plants, now.site.floorC, hears.state, hears.state === "heard" ? 0 : now.epochS, degrees()], () => [plants(now, hears), ruler]);
    fill(ruler, [points(now), now.site.floorC, degrees(), ruler.clientWidth], () => degreesRuler(points(now), now.site.floorC, ruler.clientWidth || 300));
    fill(rows.holding.body, [now.holding, degrees()], () => holding(now));
    fill(rows.tonight.body, [now.tonight, degrees()], () => tonight(now));
    fill(rows.hands.body, [now.hands, now.alerts, degrees()], () => hands(now));
    urge(now.hands.some(h => /severe|extreme/i.test(h.severity || "")));
    fill(airRoom, [now.air, now.outside, degrees()], () => air(now));
    fill(alertRoom, [now.alerts, degrees()], () => alerts(now));
    if (data && now.epochS >= data.startEpochS + data.stepS * (times(data).length + 1) && performance.now() - dayMs > DAY_AGAIN_MS) {
      fetchDay();
    }
  }

  function redraw() {
    const now = latest();
    if (closed || !data || !now) {
      return;
    }
    take?.();
    take = null;
    if (!times(data).length) {
      paper.replaceChildren(waits("The strip begins with the first readings that are written down."));
      return;
    }
    stripHead.textContent = plan ? "The last hours and the coming night" : "The last hours";
    take = draw(paper, strip(data, plan, now, paper.clientWidth || 360));
    fill(under, [data, degrees()], () => hourly(data));
  }

  async function fetchDay() {
    dayMs = performance.now();
    try {
      data = await get("/api/day");
      redraw();
    } catch (failed) {
      paper.replaceChildren(waits("The last hours cannot be shown. " + failed.message));
    }
  }

  async function fetchPlan() {
    try {
      plan = (await get("/api/tonight")).plan ?? null;
      redraw();
    } catch {
      plan = null; // the strip then ends now; the row above says what is known
    }
  }

  const ends = [listen("now", () => { show(); if (!take) { redraw(); } }), listen("plan", fetchPlan)];
  show();
  fetchDay();
  fetchPlan();
  return {
    update: show,
    redraw: () => { show(); redraw(); },
    close: () => { closed = true; ends.forEach(end => end()); take?.(); }
  };
}

/** The plan of the coming night: how sure, who holds, what it costs, the airing window, the tank. */

import {order} from "./asking.js";
import {el, ledger, table, waits} from "./make.js";
import {hourTicks, dampPanel, PENS, planLanes, planPens, seconds, temperaturePanel, tellAt} from "./paper.js";
import {draw} from "./strip.js";
import {get, listen} from "./wire.js";
import {chance, clock, dayClock, kilowattHours, litres, money, number, percent, sentence, span, temperature, toReader} from "./words.js";

export const title = "Tonight";

const give = (figure, text) => [text(figure.value), el("small", null, " ± " + text(figure.spread))];
const giveDegrees = figure => [temperature(figure.value), el("small", null, " ± " + span(figure.spread))];

function stamp(plan) {
  const risky = plan.chanceCold >= plan.statedChance;
  return el("p", {class: "stamp " + (risky ? "under" : plan.chanceCold >= 0.01 ? "near" : "safe")}, risky ? "May get cold" : "Should hold");
}

function figures(plan) {
  return ledger([
    ["chance that the floor is not held", chance(100 * plan.chanceCold)],
    ["lowest on the coldest bench", giveDegrees(plan.lowestBenchC)],
    ["lowest outside", giveDegrees(plan.lowestOutsideC)],
    ["lowest with every machine off", giveDegrees(plan.lowestAllOffC)],
    ["electricity", give(plan.kWh, kilowattHours)],
    ["cost", give(plan.cost, v => money(v, plan.currency))],
    ["water collected", give(plan.litres, litres)],
    plan.tankLeftL !== undefined && ["tank", plan.tankFullAt ? "full at about " + clock(seconds(plan.tankFullAt)) : "lasts the night", el("small", null, " room for " + litres(plan.tankLeftL))],
    ["airing", plan.airing?.length ? plan.airing.map(a => clock(seconds(a.from)) + " to " + clock(seconds(a.to))).join(", ") : "no hour in which it pays"]
  ]);
}

function strip(plan, widthPx) {
  const {x, pens} = planPens(plan);
  const from = seconds(plan.hours[0].from);
  const to = seconds(plan.ends);
  const off = {name: "with every machine off", ink: "film", width: 1.4, dash: [2, 2], values: plan.hours.map(h => toReader(h.allOffC.value))};
  const rh = {name: "humidity", ...PENS.rh, values: plan.hours.map(h => h.rhPercent.value)};
  const airing = (plan.airing || []).map(a => ({from: seconds(a.from), to: seconds(a.to), share: 1}));
  return {
    label: "The plan of the night", x, from, to, ticks: hourTicks(from, to, widthPx - 58), tell: tellAt, stepBy: 3600,
    panels: [temperaturePanel([off, ...pens], plan.floorC, widthPx < 600 ? 200 : 280), dampPanel([rh], 80)],
    lanes: [...planLanes(plan), ...(airing.length ? [{name: "airing", ink: "dew", spells: airing}] : [])],
    marks: plan.tankFullAt ? [{at: seconds(plan.tankFullAt), text: "tank full", ink: "film"}] : []
  };
}

function byTheHour(plan) {
  return table("The plan by the hour", [
    {head: "from", cell: h => clock(seconds(h.from))},
    {head: "outside", cell: h => temperature(h.outsideC.value)},
    {head: "all off", cell: h => temperature(h.allOffC.value)},
    {head: "bench", cell: h => temperature(h.benchC.value)},
    {head: "humidity", cell: h => percent(h.rhPercent.value)},
    {head: "kWh", cell: h => number(h.kWh.value, 2)},
    {head: "cost", cell: h => money(h.cost.value, plan.currency)},
    {head: "cold", cell: h => chance(100 * h.chanceCold)},
    {head: "who holds", words: true, cell: h => h.holder}
  ], plan.hours, "numbers");
}

function ways(plan) {
  return plan.alternatives?.length ? [el("h2", null, "Beside plainer ways"), el("ul", {class: "log-lines"}, plan.alternatives.map(a => el("li", null, "By this plan " + a.says)))] : [];
}

function lastNight(told) {
  return told.lastNight ? [el("h2", null, "The last night"), el("p", null, sentence(told.lastNight))] : [];
}

/** @param {Element} host */
export function open(host) {
  const room = el("div");
  const again = el("button", {type: "button", click: () => order({order: "planNow"})}, "Plan anew");
  host.append(el("h1", {tabindex: "-1"}, "Tonight"), room, el("p", {class: "row"}, again, " asks for the forecast and plans by it. A plan changes nothing: the heat goes by what the sensors show."));
  let take = null, told = null;

  function show() {
    take?.();
    take = null;
    if (!told) {
      return;
    }
    const {plan} = told;
    if (!plan) {
      room.replaceChildren(waits(sentence(told.waitingFor || "There is no plan.")), ...lastNight(told));
      return;
    }
    const paper = el("div", {class: "strip-room"});
    const says = (plan.says?.length ? plan.says : told.text) || [];
    const first = says[plan.guess && says.length > 1 ? 1 : 0]; // that it is a guess comes before it, and is said above
    const rest = says.filter(s => s !== first);
    room.replaceChildren(
      el("p", {class: "fine-print"}, "Made " + dayClock(seconds(plan.made)) + ", until " + dayClock(seconds(plan.ends)) + (plan.guess ? ". A guess, as said below." : ".")),
      el("div", {class: "verdict wide"}, stamp(plan), el("p", {class: "says"}, sentence(first))),
      el("ul", {class: "log-lines"}, rest.map(s => el("li", null, sentence(s)))),
      paper, figures(plan),
      el("h2", null, "By the hour"), byTheHour(plan),
      ...ways(plan), ...lastNight(told),
      el("p", {class: "fine-print"}, "It rests on: " + sentence(plan.restsOn) + ". “±” is one standard deviation: two nights out of three lie within it. The sun is left out."
        + (told.attribution ? " " + told.attribution : "")));
    if (plan.hours.length) {
      take = draw(paper, strip(plan, paper.clientWidth || 360));
    }
  }

  async function fetchPlan() {
    try {
      told = await get("/api/tonight");
    } catch (failed) {
      told = {waitingFor: "The plan cannot be shown. " + failed.message};
    }
    show();
  }

  const end = listen("plan", fetchPlan);
  fetchPlan();
  return {update: () => {}, redraw: show, close: () => { end(); take?.(); take = null; told = null; }};
}


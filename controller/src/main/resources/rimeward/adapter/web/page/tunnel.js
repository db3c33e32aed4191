/** The tunnel itself: what the nights taught of it, what insulation would change, and the heat-loss sheet. */

import {el, ledger, table, waits} from "./make.js";
import {filled, sureness} from "./ruler.js";
import {get} from "./wire.js";
import {money, number, sentence, temperature, watts} from "./words.js";

export const title = "Tunnel";

/** Names of what is learned; what is not here shows its own. */
const LEARNED = {
  heatLossWPerK: ["Heat lost for each kelvin", "W/K", 1],
  airCapacityJPerK: ["Heat held by air, film and leaves", "kJ/K", 0.001],
  massCapacityJPerK: ["Heat held by pots, benches and soil", "kJ/K", 0.001],
  massCouplingWPerK: ["Exchange between air and that mass", "W/K", 1],
  floorAreaM2: ["Floor", "m²", 1],
  volumeM3: ["Air inside", "m³", 1],
  skyLossW: ["Heat lost to a clear sky", "W", 1],
  sunShare: ["Share of the sun that comes in", "", 1]
};

const LOSSES = {
  roof_and_sides_W_per_K: "roof and sides",
  ends_W_per_K: "both ends",
  draughts_W_per_K: "draughts",
  ground_edge_W_per_K: "ground edge"
};

const number3 = value => number(value, Math.abs(value) < 10 ? 2 : 0);
const plain = key => key.replace(/_/g, " ").replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();

function learnedRows(learned, assumed) {
  return Object.entries(learned).filter(([, f]) => f && typeof f.value === "number").map(([key, f]) => {
    const [name, unit, times] = LEARNED[key] || [plain(key), "", 1];
    const told = v => number3(v * times);
    const before = assumed?.[key]?.value ?? assumed?.[key];
    return el("div", {class: "learned"},
      el("dt", null, name),
      el("dd", null, el("b", null, told(f.value) + " " + unit),
        f.least !== undefined ? el("span", null, " between " + told(f.least) + " and " + told(f.most)) : "",
        typeof before === "number" ? el("span", {class: "fine-print"}, "; assumed at first: " + told(before)) : "",
        sureness(f, typeof before === "number" ? before : undefined)));
  });
}

function learnedPart(told) {
  if (!told.learned) {
    return [waits(sentence(told.waitingFor)), told.assumed && [el("p", null, "Until then these numbers of the settings hold:"),
      ledger(Object.entries(told.assumed).filter(([, v]) => typeof (v?.value ?? v) === "number").map(([key, v]) => {
        const [name, unit, times] = LEARNED[key] || [plain(key), "", 1];
        return [name, number3((v.value ?? v) * times) + " " + unit];
      }))]];
  }
  return [
    el("dl", {class: "learned-list"}, learnedRows(told.learned, told.assumed)),
    el("p", {class: "fine-print"}, (told.learned.nights !== undefined ? "Learned from " + told.learned.nights + " nights. " : "") + "The thick stroke is the likeliest value, the shaded reach holds it 19 times out of 20, the dotted stroke is what the settings say."),
    (told.learned.text || []).map(line => el("p", null, sentence(line)))
  ];
}

function losses(sheet) {
  const total = sheet.loss.total_W_per_K;
  return table("Where the heat goes", [
    {head: "part", cell: ([key]) => LOSSES[key] || plain(key)},
    {head: "W/K", cell: ([, v]) => number(v, 0)},
    {head: "share", cell: ([, v]) => number(100 * v / total, 0) + " %"},
    {head: "drawn", words: true, cell: ([, v]) => filled(v, total, "loss")}
  ], Object.entries(sheet.loss).filter(([key]) => key !== "total_W_per_K"), "numbers loss");
}

function measures(sheet) {
  const pays = m => m.payback_winters ?? m.payback_spells;
  const any = sheet.measures.some(m => m.saved_kWh !== undefined);
  return table("What insulation would change", [
    {head: "what is done", words: true, cell: m => m.what},
    {head: "loss after, W/K", cell: m => number(m.loss_after_W_per_K, 0)},
    {head: "less by", cell: m => number(100 * (1 - m.loss_after_W_per_K / sheet.loss.total_W_per_K), 0) + " %"},
    {head: "heater then", cell: m => watts(m.heater_after_W)},
    {head: "costs", cell: m => money(m.cost_money, sheet.currency)},
    ...(any ? [{head: "saves kWh", cell: m => number(m.saved_kWh, 0)}, {head: "saves", cell: m => money(m.saved_money, sheet.currency)}, {head: "paid back after", cell: m => number(pays(m), 1)}] : [])
  ], [...sheet.measures].sort((a, b) => a.loss_after_W_per_K - b.loss_after_W_per_K), "numbers");
}

const stages = s => (s ? s.each_W.map(w => number(w, 0)).join(" + ") + " W, holds down to " + temperature(s.holds_down_to_outside_C) + " outside" : "none");

function sheetPart(told) {
  const {sheet} = told;
  if (!sheet) {
    return [el("h2", null, "What insulation would change"), waits(sentence(told.sheetWhy || "The sheet waits for the tunnel's measures in the settings."))];
  }
  return [
    el("h2", null, "What insulation would change"), measures(sheet),
    el("h2", null, "Where the heat goes"), losses(sheet),
    el("p", null, "In all " + number(sheet.loss.total_W_per_K, 0) + " W for each kelvin, by the areas and what such covers usually lose."),
    el("h2", null, "Heater and circuit"),
    ledger([
      ["held at", temperature(sheet.heater.held_C)], ["heat needed", watts(sheet.heater.needed_W)], ["with margin", watts(sheet.heater.with_margin_W)],
      ["stages to buy", stages(sheet.heater.stages_to_buy)], ["the circuit carries for hours", watts(sheet.circuit.continuous_limit_W)],
      ["fits", sheet.circuit.fits ? "yes" : "no"], ["most that fits", stages(sheet.circuit.most_that_fits)]
    ], "ledger words"),
    el("ul", {class: "cautions"}, sheet.cautions.map(c => el("li", null, c)))
  ];
}

/** @param {Element} host */
export function open(host) {
  const room = el("div");
  host.append(el("h1", {tabindex: "-1"}, "Tunnel"), room);
  let told = null;
  const show = () => told && room.replaceChildren(...(told.failed ? [waits(told.failed)] : [el("h2", null, "What the nights taught"), ...learnedPart(told), ...sheetPart(told)]).flat(Infinity).filter(Boolean));
  (async () => {
    try {
      told = await get("/api/tunnel");
    } catch (failed) {
      told = {failed: "What is known of the tunnel cannot be shown. " + failed.message};
    }
    show();
  })();
  return {update: () => {}, redraw: show, close: () => { told = null; }};
}

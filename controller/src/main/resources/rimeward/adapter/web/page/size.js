/** The heat-loss sheet: asked with the tunnel's dimensions, which stay on this device; worked out by the controller. */

import {el, ledger, table, waits} from "./make.js";
import {filled} from "./ruler.js";
import {get, latest} from "./wire.js";
import {degreeSign, fromReader, keep, kept, kilowattHours, money, number, sentence, temperature, toReader, watts} from "./words.js";

const COVERS = [["single-film", "single film"], ["double-film", "double film, air between"], ["bubble-lined-film", "film lined with bubble film"], ["twin-wall", "twin wall"], ["glass", "glass"]];
const INSULATION = [["sealed-gaps", "gaps sealed"], ["edge-board", "foam board at the edge"]];
const LOSSES = {
  roof_and_sides_W_per_K: "roof and sides",
  ends_W_per_K: "both ends",
  draughts_W_per_K: "draughts",
  ground_edge_W_per_K: "ground edge"
};
/** Every input that is not asked for here: what it is called where the sheet says what it rests on. */
const INPUTS = {
  width_m: "width, m", length_m: "length, m", height_m: "height, m", eaves_m: "height of the eaves, m", cover_W_per_m2K: "roof and sides lose, W/m²K", ends_W_per_m2K: "ends lose, W/m²K",
  air_changes_per_h: "air changes an hour", edge_W_per_mK: "ground edge loses, W/mK", altitude_m: "altitude, m", floor_C: "floor", hold_above_K: "held above it, K", outside_C: "coldest night outside",
  margin_percent: "margin, %", voltage_V: "mains, V", fuse_A: "fuse, A", continuous_factor: "share of it for hours", other_load_W: "other load on it, W", price_per_kWh: "price of a kWh",
  bubble_price_per_m2: "bubble film, m²", film_price_per_m2: "film, m²", sealing_price_per_m: "sealing, m", board_price_per_m: "foam board, m", heated_share: "share heated, if only a part is"
};

/** What was last worked out, as it was asked for; temperatures in °C. */
function remembered() {
  try {
    const told = JSON.parse(kept("size"));
    return told && typeof told === "object" ? told : {};
  } catch {
    return {};
  }
}

const metres = (key, name, fine, required) => asked => [el("label", {for: "size-" + key}, name, fine && el("span", {class: "fine-print"}, " " + fine)),
  el("input", {type: "number", step: "any", min: 0, inputmode: "decimal", id: "size-" + key, name: key, required, value: asked[key]})];
const choice = (key, name, first) => asked => [el("label", {for: "size-" + key}, name),
  el("select", {id: "size-" + key, name: key}, first && el("option", {value: ""}, first), COVERS.map(([word, words]) => el("option", {value: word, selected: asked[key] === word}, words)))];
const coldest = asked => [el("label", {for: "size-outside_C"}, "Coldest night outside, " + degreeSign(), el("span", {class: "fine-print"}, " that you remember")),
  el("input", {type: "number", step: "any", inputmode: "decimal", id: "size-outside_C", name: "outside_C", value: asked.outside_C === undefined ? undefined : number(toReader(Number(asked.outside_C)), 1).replace("\u2212", "-")})];

const FIELDS = [metres("width_m", "Width, m", "", true), metres("length_m", "Length, m", "", true), metres("height_m", "Height, m", "to the highest point; else hoops are half circles"),
  metres("eaves_m", "Height of the eaves, m", "a ridge roof only"), choice("cover", "Roof and sides"), choice("ends", "Both ends", "as roof and sides"), coldest];

/** What the form holds, without what was left empty. */
function read(form) {
  const asked = {};
  for (const [key, value] of new FormData(form)) {
    if (value !== "") {
      asked[key] = key === "outside_C" ? String(Math.round(10 * fromReader(Number(value))) / 10) : key === "insulation" && asked.insulation ? asked.insulation + "," + value : value;
    }
  }
  return asked;
}

const stages = s => (s ? s.each_W.map(w => number(w, 0)).join(" + ") + "\u00a0W, holds down to " + temperature(s.holds_down_to_outside_C) + " outside" : "none");

function losses(sheet) {
  const total = sheet.loss.total_W_per_K;
  return table("Where the heat goes", [
    {head: "part", cell: ([key]) => LOSSES[key]},
    {head: "W/K", cell: ([, v]) => number(v, 0)},
    {head: "share", cell: ([, v]) => number(100 * v / total, 0) + " %"},
    {head: "drawn", words: true, cell: ([, v]) => filled(v, total, "loss")}
  ], Object.entries(sheet.loss).filter(([key]) => key in LOSSES), "numbers loss");
}

function measures(sheet) {
  const {recorded} = sheet;
  return table("What insulation would change", [
    {head: "what is done", words: true, cell: m => m.what},
    {head: "loss after, W/K", cell: m => number(m.loss_after_W_per_K, 0)},
    {head: "less by", cell: m => number(100 * (1 - m.loss_after_W_per_K / sheet.loss.total_W_per_K), 0) + " %"},
    {head: "heater then", cell: m => watts(m.heater_after_W)},
    {head: "costs about", cell: m => money(m.cost_money, sheet.currency)},
    ...(recorded ? [{head: "would have saved", cell: m => kilowattHours(m.saved_kWh) + ", " + money(m.saved_money, sheet.currency)}] : [])
  ], [...sheet.measures].sort((a, b) => a.loss_after_W_per_K - b.loss_after_W_per_K), "numbers");
}

function rests(sheet) {
  const told = {floor_C: temperature, outside_C: temperature};
  return el("details", null, el("summary", null, "What it rests on: " + sheet.assumed_inputs + " of " + Object.keys(sheet.inputs).length + " numbers are assumed"),
    table("What the sheet rests on", [
      {head: "number", words: true, cell: ([key]) => INPUTS[key] || key},
      {head: "value", cell: ([key, i]) => (told[key] ? told[key](i.value) : number(i.value, Math.abs(i.value) < 10 && !Number.isInteger(i.value) ? 2 : 0))},
      {head: "from", words: true, cell: ([, i]) => (i.basis === "assumed" ? "assumed: " : "") + sentence(i.from)}
    ], Object.entries(sheet.inputs), "plain"));
}

function worked(sheet) {
  const {recorded} = sheet;
  return [
    el("h3", null, "What insulation would change"), measures(sheet),
    el("p", {class: "fine-print"}, "Each by itself, material at shop prices that are guesses; together they save less than the sum." + (recorded ? " Saved of the " + kilowattHours(recorded.heat_kWh) + " (" + money(recorded.cost_money, sheet.currency) + ") that the heaters took in the " + recorded.nights + " nights of the record." : " What they save in money is told once the record holds nights that were heated.")),
    el("h3", null, "Where the heat goes"), losses(sheet),
    el("p", null, "In all " + number(sheet.loss.total_W_per_K, 0) + "\u00a0W for each kelvin, by the areas and what such covers usually lose. What the nights taught, above, goes before it."),
    el("h3", null, "Heater and circuit"),
    ledger([
      ["held at", temperature(sheet.heater.held_C)], ["heat needed", watts(sheet.heater.needed_W)], ["with margin", watts(sheet.heater.with_margin_W)],
      ["stages to buy", stages(sheet.heater.stages_to_buy)], ["the circuit carries for hours", watts(sheet.circuit.continuous_limit_W)],
      ["fits", sheet.circuit.fits ? "yes" : "no: less loss, or another circuit by an electrician"], ["most that fits", stages(sheet.circuit.most_that_fits)]
    ], "ledger words"),
    rests(sheet),
    el("ul", {class: "cautions"}, sheet.cautions.map(c => el("li", null, c)))
  ];
}

export function sheet() {
  const room = el("div", {"aria-live": "polite"}), formRoom = el("div");
  let asked = remembered(), told = null;

  const show = () => room.replaceChildren(...(told ? [told.failed ? told.failed.split("\n").map(line => waits(sentence(line))) : worked(told)] : [waits("Give its width and length: then it says what the tunnel loses, what heater and circuit it needs, and what insulation would change.")]).flat(Infinity).filter(Boolean));

  async function ask() {
    try {
      told = await get("/api/size?" + new URLSearchParams(asked));
    } catch (refused) {
      told = {failed: refused.message};
    }
    show();
  }

  function form() {
    const done = (asked.insulation || "").split(",");
    const submit = event => {
      event.preventDefault();
      asked = read(event.target);
      keep("size", JSON.stringify(asked));
      ask();
    };
    formRoom.replaceChildren(el("form", {class: "ask", submit},
      FIELDS.map(field => el("p", null, field(asked))),
      el("fieldset", null, el("legend", null, "Done already"), INSULATION.map(([word, words]) => el("label", null, el("input", {type: "checkbox", name: "insulation", value: word, checked: done.includes(word)}), " " + words))),
      el("button", {type: "submit"}, "Work it out")));
  }

  form();
  show();
  if (asked.width_m && asked.length_m) {
    ask();
  }
  return {
    node: el("section", {id: "size"}, el("h2", null, "Heat-loss sheet"), el("p", null, "From dimensions and kinds of cover, for thinking about heaters and insulation; floor, circuit and prices are the settings'" + (latest() ? " of " + latest().site.name : "") + ". Nothing asked here changes what the controller does."), formRoom, room),
    redraw: () => { form(); show(); }
  };
}

/** Hands and wiring: what hangs on the tunnel, how far it is believed, what the machines did, and the few things a person may ask for. */

import {order} from "./asking.js";
import {el, fill, ledger, table, waits} from "./make.js";
import {filled} from "./ruler.js";
import {get, latest, listen} from "./wire.js";
import {clock, dayClock, degrees, degreeSign, fromReader, lasting, litres, number, sentence, temperature, toReader, watts} from "./words.js";

export const title = "Hands and wiring";

const AGAIN_MS = 5000; // between two looks while the sheet is open. Own choice
const SERVICE_MIN = [15, 30, 60, 120, 240]; // the longest is what control allows

function sensors(told) {
  return table("Sensors", [
    {head: "sensor", words: true, cell: s => s.id},
    {head: "where", words: true, cell: s => s.place || "–"},
    {head: "says", words: true, cell: s => (s.what === undefined ? "nothing" : sentence(s.what))},
    {head: "age", cell: s => lasting(s.ageS)},
    {head: "trust", words: true, cell: s => el("span", null, el("b", {class: "trust " + s.trust}, s.trust), s.why && s.trust !== "believed" ? el("span", {class: "fine-print"}, " " + sentence(s.why)) : "")}
  ], told.sensors, "plain");
}

function service(machine) {
  const until = machine.standDownUntilEpochS;
  if (until !== undefined) {
    return el("span", null, "out of use until " + clock(until) + " ", el("button", {type: "button", click: () => order({order: "return", machine: machine.id})}, "Back into use"));
  }
  const minutes = el("select", {"aria-label": "How long " + machine.id + " is out of use"}, SERVICE_MIN.map(m => el("option", {value: m, selected: m === 30}, lasting(60 * m))));
  return el("span", {class: "service"}, minutes, el("button", {type: "button", "aria-label": "Out of use: " + machine.id, click: () => order({order: "standDown", machine: machine.id, minutes: Number(minutes.value)}, {
    head: "Take " + machine.id + " out of use?",
    text: "For " + lasting(60 * minutes.value) + " it stays off even if the plants freeze, because hands may be inside. The others go on as if it had failed. It comes back by itself. Before you open it, unplug it: a relay is no isolator."
  })}, "Out of use"));
}

function machines(told) {
  const down = told.standDown && el("p", {class: "row"}, "Out of use for service until " + clock(told.standDown.untilEpochS) + (told.standDown.machines ? ": " + told.standDown.machines : "") + ".",
    el("button", {type: "button", click: () => order({order: "return"})}, "All back into use"));
  return [down, table("Machines and their relays", [
    {head: "machine", words: true, cell: m => m.id},
    {head: "now", words: true, cell: m => el("span", {class: m.closed ? "on" : "off"}, el("i", {class: "box " + (m.closed ? "full" : ""), "aria-hidden": "true"}), m.closed ? "on" : "off")},
    {head: "rated", cell: m => watts(m.ratedW)},
    {head: "starts in 24 h", cell: m => number(m.starts24h, 0)},
    {head: "ran in 24 h", cell: m => (m.hours24h === undefined ? "–" : lasting(3600 * m.hours24h))},
    {head: "must rest still", cell: m => (m.restS > 0 ? lasting(m.restS) : "–")},
    {head: "why", words: true, cell: m => sentence(m.why)},
    {head: "for service", words: true, cell: service}
  ], told.machines, "plain")];
}

function tank(told) {
  const t = told.tank;
  if (!t) {
    return el("p", null, "No tank: there is no dryer, or its hose leads to a drain.");
  }
  return [
    t.litres !== undefined && filled(t.litres, t.capacityLitres, "water"),
    el("p", null, (t.litres === undefined ? "Nobody knows how full; it holds " : litres(t.litres) + " of ") + litres(t.capacityLitres) + (t.fullAtEpochS !== undefined ? "; full at about " + dayClock(t.fullAtEpochS) : "") + ". ", el("span", {class: "fine-print"}, sentence(t.why)))
  ];
}

const circuit = told => [
  filled(told.circuit.nowW, told.circuit.mostW, "load"),
  el("p", null, watts(told.circuit.nowW) + " of the " + watts(told.circuit.mostW) + " that the circuit may carry for hours.")
];

const upkeep = told => ledger([
  ["version", told.service.version], ["runs since", dayClock(told.service.startedEpochS)],
  ["record", told.service.recordFailing ? "cannot be written" : "is written"],
  ["broker", told.service.brokerFailing ? "is not reached" : "is reached, or none is set up"]
]);

const bound = (airC, round) => (airC === undefined ? undefined : round(2 * toReader(airC)) / 2);

/** Another floor; lower ones are asked about twice, because plants may suffer. */
function floorForm(now) {
  const input = el("input", {type: "number", step: "any", id: "floor", inputmode: "decimal", required: true, min: bound(now.site.floorLeastC, Math.ceil), max: bound(now.site.floorMostC, Math.floor), value: number(toReader(now.site.floorC), degrees() === "F" ? 0 : 1).replace("\u2212", "-")});
  const submit = event => {
    event.preventDefault();
    const airC = Math.round(10 * fromReader(Number(input.value))) / 10;
    const lower = airC < latest().site.floorC;
    order({order: "floor", airC}, {
      head: "Hold a floor of " + temperature(airC) + "?",
      text: (lower ? "That is lower than now: every plant in there must bear it. " : "That is higher than now, and costs more. ") + "It holds until the next order or other settings. Below the plants' own minimum the controller refuses it."
    });
  };
  return el("form", {class: "row", submit}, el("label", {for: "floor"}, "Floor, " + degreeSign() + " "), input, " ", el("button", {type: "submit"}, "Ask for it"),
    el("p", {class: "fine-print"}, "Now " + temperature(now.site.floorC) + ". " + sentence(now.site.floorPlants)));
}

/** @param {Element} host */
export function open(host) {
  const part = (name, id) => {
    const room = el("div", {id});
    return {room, nodes: [el("h2", null, name), room]};
  };
  const parts = {sensors: part("Sensors", "sensors"), machines: part("Machines and relays", "machines"), tank: part("The dryer's tank", "tank"), circuit: part("Load on the circuit", "circuit"),
    floor: part("Another floor", "floor-room"), service: part("The controller", "service")};
  const failed = el("div");
  host.append(el("h1", {tabindex: "-1"}, "Hands and wiring"), failed, ...parts.sensors.nodes, ...parts.machines.nodes,
    el("div", {class: "two"}, el("section", null, parts.tank.nodes), el("section", null, parts.circuit.nodes)), ...parts.floor.nodes, ...parts.service.nodes);
  let told = null, closed = false, fetchedMs = -Infinity;

  function show() {
    const now = latest();
    if (now) {
      fill(parts.floor.room, [now.site.floorC, now.site.floorPlants, degrees()], () => floorForm(now));
    }
    if (told) {
      fill(parts.sensors.room, [told.sensors, degrees()], () => sensors(told));
      if (!parts.machines.room.querySelector("select:focus")) {
        fill(parts.machines.room, [told.machines, told.standDown, degrees()], () => machines(told));
      }
      fill(parts.tank.room, told.tank, () => tank(told));
      fill(parts.circuit.room, told.circuit, () => circuit(told));
      fill(parts.service.room, told.service, () => upkeep(told));
    }
  }

  async function fetchHands() {
    fetchedMs = performance.now();
    try {
      const next = await get("/api/hands");
      if (closed) {
        return;
      }
      told = next;
      failed.replaceChildren();
      show();
    } catch (problem) {
      failed.replaceChildren(waits("This sheet cannot be brought up to date; what stands here is old. " + problem.message));
    }
  }

  const end = listen("now", () => {
    show();
    if (performance.now() - fetchedMs > AGAIN_MS) {
      fetchHands();
    }
  });
  show();
  fetchHands();
  return {update: () => {}, redraw: show, close: () => { closed = true; end(); }};
}

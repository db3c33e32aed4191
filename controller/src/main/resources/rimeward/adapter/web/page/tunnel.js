/** The tunnel itself: what the nights taught of it; the heat-loss sheet stands below. */

import {el, ledger, waits} from "./make.js";
import {sureness} from "./ruler.js";
import {sheet} from "./size.js";
import {get} from "./wire.js";
import {number, sentence} from "./words.js";

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

/** @param {Element} host */
export function open(host) {
  const room = el("div"), size = sheet();
  host.append(el("h1", {tabindex: "-1"}, "Tunnel"), room, size.node);
  let told = null;
  const show = () => told && room.replaceChildren(...(told.failed ? [waits(told.failed)] : [el("h2", null, "What the nights taught"), ...learnedPart(told)]).flat(Infinity).filter(Boolean));
  (async () => {
    try {
      told = await get("/api/tunnel");
    } catch (failed) {
      told = {failed: "What is known of the tunnel cannot be shown. " + failed.message};
    }
    show();
  })();
  return {update: () => {}, redraw: () => { show(); size.redraw(); }, close: () => { told = null; }};
}

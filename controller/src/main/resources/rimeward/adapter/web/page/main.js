/** Begins: takes up the line, turns the sheets, keeps the head of the page true. */

import {hearAnswer} from "./asking.js";
import * as hands from "./hands.js";
import * as now from "./now.js";
import * as record from "./record.js";
import * as tonight from "./tonight.js";
import * as tunnel from "./tunnel.js";
import {hearing, latest, listen, open, tend} from "./wire.js";
import {clock, clockS, day, degrees, keep, kept, lasting, setDegrees, setZone} from "./words.js";

const SHEETS = {now, tonight, record, tunnel, hands};
const byId = id => document.getElementById(id);
const main = byId("sheet");
let sheet = null;
let name = "";

function turn(isFirst) {
  const [wanted, rest] = location.hash.slice(1).split("/");
  name = Object.hasOwn(SHEETS, wanted) ? wanted : "now";
  sheet?.close();
  main.replaceChildren();
  main.dataset.sheet = name;
  sheet = SHEETS[name].open(main, rest);
  for (const link of document.querySelectorAll("nav a")) {
    if (link.getAttribute("href") === "#" + name) {
      link.setAttribute("aria-current", "page");
    } else {
      link.removeAttribute("aria-current");
    }
  }
  entitle();
  if (!isFirst) {
    scrollTo(0, 0);
    main.querySelector("h1")?.focus({preventScroll: true});
  }
}

function entitle() {
  document.title = SHEETS[name].title + ", " + (latest()?.site.name || "Rimeward");
}

let toldState = "";

/** How fresh the page is, in the head, and in a slip when it is not. */
function head() {
  const said = latest();
  const hears = hearing();
  const lost = byId("lost");
  const isOld = hears.state === "lost" || hears.state === "stands";
  document.body.dataset.hears = hears.state;
  byId("heard").textContent = hears.state === "listening" ? "listening…" : hears.state === "heard" ? "heard " + lasting(hears.ageS) + " ago" : "no longer heard";
  lost.hidden = !isOld;
  if (isOld) {
    const since = said ? "Last heard " + lasting(hears.ageS) + " ago, at " + clockS(said.epochS) + " there. What stands below is old." : "Nothing was heard since this page was opened.";
    lost.textContent = (hears.state === "stands" ? "The controller answers, but its readings stand still. " : "The controller is no longer heard. ") + since;
  }
  if (said) {
    byId("site").textContent = said.site.name;
    byId("date").textContent = day(said.epochS) + ", " + clock(said.epochS) + (said.clockTrusted ? "" : " (its clock was never set)");
  }
  if (toldState !== hears.state && toldState && !(toldState === "listening" && hears.state === "heard")) {
    byId("aloud").textContent = isOld ? "The controller is no longer heard." : "The controller is heard again.";
  }
  toldState = hears.state;
}

let plantsWere = "";

/** Read aloud only when the state of the plants changes. */
function aloud(said) {
  if (plantsWere && plantsWere !== said.plants.state) {
    byId("aloud").textContent = said.plants.sentence;
  }
  plantsWere = said.plants.state;
}

listen("now", said => {
  setZone(said.site.zone);
  const isFirst = !plantsWere;
  aloud(said);
  hearAnswer(said);
  head();
  if (isFirst) {
    entitle();
    sheet?.redraw();
  }
});

addEventListener("hashchange", () => turn(false));
addEventListener("dressed", () => sheet?.redraw());
addEventListener("beforeprint", () => { document.documentElement.dataset.paper = "day"; sheet?.redraw(); });
addEventListener("afterprint", () => dispatchEvent(new Event("dress")));
document.addEventListener("visibilitychange", () => { if (!document.hidden) { tend(); head(); } });

byId("degrees").value = degrees();
byId("degrees").addEventListener("change", event => { setDegrees(event.target.value); sheet?.redraw(); });
byId("paper").value = kept("paper");
byId("paper").addEventListener("change", event => { keep("paper", event.target.value); dispatchEvent(new Event("dress")); });
byId("print").addEventListener("click", () => print());

open();
turn(true);
setInterval(() => { tend(); head(); sheet?.update(); }, 1000);

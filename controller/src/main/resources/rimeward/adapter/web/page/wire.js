/**
 * The line to the controller: what it says now, and how long ago it was heard. Old values are never new ones: whoever shows them asks {@link hearing}.
 *
 * @typedef {{epochS: number, ageS?: number, clockTrusted: boolean, site: Object, plants: Object, holding: Object, air: Object, outside: Object,
 *   tonight: Object, hands: Object[], alerts: Object[], answer?: {epochS: number, granted: boolean, text?: string}}} Now as /api/now tells it
 */

/** Longer than any beat of control and shorter than anything that could happen to a plant, s. Own choice. */
const LOST_AFTER_S = 30;
/** When so long nothing came, the line is taken up anew, s. Own choice. */
const QUIET_S = 15;
/** After a line that was refused, ms. Own choice. */
const REST_MS = 4000;

/** @type {{now: Now|null, movedMs: number, saidMs: number}} */
const heard = {now: null, movedMs: -Infinity, saidMs: -Infinity};
const ears = {now: new Set(), plan: new Set(), nights: new Set()};
let source = null;
let begunMs = performance.now();

/** @returns {Now|null} */
export const latest = () => heard.now;

/** Calls back with each "now", "plan" or "nights"; what is returned ends that. */
export function listen(name, ear) {
  ears[name].add(ear);
  return () => ears[name].delete(ear);
}

const tell = (name, what) => ears[name].forEach(ear => ear(what));

/**
 * How long ago the controller's own time was seen to move on. "lost": what is shown is old. "stands": somebody answers, but control's time stands still.
 * @returns {{state: "listening"|"heard"|"lost"|"stands", ageS: number}}
 */
export function hearing() {
  const nowMs = performance.now();
  if (!heard.now) {
    return {state: nowMs - begunMs > LOST_AFTER_S * 1000 ? "lost" : "listening", ageS: (nowMs - begunMs) / 1000};
  }
  const ageS = (nowMs - heard.movedMs) / 1000;
  if (ageS <= LOST_AFTER_S) {
    return {state: "heard", ageS};
  }
  return {state: nowMs - heard.saidMs < LOST_AFTER_S * 1000 ? "stands" : "lost", ageS};
}

function take(text) {
  const said = JSON.parse(text);
  const nowMs = performance.now();
  heard.saidMs = nowMs;
  if (!heard.now || said.epochS !== heard.now.epochS) {
    heard.movedMs = nowMs - 1000 * (said.ageS ?? 0);
  }
  heard.now = said;
  tell("now", said);
}

/** Takes up the line, anew where there was one. */
export function open() {
  source?.close();
  begunMs = performance.now();
  const line = new EventSource("/api/live");
  line.addEventListener("now", event => take(event.data));
  line.addEventListener("plan", () => tell("plan"));
  line.addEventListener("nights", () => tell("nights"));
  line.addEventListener("error", () => {
    if (line.readyState === EventSource.CLOSED && source === line) { // refused, which a browser does not try again by itself
      setTimeout(() => source === line && open(), REST_MS);
    }
  });
  source = line;
}

/** Once a second from outside: a line on which nothing comes is taken up anew. */
export function tend() {
  const nowMs = performance.now();
  if (nowMs - Math.max(heard.saidMs, begunMs) > QUIET_S * 1000) {
    open();
  }
}

/** @returns {Promise<Object>} @throws {Error} with a sentence */
export async function get(path) {
  let reply;
  try {
    reply = await fetch(path, {headers: {Accept: "application/json"}});
  } catch {
    throw new Error("The controller does not answer.");
  }
  if (!reply.ok) {
    throw new Error(await refusal(reply));
  }
  return reply.json();
}

/** @returns {Promise<{status: number, error?: string}>} */
export async function post(order, token) {
  let reply;
  try {
    reply = await fetch("/api/ask", {
      method: "POST",
      headers: {"Content-Type": "application/json", Authorization: "Bearer " + token},
      body: JSON.stringify(order)
    });
  } catch {
    return {status: 0, error: "The controller does not answer. Nothing was asked for."};
  }
  return reply.status === 202 ? {status: 202} : {status: reply.status, error: await refusal(reply)};
}

async function refusal(reply) {
  try {
    return String((await reply.json()).error || "");
  } catch {
    return "The controller answers with " + reply.status + " and no reason.";
  }
}

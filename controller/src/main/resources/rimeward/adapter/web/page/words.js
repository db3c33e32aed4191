/** Numbers and times for people. Everything comes in as °C, K, W, s since 1970; the reader's own degrees and clock are put on here and nowhere else. */

let zone = "UTC";
let made = {};

export const MINUS = "\u2212";

/** Remembers a choice of the reader's on this device; a browser that keeps nothing forgets it. */
export function keep(name, value) {
  try {
    localStorage.setItem("rimeward." + name, value);
  } catch {
    // nothing to do: it holds until the page is closed
  }
}

export function kept(name) {
  try {
    return localStorage.getItem("rimeward." + name) || "";
  } catch {
    return "";
  }
}

let fahrenheit = (kept("degrees") || (/^en-US\b/.test(navigator.language) ? "F" : "C")) === "F";

export const degrees = () => (fahrenheit ? "F" : "C");

export function setDegrees(letter) {
  fahrenheit = letter === "F";
  keep("degrees", letter);
}

/** The clock of the place, not of the phone. */
export function setZone(name) {
  if (name !== zone) {
    try {
      new Intl.DateTimeFormat(undefined, {timeZone: name});
      zone = name;
    } catch {
      zone = "UTC"; // a zone this browser does not know
    }
    made = {};
  }
}

const isNumber = value => typeof value === "number" && Number.isFinite(value);

/** "−3.1"; "–" where nothing is known. */
export function number(value, decimals = 1) {
  if (!isNumber(value)) {
    return "–";
  }
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text.replace("-", MINUS);
}

export const toReader = airC => (fahrenheit ? airC * 9 / 5 + 32 : airC);
export const spanToReader = spanK => (fahrenheit ? spanK * 9 / 5 : spanK);
export const fromReader = value => (fahrenheit ? (value - 32) * 5 / 9 : value);
export const degreeSign = () => (fahrenheit ? "°F" : "°C");

const with_ = (text, unit) => (text === "–" ? text : text + "\u00a0" + unit);

export const temperature = (airC, decimals = 1) => with_(number(isNumber(airC) ? toReader(airC) : airC, decimals), degreeSign());
export const span = (spanK, decimals = 1) => with_(number(isNumber(spanK) ? spanToReader(spanK) : spanK, decimals), fahrenheit ? "°F" : "K");
export const percent = (value, decimals = 0) => with_(number(value, decimals), "%");
export const watts = value => with_(number(value, 0), "W");
export const kilowattHours = value => with_(number(value, 1), "kWh");
export const litres = value => with_(number(value, 1), "L");

/** A chance from 0 to 1 (or percent, where it says so). */
export function chance(percentValue) {
  if (!isNumber(percentValue)) {
    return "–";
  }
  return percentValue < 1 ? "below 1\u00a0%" : percentValue > 99 ? "above 99\u00a0%" : percent(percentValue);
}

export function money(value, currency) {
  if (!isNumber(value)) {
    return "–";
  }
  try {
    return new Intl.NumberFormat(undefined, {style: "currency", currency}).format(value);
  } catch {
    return with_(number(value, 2), currency || "");
  }
}

function format(name, options) {
  return made[name] ??= new Intl.DateTimeFormat(undefined, {timeZone: zone, ...options});
}

const at = epochS => new Date(epochS * 1000);

const is12h = new Intl.DateTimeFormat(undefined, {hour: "numeric"}).resolvedOptions().hour12;
const HOUR = is12h ? "numeric" : "2-digit";

export const clock = epochS => format("clock", {hour: HOUR, minute: "2-digit"}).format(at(epochS));
export const clockS = epochS => format("clockS", {hour: HOUR, minute: "2-digit", second: "2-digit"}).format(at(epochS));
export const hour = epochS => format("hour", {hour: HOUR}).format(at(epochS));
export const day = epochS => format("day", {weekday: "short", day: "numeric", month: "short"}).format(at(epochS));
export const dayClock = epochS => day(epochS) + ", " + clock(epochS);

/** Hour and minute at the place, for ruling the paper. @returns {[number, number]} */
export function hourMinute(epochS) {
  const parts = format("parts", {hourCycle: "h23", hour: "numeric", minute: "numeric"}).formatToParts(at(epochS));
  const part = type => Number(parts.find(p => p.type === type).value);
  return [part("hour"), part("minute")];
}

/** A night is named by the day on which it began: no clock, no zone. */
export function nightName(iso, options = {weekday: "short", day: "numeric", month: "short"}) {
  const date = new Date(iso + "T12:00:00Z");
  return Number.isNaN(date.getTime()) ? iso : new Intl.DateTimeFormat(undefined, {timeZone: "UTC", ...options}).format(date);
}

/** "12 s", "2 min 5 s", "3 h 10 min", "4 d 2 h". */
export function lasting(seconds) {
  if (!isNumber(seconds)) {
    return "–";
  }
  const s = Math.max(0, Math.round(seconds));
  const pair = (big, bigUnit, small, smallUnit) => big + "\u00a0" + bigUnit + (small ? " " + small + "\u00a0" + smallUnit : "");
  if (s < 60) {
    return s + "\u00a0s";
  }
  if (s < 600) {
    return pair(Math.floor(s / 60), "min", s % 60, "s");
  }
  if (s < 3600) {
    return Math.round(s / 60) + "\u00a0min";
  }
  return s < 172800
    ? pair(Math.floor(s / 3600), "h", Math.round(s % 3600 / 60) % 60, "min")
    : pair(Math.floor(s / 86400), "d", Math.floor(s % 86400 / 3600), "h");
}

/** The controller's own sentences tell °C and K; who reads °F gets them turned. */
export function sentence(text) {
  const plain = String(text ?? "");
  const turned = fahrenheit
    ? plain
      .replace(/([-\u2212]?\d+(?:\.\d+)?)\s?°C/g, (_, n) => temperature(Number(n.replace(MINUS, "-"))))
      .replace(/([-\u2212]?\d+(?:\.\d+)?)\s?K\b/g, (_, n) => span(Number(n.replace(MINUS, "-"))))
    : plain;
  const begun = turned.replace(/^[a-z]+(?=[ ,:;])/, word => word.charAt(0).toUpperCase() + word.slice(1)); // a machine's name keeps its letters
  return begun.replace(/(^|[\s(])-(?=\d)/g, "$1" + MINUS).replace(/(\d) (?=(?:°[CF]|%|[KWL]|kWh|min)(?!\w))/g, "$1\u00a0");
}

/** Makes nodes. All text goes in as text, whoever wrote it: there is no way here to put in markup. */

const SVG = "http://www.w3.org/2000/svg";

/** @typedef {Node|string|number|null|undefined|false} Child */

/**
 * @param {string} tag
 * @param {Object<string, *>|null} props attributes; a function is a listener for the event of that name; true is an empty attribute; undefined, null and false leave it out
 * @param {...(Child|Child[])} children
 */
export function el(tag, props, ...children) {
  return dress(document.createElement(tag), props, children);
}

/** The same for a drawing. */
export function svg(tag, props, ...children) {
  return dress(document.createElementNS(SVG, tag), props, children);
}

function dress(node, props, children) {
  for (const [name, value] of Object.entries(props || {})) {
    if (typeof value === "function") {
      node.addEventListener(name, value);
    } else if (value !== undefined && value !== null && value !== false) {
      node.setAttribute(name, value === true ? "" : String(value));
    }
  }
  node.append(...children.flat(Infinity).filter(isThere).map(c => (c instanceof Node ? c : String(c))));
  return node;
}

const isThere = child => child !== null && child !== undefined && child !== false;

const drawnFrom = new WeakMap();

/**
 * Fills a node anew, but only when what it shows has changed: what has the focus keeps it.
 * @param {Element} node
 * @param {*} seen everything the content depends on, as JSON
 * @param {() => Child|Child[]} build
 */
export function fill(node, seen, build) {
  const text = JSON.stringify(seen) ?? "";
  if (drawnFrom.get(node) !== text) {
    drawnFrom.set(node, text);
    node.replaceChildren(...[build()].flat(Infinity).filter(isThere).map(c => (c instanceof Node ? c : String(c))));
  }
}

/**
 * A ruled table. Numbers stand right.
 * @param {string} caption
 * @param {{head: string, cell: function(*): Child, words?: boolean}[]} columns the first is each row's head
 * @param {Array} rows
 * @param {string} [kind] class
 */
export function table(caption, columns, rows, kind = "") {
  return el("div", {class: "scroll", tabindex: "0", role: "group", "aria-label": caption},
    el("table", {class: kind},
      el("caption", {class: "unseen"}, caption),
      el("thead", null, el("tr", null, columns.map(c => el("th", {scope: "col", class: c.words ? "words" : undefined}, c.head)))),
      el("tbody", null, rows.map(row => el("tr", null, columns.map((c, i) =>
        el(i ? "td" : "th", {scope: i ? undefined : "row", class: c.words ? "words" : undefined, "data-head": c.head}, c.cell(row))))))));
}

/** Name and value pairs as a ledger. @param {(Array<Child>|null|false|undefined)[]} pairs */
export function ledger(pairs, kind = "ledger") {
  return el("dl", {class: kind}, pairs.filter(isThere).map(([name, ...value]) => el("div", null, el("dt", null, name), el("dd", null, value))));
}

/** What stands where something does not exist yet. */
export const waits = sentence => el("p", {class: "waits"}, sentence);

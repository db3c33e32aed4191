/** Asking the controller for something: the token once a tab, a second look where plants could suffer, and the answer in words. */

import {post} from "./wire.js";
import {sentence} from "./words.js";

const TOKEN = "rimeward.token";
const byId = id => document.getElementById(id);
let held = null; // where a browser keeps nothing

function token() {
  try {
    return sessionStorage.getItem(TOKEN) || held;
  } catch {
    return held;
  }
}

function holdToken(text) {
  held = text;
  try {
    if (text) {
      sessionStorage.setItem(TOKEN, text);
    } else {
      sessionStorage.removeItem(TOKEN);
    }
  } catch {
    // it is held for as long as the page is open
  }
}

/** Opens a slip; true when it was sent, false when it was left. */
function ask(dialog) {
  return new Promise(resolve => {
    const form = dialog.querySelector("form");
    const no = dialog.querySelector("[data-no]");
    const end = said => {
      form.removeEventListener("submit", yes);
      dialog.removeEventListener("close", left);
      no.removeEventListener("click", left);
      if (dialog.open) {
        dialog.close();
      }
      resolve(said);
    };
    const yes = event => {
      event.preventDefault();
      end(true);
    };
    const left = () => end(false);
    form.addEventListener("submit", yes);
    dialog.addEventListener("close", left);
    no.addEventListener("click", left);
    dialog.showModal();
  });
}

async function shownToken() {
  if (!token()) {
    const input = byId("token");
    input.value = "";
    if (await ask(byId("slip-token"))) {
      holdToken(input.value.trim());
    }
    input.value = "";
  }
  return token();
}

function isSure(question) {
  byId("sure-head").textContent = question.head;
  byId("sure-text").textContent = question.text;
  return ask(byId("slip-sure"));
}

/** A line under the head of the page, read aloud. */
export function say(text, kind = "") {
  const slip = byId("answer");
  slip.hidden = false;
  slip.className = "slip " + kind;
  slip.querySelector("p").textContent = text;
  byId("aloud").textContent = text;
}

/**
 * @param {Object} order as /api/ask takes it
 * @param {{head: string, text: string}} [question] asked first
 */
export async function order(order, question) {
  if (question && !(await isSure(question))) {
    return;
  }
  const shown = await shownToken();
  if (!shown) {
    say("Nothing was asked for: the controller wants the token.", "no");
    return;
  }
  const reply = await post(order, shown);
  if (reply.status === 202) {
    say("Asked. The controller answers at its next beat.");
    return;
  }
  if (reply.status === 401 || reply.status === 403) {
    holdToken(null);
  }
  say("Refused: " + sentence(reply.error), "no");
}

let answeredS = null;

/** Shows an answer that is new since this page was opened. @param {import("./wire.js").Now} now */
export function hearAnswer(now) {
  const atS = now.answer?.epochS ?? 0;
  if (answeredS !== null && atS > answeredS) {
    const text = sentence(now.answer.text || (now.answer.granted ? "It is done." : "The controller gives no reason."));
    say((now.answer.granted ? "Done: " : "Refused: ") + text, now.answer.granted ? "yes" : "no");
  }
  answeredS = Math.max(atS, answeredS ?? 0);
}

byId("answer").querySelector("button").addEventListener("click", () => {
  byId("answer").hidden = true;
});

// Joins the parts: asks for what is new, keeps the tabs, sends what is typed and pressed.

import { ClockBar, Times } from "./clock.js";
import { Record, el, short } from "./record.js";

const times = new Times();
const seats = new Map(); // key → { seat, tab, panel, record, unseen, … }
const shown = {}; // side → key of the open tab
let bar;
let run; // which start of the demo this page belongs to

async function post(path, body) {
  const answer = await fetch(`/demo/${path}`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
  const data = await answer.json();
  if (!answer.ok) throw new Error(data.error);
  return data;
}

function trouble(words) {
  const line = document.getElementById("trouble");
  line.hidden = !words;
  line.textContent = words ? `That did not work: ${words}` : "";
}

// -- tabs: one list a side; on a narrow screen only the side in front is shown

function open(key, focus = false) {
  const { side } = seats.get(key);
  shown[side] = key;
  document.body.dataset.front = side;
  for (const [other, s] of seats) {
    const on = shown[s.side] === other;
    s.panel.hidden = !on;
    s.tab.setAttribute("aria-selected", String(on));
    s.tab.tabIndex = on ? 0 : -1;
    if (on && visible(s)) seen(s);
  }
  const here = seats.get(key);
  if (focus) here.tab.focus();
  toNewest(here);
  if (key === "log") loadLog();
}

function visible(s) {
  return !s.panel.hidden && s.panel.offsetParent !== null;
}

function seen(s) {
  s.unseen = 0;
  s.count.textContent = "";
}

function addTab(key, side, label, role) {
  const tabs = document.querySelector(`.tabs [data-side=${side}]`);
  const panel = document.getElementById("seat").content.firstElementChild.cloneNode(true);
  const count = el("span", { class: "count" });
  const tab = el("button", { type: "button", role: "tab", id: `tab-${key}`, "aria-controls": `sheet-${key}`,
    onclick: () => open(key) }, el("span", { class: "name" }, label),
    role ? el("span", { class: "role" }, role) : null, count);
  tab.addEventListener("keydown", (event) => step(event, side, key));
  panel.id = `sheet-${key}`;
  panel.setAttribute("aria-labelledby", tab.id);
  panel.querySelector(".roll").setAttribute("aria-label", label);
  tabs.append(tab);
  document.querySelector(`.side[data-side=${side}]`).append(panel);
  const roll = panel.querySelector(".roll");
  const made = { side, label, tab, panel, count, roll, unseen: 0, follows: true, atEnd: true, top: 0 };
  roll.addEventListener("scroll", () => {
    const near = roll.scrollHeight - roll.scrollTop - roll.clientHeight < 60;
    if (near) made.follows = made.atEnd = true;
    else if (roll.scrollTop < made.top) made.follows = made.atEnd = false; // someone reads above
    made.top = roll.scrollTop;
  });
  // Whoever reads the end stays there, also when a picture arrives late.
  const stay = new ResizeObserver(() => { if (made.atEnd) roll.scrollTop = roll.scrollHeight; });
  stay.observe(roll);
  stay.observe(panel.querySelector(".record"));
  seats.set(key, made);
  return made;
}

function step(event, side, key) {
  const keys = [...seats].filter(([, s]) => s.side === side).map(([k]) => k);
  const at = keys.indexOf(key);
  const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: keys.length - 1 }[event.key];
  if (to === undefined) return;
  event.preventDefault();
  open(keys.at(to % keys.length), true);
}

// -- a chat

function addSeat(seat) {
  const s = addTab(seat.key, seat.side, seat.label, seat.role);
  s.seat = seat;
  const form = s.panel.querySelector(".write");
  s.words = form.querySelector("textarea");
  form.querySelector(".words span").textContent =
    seat.users.length > 1 ? `Write in ${seat.label}` : `Write as ${seat.users[0]}`;
  const as = form.querySelector(".as");
  as.hidden = seat.users.length < 2;
  seat.users.forEach((name, i) => as.querySelector("select").append(el("option", { value: i }, name)));
  s.user = () => Number(as.querySelector("select").value || 0);
  s.record = new Record(s.panel.querySelector(".record"), seat, times, {
    answer: (message) => aim(s, { answers: message.id }, `Answering: ${short(message.text, 60)}`),
    correct: (message) => aim(s, { message: message.id }, "Correcting your message", message.text),
    press: (message, button, node) => press(s, message, button, node),
    guests: () => [...seats.values()].filter((g) => g.seat?.private && g.side === "home")
      .map((g) => g.seat),
    join: (guest, payload) => join(guest.key, payload),
  });
  form.addEventListener("submit", (event) => { event.preventDefault(); send(s); });
  s.words.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && !event.shiftKey && !event.isComposing) {
      event.preventDefault();
      send(s);
    }
    if (event.key === "Escape") aim(s, null);
  });
  form.querySelector(".drop").addEventListener("click", () => aim(s, null));
  addAttachments(s, form);
  const joining = s.panel.querySelector(".join-form");
  joining.querySelector(".invite-for").textContent = `Invitation for ${seat.users[0]}`;
  joining.addEventListener("submit", (event) => {
    event.preventDefault();
    join(seat.key, joining.elements.payload.value);
  });
}

function addAttachments(s, form) {
  const attach = form.querySelector(".attach");
  const choices = attach.querySelector(".choices");
  const file = attach.querySelector("input");
  s.samples = (labels) => {
    if (choices.children.length > 1 || !labels.length) return;
    choices.prepend(...labels.map((label) => el("button", { type: "button", onclick: async () => {
      attach.open = false;
      await doing(() => post("sample", { seat: s.seat.key, user: s.user(), label }));
    } }, label)));
  };
  file.addEventListener("change", async () => {
    const [chosen] = file.files;
    if (!chosen) return;
    attach.open = false;
    const query = new URLSearchParams({
      seat: s.seat.key, user: s.user(), name: chosen.name, caption: s.words.value,
    });
    await doing(async () => {
      const answer = await fetch(`/demo/upload?${query}`, {
        method: "POST",
        headers: { "content-type": chosen.type || "application/octet-stream" },
        body: chosen,
      });
      if (!answer.ok) throw new Error((await answer.json()).error);
      s.words.value = "";
    });
    file.value = "";
  });
}

async function doing(act) {
  trouble("");
  try { return await act(); } catch (error) { trouble(error.message); }
}

function aim(s, target, words = "", text) {
  s.target = target;
  const line = s.panel.querySelector(".about-to");
  line.hidden = !target;
  line.firstElementChild.textContent = words;
  if (text !== undefined) s.words.value = text;
  else if (!target) s.words.value = "";
  if (target) s.words.focus();
}

async function send(s) {
  const text = s.words.value.trim();
  if (!text) { s.words.focus(); return; }
  const body = { seat: s.seat.key, user: s.user(), text, ...s.target };
  await doing(async () => {
    await post(s.target?.message ? "edit" : "say", body);
    aim(s, null);
  });
}

async function press(s, message, button, node) {
  node.setAttribute("aria-busy", "true");
  const body = { seat: s.seat.key, user: s.user(), message: message.id, data: button.data };
  const done = await doing(() => post("press", body));
  node.removeAttribute("aria-busy");
  if (!done) return;
  const heard = s.panel.querySelector(".heard");
  heard.textContent = done.answer ?? "The bot has not answered yet. It will see the press when it runs.";
  clearTimeout(s.hush);
  s.hush = setTimeout(() => { heard.textContent = ""; }, 6000);
}

async function join(key, payload) {
  await doing(async () => {
    await post("start", { seat: key, payload });
    open(key);
  });
}

// To the end; to the beginning of the newest entry when it is longer than the sheet.
function toNewest(s) {
  const newest = s.roll.querySelector(".record > :last-child");
  s.follows = true;
  s.atEnd = !newest || newest.offsetHeight <= s.roll.clientHeight;
  s.roll.scrollTop = s.atEnd ? s.roll.scrollHeight : newest.offsetTop;
  s.top = s.roll.scrollTop;
}

function showSeat(seat) {
  const s = seats.get(seat.key);
  let added = 0;
  let fresh = false;
  for (const message of seat.messages) {
    if (!s.record.put(message)) continue;
    fresh = true;
    if (!message.mine) added += 1;
  }
  s.panel.querySelector(".empty").hidden = s.record.entries.size > 0;
  s.panel.querySelector(".join-form").hidden = seat.open || !seat.private;
  s.panel.querySelector(".write").hidden = !seat.open && seat.private;
  if (fresh && s.follows) toNewest(s);
  if (visible(s)) return;
  s.unseen += added;
  s.count.replaceChildren(...(s.unseen
    ? [String(s.unseen), el("span", { class: "spoken" }, " new")] : []));
}

// -- the log

function addLog() {
  const s = addTab("log", "clinic", "Log", "");
  for (const node of s.panel.querySelectorAll("form, .heard")) node.remove();
  s.panel.querySelector(".empty").textContent = "The log is empty.";
  s.list = s.panel.querySelector(".record");
  s.list.classList.add("log");
}

async function loadLog() {
  const s = seats.get("log");
  if (s.loading) return;
  s.loading = true;
  try {
    const { lines } = await (await fetch("/demo/log")).json();
    let last;
    const items = [];
    for (const { at, author, kind, text, data, ...others } of lines) {
      const rest = { ...others, ...data };
      const when = Date.parse(at);
      if (times.day(when) !== last) {
        last = times.day(when);
        items.push(el("li", { class: "day" }, el("h3", {}, el("b", {}, `Day ${last}`), ` ${times.date(when)}`)));
      }
      const more = Object.entries(rest).filter(([, v]) => v != null && v !== "");
      items.push(el("li", { class: "entry" }, el("time", { datetime: at }, times.time(when)),
        el("div", { class: "body" },
          el("p", { class: "who" }, author, el("span", { class: "mark" }, ` · ${kind}`)),
          el("p", { class: "words" }, text ?? ""),
          more.length ? el("p", { class: "more" },
            more.map(([k, v]) => `${k}: ${typeof v === "string" ? v : JSON.stringify(v)}`).join(" · ")) : null)));
    }
    s.list.replaceChildren(...items);
    s.panel.querySelector(".empty").hidden = lines.length > 0;
  } catch { trouble("the log could not be read; it is asked for again with the next change"); }
  s.loading = false;
}

// -- what is new

function show(state) {
  run ??= state.run;
  if (run !== state.run) window.location.reload(); // the demo was started again
  times.set(state);
  if (!bar) {
    bar = new ClockBar(times, post, trouble);
    document.getElementById("intro").open = window.matchMedia("(min-width: 60rem)").matches
      && state.seats.every((seat) => seat.messages.length < 12);
    state.seats.forEach(addSeat);
    addLog();
    for (const side of ["clinic", "home"]) open([...seats].find(([, s]) => s.side === side)[0]);
  }
  document.getElementById("patient").textContent = state.patient;
  document.getElementById("about").textContent = state.about;
  bar.show(state);
  for (const seat of state.seats) {
    seats.get(seat.key).samples(state.samples);
    showSeat(seat);
  }
  if (visible(seats.get("log"))) loadLog();
}

async function follow() {
  let rev = 0;
  let moves = -1;
  let lost = false;
  for (;;) {
    try {
      const answer = await fetch(`/demo/changes?since=${rev}&moves=${moves}&run=${run ?? ""}`);
      const state = await answer.json();
      ({ rev, moves } = state);
      show(state);
      if (lost) trouble("");
      lost = false;
    } catch {
      lost = true;
      trouble("the demo does not answer. Is it still running in its terminal?");
      await new Promise((resolve) => { setTimeout(resolve, 1000); });
    }
  }
}

window.addEventListener("resize", () => {
  for (const s of seats.values()) if (visible(s)) seen(s);
});
follow();

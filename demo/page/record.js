// One chat as a ruled record: entries by day, with their buttons, answers and pictures.

const INVITE = /https:\/\/t\.me\/\S+[?&]start=([A-Za-z0-9_-]{1,64})/g;

export function el(name, attributes = {}, ...children) {
  const node = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith("on")) node.addEventListener(key.slice(2), value);
    else if (value === true) node.setAttribute(key, "");
    else if (value !== false && value != null) node.setAttribute(key, value);
  }
  node.append(...children.filter((child) => child != null));
  return node;
}

export class Record {
  // `seat` is the server's; `times` writes dates; `act` does what a button asks for.
  constructor(list, seat, times, act) {
    Object.assign(this, { list, seat, times, act, entries: new Map() });
  }

  put(message) {
    const old = this.entries.get(message.id);
    if (message.deleted) {
      old?.remove();
      this.entries.delete(message.id);
      return false;
    }
    const entry = this.entry(message);
    this.entries.set(message.id, entry);
    if (old) {
      const held = old.contains(document.activeElement) ? document.activeElement : null;
      old.replaceWith(entry);
      if (held) this.holdFocus(entry, held.textContent);
      return false;
    }
    this.dayHeading(message.at);
    this.list.append(entry);
    return true;
  }

  holdFocus(entry, words) {
    const buttons = [...entry.querySelectorAll("button")];
    const same = buttons.find((button) => button.textContent === words);
    if (same ?? buttons[0]) (same ?? buttons[0]).focus();
    else { entry.tabIndex = -1; entry.focus(); }
  }

  dayHeading(at) {
    const day = this.times.day(at);
    if (day === this.lastDay) return;
    this.lastDay = day;
    this.list.append(
      el("li", { class: "day" }, el("h3", {}, el("b", {}, `Day ${day}`), ` ${this.times.date(at)}`)),
    );
  }

  entry(message) {
    const kind = message.service ? "service" : message.bot ? "bot" : message.mine ? "mine" : "other";
    const time = this.times.time(message.at);
    const item = el("li", { class: `entry ${kind}`, "data-id": message.id });
    item.append(el("time", { datetime: new Date(message.at).toISOString() }, time));
    const body = el("div", { class: "body" });
    item.append(body);
    if (message.service) {
      body.append(el("p", { class: "words" }, message.service));
      return item;
    }
    body.append(el("p", { class: "who" }, message.who,
      message.edited ? el("span", { class: "mark" }, message.bot ? " · updated" : " · corrected") : null));
    if (message.answers) {
      body.append(el("blockquote", {}, `${message.answers.who}: ${short(message.answers.text)}`));
    }
    if (message.file) body.append(this.file(message));
    if (message.text) body.append(this.words(message.text));
    if (message.buttons.length) body.append(this.buttons(message));
    const asides = el("p", { class: "asides" });
    if (message.bot) {
      asides.append(this.aside("Answer", message, time, () => this.act.answer(message)));
    } else if (message.mine) {
      asides.append(this.aside("Correct", message, time, () => this.act.correct(message)));
    }
    if (asides.children.length) body.append(asides);
    return item;
  }

  aside(label, message, time, onclick) {
    const spoken = `${label} the message of ${time} by ${message.who}`;
    return el("button", { type: "button", class: "plain", "aria-label": spoken, onclick }, label);
  }

  words(text) {
    const words = el("p", { class: "words" }, text);
    const codes = [...text.matchAll(INVITE)].map((match) => match[1]);
    if (!codes.length) return words;
    const open = el("p", { class: "open-link" });
    for (const guest of this.act.guests()) {
      const onclick = () => this.act.join(guest, codes[0]);
      open.append(el("button", { type: "button", onclick }, `Open the link as ${guest.label}`));
    }
    return el("div", {}, words, open);
  }

  buttons(message) {
    const rows = el("div", { class: "rows", role: "group", "aria-label": "Answers" });
    for (const row of message.buttons) {
      const line = el("div", { class: "row" });
      for (const button of row) {
        if (button.url) {
          const to = { href: button.url, rel: "noreferrer noopener", target: "_blank", class: "choice" };
          line.append(el("a", to, button.text));
          continue;
        }
        const press = (event) => this.act.press(message, button, event.currentTarget);
        line.append(el("button", { type: "button", class: "choice", onclick: press }, button.text));
      }
      rows.append(line);
    }
    return rows;
  }

  file(message) {
    const { kind, url, name, mime, width, height } = message.file;
    const words = message.text || `${kind} sent by ${message.who}`;
    if (kind === "photo") {
      const image = el("img", { src: url, alt: words, width, height });
      return el("a", { href: url, target: "_blank", class: "picture" }, image);
    }
    if (kind === "video" || kind === "animation") {
      return el("video", { src: url, controls: true, preload: "metadata", width, height, "aria-label": words });
    }
    if (kind === "voice" || kind === "audio") {
      return el("audio", { src: url, controls: true, "aria-label": words });
    }
    return el("p", {}, el("a", { href: url, target: "_blank" }, `${name} (${mime})`));
  }
}

export function short(text, length = 90) {
  return text.length > length ? `${text.slice(0, length - 1)}…` : text;
}

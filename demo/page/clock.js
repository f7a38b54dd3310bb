// The patient's clock: shown as it runs, and how dates are written.

export class Times {
  set(state) {
    this.zone = state.zone;
    this.surgery = state.surgery;
    this.base = state.now;
    this.rate = state.rate;
    this.seen = performance.now();
    const with_ = (options) => new Intl.DateTimeFormat("en-GB", { timeZone: this.zone, ...options });
    this.hours = with_({ hour: "2-digit", minute: "2-digit" });
    this.days = with_({ weekday: "long", day: "numeric", month: "long" });
    this.short = with_({ weekday: "short", day: "numeric", month: "short" });
    this.parts = with_({ year: "numeric", month: "2-digit", day: "2-digit" });
  }

  now() { return this.base + (performance.now() - this.seen) * this.rate; }
  time(at) { return this.hours.format(at); }
  date(at) { return this.days.format(at); }
  shortDate(at) { return this.short.format(at); }

  // Days since surgery, on the patient's own calendar.
  day(at) {
    const part = Object.fromEntries(this.parts.formatToParts(at).map((p) => [p.type, p.value]));
    const local = Date.UTC(+part.year, +part.month - 1, +part.day);
    return Math.round((local - Date.parse(this.surgery)) / 86400000);
  }
}

export class ClockBar {
  constructor(times, post, trouble) {
    Object.assign(this, { times, trouble, busy: false });
    this.form = document.getElementById("moves");
    this.rate = document.getElementById("rate");
    this.working = document.getElementById("working");
    const move = async (body, words) => {
      if (this.busy) return;
      this.lock(true, words);
      try { await post("clock", body); } catch (error) { trouble(error.message); }
      this.lock(false, "");
    };
    for (const button of this.form.querySelectorAll("[data-do]")) {
      button.addEventListener("click", () => move({ do: button.dataset.do }, "Moving the clock…"));
    }
    this.form.addEventListener("submit", (event) => {
      event.preventDefault();
      const day = document.getElementById("to-day");
      move({ do: "day", value: day.valueAsNumber }, `Going to day ${day.value}…`);
    });
    this.rate.addEventListener("change", async () => {
      try { await post("clock", { do: "rate", value: +this.rate.value }); }
      catch (error) { trouble(error.message); }
    });
    setInterval(() => this.tick(), 200);
  }

  lock(busy, words) {
    this.busy = busy;
    this.working.textContent = words;
    for (const control of this.form.querySelectorAll("button")) {
      control.setAttribute("aria-disabled", String(busy));
    }
  }

  show(state) {
    if (document.activeElement !== this.rate) this.rate.value = String(state.rate);
    if (this.busy && state.working) this.working.textContent = state.working;
    this.next = state.next;
    const to = document.getElementById("to-day");
    to.max = Math.max(state.last_day, 1);
    document.getElementById("of").textContent = `of ${state.last_day}`;
    this.tick();
  }

  tick() {
    if (this.times.base == null) return;
    const now = this.times.now();
    write("clock", `${this.times.shortDate(now)}, ${this.times.time(now)}`);
    write("day", String(this.times.day(now)));
    const next = this.next;
    const far = next && this.times.day(next) !== this.times.day(now);
    write("next", next ? `${far ? `${this.times.shortDate(next)}, ` : ""}${this.times.time(next)}` : "none");
  }
}

function write(id, words) {
  const node = document.getElementById(id);
  if (node.textContent !== words) node.textContent = words;
}

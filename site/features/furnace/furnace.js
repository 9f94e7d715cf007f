// The furnace side: one thing at a time, to be read from three metres and
// touched with a glove. First the hold points, then the pour as it runs, then
// its record. What happens is kept in the plan at once; this element only
// remembers which page of it lies open.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { title } from "../../app/save.js";
import { to } from "../../app/route.js";
import { handlingList } from "../handling/list.js";
import { Awake } from "./awake.js";
import { Clock } from "./clock.js";
import { closed } from "./closed.js";
import { aside, holds } from "./holds.js";
import { card, cards, closing, more, reading, remarking } from "./pages.js";
import { pour } from "./pour.js";
import { Sound } from "./sound.js";

const often = 200; // ms between two looks at the clock
const bounce = 500; // ms in which a second touch of the same place is one touch

/** Data: {state}. */
export class Furnace extends Element {
  clock = null;
  sound = new Sound();
  page = ""; // what lies over the pour: reading, trouble, card, remark, more, close, aside
  detail = null; // of that page
  chosen = null; // the mould that was picked out of its turn
  chosenHold = null; // the hold point that was gone back to
  read = null; // what the stepper of the reading stands at
  parted = null; // a step of the clocks that can be taken the other way
  dark = false; // whether the screen may go dark
  #awake = new Awake((held) => ((this.dark = !held), this.draw()));
  #timer = 0;
  #showing = ""; // what is being drawn, and what was drawn last
  #shown = "";
  #settling = 0;
  #beating = -1; // the pour, by its beginning, that beats are laid for

  entered() {
    this.#awake.hold();
    this.#timer = setInterval(() => this.clock && this.draw(), often);
    this.listen(document, "visibilitychange", () => {
      if (document.visibilityState === "hidden") return this.clock?.hide();
      this.#awake.hold();
      this.draw();
    });
    this.listen(window, "pagehide", () => this.clock?.hide());
    this.listen(document, "pointerdown", () => this.sound.wake());
    this.listen(document, "keydown", () => this.sound.wake());
  }

  left() {
    clearInterval(this.#timer);
    clearTimeout(this.#settling);
    this.#awake.release();
    this.sound.close();
  }

  // ── What has happened ──

  get events() {
    return this.data.state.open.doc.record?.events ?? [];
  }

  get standing() {
    return this.events.filter((e) => !e.struck);
  }

  /** Keeps what has happened, now. */
  tell(what, more) {
    const at = this.clock ? { at: `${this.clock.now().toFixed(1)} s` } : {};
    this.want("record", { event: { what, ...at, clock: new Date().toISOString(), ...more } });
    this.clock?.mark();
  }

  strike(e) {
    this.want("record", { strike: this.events.indexOf(e) });
  }

  /** A handler that a bouncing touch sets off once. */
  once = (action) => () => {
    if ("settling" in this.dataset) return;
    this.settle();
    action();
  };

  /** For a moment touches do nothing: what they were meant for may be gone. */
  settle() {
    this.dataset.settling = "";
    clearTimeout(this.#settling);
    this.#settling = setTimeout(() => delete this.dataset.settling, bounce);
  }

  open(page, detail = null) {
    this.page = page;
    this.detail = detail;
    this.draw();
  }

  tapped() {
    const first = !this.standing.some((e) => e.what === "tapped");
    if (first) {
      this.clock = this.timekeeper();
      this.clock.start();
    }
    this.tell("tapped");
    this.open("");
  }

  /** Begins or ends the pour of a mould. */
  turn(what, mould) {
    this.tell(what, { mould: String(mould.number), name: mould.name });
    this.chosen = null;
    this.draw();
  }

  timekeeper() {
    return new Clock(this.data.state.open.id, (kind, seconds) => this.clocksParted(kind, seconds));
  }

  clocksParted(kind, seconds) {
    const by = `${Math.abs(seconds).toFixed(0)} s`;
    const said = {
      slept: `The device slept for ${by}; the time counts.`,
      set: `The clock of the device was set ${seconds > 0 ? "on" : "back"} by ${by}; the time goes on without it.`,
      back: `The clock of the device was set back by ${by} or more while this page was closed; the time goes on from the last entry.`,
    }[kind];
    this.parted = kind === "back" || seconds < 0 ? { said } : { said, shift: kind === "slept" ? -seconds : seconds };
    queueMicrotask(() => this.tell("clock", { note: said }));
  }

  /** Takes the clocks' step the other way. */
  otherWay() {
    const { shift } = this.parted;
    this.parted = null;
    const entries = this.standing.filter((e) => e.what !== "clock" && e.at).map((e) => parseFloat(e.at));
    this.clock.shift(shift, Math.max(...entries));
    this.tell("clock", { note: shift > 0 ? `${shift.toFixed(0)} s counted after all.` : `${(-shift).toFixed(0)} s left out after all.` });
  }

  // ── How it stands ──

  /** The moulds as the engine has them, with what was tapped since it answered. */
  moulds() {
    const leaf = (v) => (v && !v.unknown ? v.si : undefined);
    return (this.data.state.furnace?.answers?.moulds ?? this.unanswered()).map((m) => {
      const number = m.number.value;
      const own = this.standing.filter((e) => Number(e.mould) === number && (e.what === "start" || e.what === "stop"));
      const begun = own.find((e) => e.what === "start");
      const last = own.at(-1);
      return {
        answers: m,
        number,
        name: m.name.text,
        state: !begun ? "ahead" : last.what === "stop" ? "full" : "pouring",
        begun: begun && parseFloat(begun.at),
        ended: last?.what === "stop" ? parseFloat(last.at) : undefined,
        opens: leaf(m.opens),
        beginBy: leaf(m.begin_by),
        fullBy: leaf(m.full_by),
        cold: m.cold.value,
        target: leaf(m.target),
        shortest: leaf(m.shortest),
        longest: leaf(m.longest),
      };
    });
  }

  /** The moulds that the record names, for want of an answer; at least one. */
  unanswered() {
    const names = new Map(this.standing.filter((e) => e.mould).map((e) => [Number(e.mould), e.name]));
    if (names.size === 0) names.set(1, "the mould");
    const none = { unknown: true, text: "" };
    const curve = { points: [] };
    return [...names].map(([number, name]) => ({ number: { value: number }, name: { text: name ?? `mould ${number}` }, cold: { value: false }, low: none, high: none, target: none, took: none, hot: none, at_end: none, begun: none, ended: none, beat: none, judged: none, tilt: curve, beats: curve }));
  }

  stage() {
    const done = this.standing;
    if (done.some((e) => e.what === "closed")) return "closed";
    if (done.some((e) => e.what === "tapped")) return "pour";
    return "holds";
  }

  view({ state }) {
    const stage = this.stage();
    if (stage === "pour" && !this.clock) {
      this.clock = this.timekeeper();
      this.clock.resume(this.events);
    }
    if (stage !== "pour") this.clock = null;
    const now = this.clock?.now() ?? 0;
    const moulds = this.moulds();
    const pouring = moulds.find((m) => m.state === "pouring");
    this.beat(pouring, now);
    const { name, of, view } = this.body(stage, { state, now, moulds, pouring });
    this.#showing = [name, of].join();
    return [this.head(state, stage), this.warnings(), h("div", { key: this.#showing, class: "furnace-body", "data-stage": name }, view)];
  }

  body(stage, at) {
    const pages = { reading, trouble: cards, card, remark: remarking, more, close: closing, aside };
    if (this.page) return { name: this.page, of: this.detail, view: pages[this.page](this, at) };
    if (stage === "pour") return { name: "pour", view: pour(this, at) };
    if (stage === "closed") return { name: "closed", view: closed(this, at) };
    return holds(this, { ...at, list: handlingList(at.state) });
  }

  head(state, stage) {
    const { theme } = document.documentElement.dataset;
    const bright = theme !== "furnace";
    return h(
      "header",
      { key: "head", class: "furnace-head" },
      h("a", { class: "far far-quiet", href: to.plan(state.open.id), "data-action": "leave" }, "Leave"),
      h("p", { key: "title", class: "furnace-title" }, title(state.open.doc)),
      stage === "pour" && h("button", { key: "mute", type: "button", class: "far far-quiet", "aria-pressed": String(!this.sound.muted), "data-action": "sound", onclick: () => (this.sound.mute(!this.sound.muted), this.draw()) }, this.sound.muted ? "Beat off" : "Beat on"),
      h("button", { key: "light", type: "button", class: "far far-quiet", "data-action": "light", onclick: () => this.want("prefs", { prefs: { theme: bright ? "furnace" : "contrast" } }) }, bright ? "Dark" : "Sun"),
    );
  }

  warnings() {
    const { furnace } = this.data.state;
    return [
      this.dark && h("p", { key: "dark", class: "furnace-warning", "data-warning": "dark" }, "This page cannot keep the screen on here. Set the device to stay on."),
      this.parted && h("div", { key: "parted", class: "furnace-warning", role: "alert", "data-warning": "clock" }, h("p", null, this.parted.said), h("div", { class: "furnace-row" }, this.parted.shift && h("button", { type: "button", class: "far", "data-action": "other-way", onclick: () => this.otherWay() }, this.parted.shift > 0 ? "It slept: count it" : "Do not count it"), h("button", { type: "button", class: "far", "data-action": "clock-right", onclick: () => ((this.parted = null), this.draw()) }, "That is right"))),
      furnace && !furnace.answers && h("p", { key: "fault", class: "furnace-warning", "data-warning": "fault" }, "The record has an entry that cannot be used, so only times are shown. " + furnace.faults.map((f) => `${f.label}: ${f.text}`).join(" ")),
    ];
  }

  // Lays the beats of the pour that is running.
  beat(pouring, now) {
    if (!pouring) return void (this.#beating = -1);
    const since = now - pouring.begun;
    const beats = pouring.answers.beats.points.map(([t]) => t);
    const steady = beats.length > 0 ? beats : Array.from({ length: Math.ceil(pouring.target ?? 60) + 1 }, (_, i) => i);
    if (this.#beating !== pouring.begun) {
      this.#beating = pouring.begun;
      this.sound.begin(steady, since);
    }
    this.sound.follow(steady, since);
  }

  // What has just come up takes the focus on its heading.
  drawn() {
    if (this.#showing === this.#shown) return;
    const first = this.#shown === "";
    this.#shown = this.#showing;
    this.settle();
    if (first) return;
    this.querySelector("h1")?.focus({ preventScroll: true });
    this.closest("main")?.scrollTo(0, 0);
  }
}

customElements.define("pw-furnace", Furnace);

// The class: one calculator full-screen, for a projector. What is moved stands
// here alone; a plan that it came from changes only when that is asked for.
import { h } from "../../shared/draw.js";
import { get, textOf } from "../../shared/document.js";
import { Element } from "../../shared/element.js";
import { finding } from "../../shared/finding.js";
import { faultText } from "../../shared/field-frame.js";
import { fit } from "../../shared/fit.js";
import { form } from "../../shared/form-view.js";
import { levelMark, shape } from "../../shared/mark.js";
import { formula } from "../../shared/math.js";
import { reduce } from "../../app/store.js";
import { to } from "../../app/route.js";
import { plainBar, unitSwitch } from "../bar/bar.js";
import { choose } from "./choose.js";
import { figureTable } from "./figures.js";
import { begin, mainOf, withTexts } from "./lesson.js";
import { slider } from "./slider.js";
import "../../shared/chart.js";
import { before } from "../../shared/working.js";

const still = 160; // ms without a move after which the working is asked for
const quick = 30; // ms that a redraw while moving may take in the engine
const fine = 80; // points of a curve at rest

const inSight = 2; // shaded stretches that are spelled out

const spanWords = { refused: "Refused", stop: "Stop", mind: "Mind" };

const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** The step to show for an answer: not one that only gives another's result a second name. */
function plain(steps, n) {
  const named = /^[A-Za-z]\w*$/.test(steps?.[n]?.formula ?? "");
  const at = named ? before(steps, n, steps[n].formula) : -1;
  return at >= 0 ? plain(steps, at) : n;
}

/** Data: {state, lesson (its address), room: {lessons, examples, ask, readPlan, take}}. */
export class ClassRoom extends Element {
  #lesson = null; // as begin() gives it
  #begun = ""; // its address and units
  #open; // the live input, as the store holds a plan in hand
  #held; // the case to compare with: {input, sliders}
  #told = false;
  #reply; // the last curve
  #full; // the last with its working
  #main = [];
  #rise; // the y values that the chart keeps in sight: {key, low, high}
  #points = 40;
  #asked = 0;
  #timer = 0;
  #folds = new Set();

  entered() {
    this.addEventListener("pw-want", (e) => this.wanted(e));
    this.onSize(() => this.drawn());
  }

  view({ state, lesson, room }) {
    const { calculators, prefs } = state;
    if (!lesson) return [plainBar(state, "class"), calculators ? choose(calculators, room.lessons) : h("main", { key: "wait", class: "class-choose" }, h("h1", { tabindex: "-1" }, "Class"))];
    if (calculators && this.#begun !== lesson + prefs.units) this.begin(lesson, prefs.units);
    const given = this.#lesson;
    if (given?.missing) return [plainBar(state, "class"), h("main", { key: "missing", class: "page prose" }, h("h1", { tabindex: "-1" }, "Class"), h("p", null, given.missing), h("p", null, h("a", { class: "button", href: to.lesson("") }, "Choose another lesson")))];
    const about = calculators?.find((c) => c.name === given?.calculator);
    return [
      this.bar(state, about),
      h(
        "main",
        { key: "lesson", class: "class", "data-lesson": lesson, "data-at-rest": String(Boolean(this.#reply) && this.#full === this.#reply) },
        h("h1", { key: "title", class: "class-title", tabindex: "-1" }, given?.show?.title ?? about?.title ?? "Class"),
        given?.show && this.question(given.show),
        this.#reply ? this.lesson(about) : h("p", { key: "wait", class: "quiet" }, "Working it out."),
      ),
    ];
  }

  bar(state, about) {
    const { plan, station } = this.#lesson ?? {};
    return h(
      "header",
      { key: "bar", class: "bar" },
      h("a", { class: "wordmark when-roomy", href: to.start() }, "Pourwright"),
      h(
        "nav",
        { class: "bar-views", "aria-label": "Class" },
        h("a", { class: "bar-link", href: to.lesson("") }, "All lessons"),
        plan && h("a", { key: "sheet", class: "bar-link", href: to.sheet(plan, station), "data-action": "back-to-sheet" }, "Back to the sheet"),
      ),
      h("div", { class: "bar-tools" }, document.fullscreenEnabled && h("button", { type: "button", class: "button button-quiet when-roomy", "data-action": "full-screen", onclick: () => (document.fullscreenElement ? document.exitFullscreen() : document.documentElement.requestFullscreen()) }, "Full screen"), unitSwitch(state)),
    );
  }

  question(show) {
    return h(
      "section",
      { key: "question", class: "class-question", "aria-label": "Question" },
      h("p", { class: "class-ask" }, show.question),
      h("button", { type: "button", class: "button", "data-action": "tell", "aria-expanded": String(this.#told), onclick: () => this.tell(!this.#told) }, this.#told ? "Hide the answer" : "Show the answer"),
      this.#told && h("div", { key: "told", class: "class-told", role: "status" }, h("p", null, show.told), h("p", { class: "class-source" }, "Source: " + show.source)),
    );
  }

  lesson(about) {
    const r = this.#reply;
    if (r.broken) return h("p", { key: "broken", class: "class-broken" }, `The engine came upon a mistake of ours (${r.broken}). Move the sliders back, or choose another lesson.`);
    const watched = r.figures?.find((f) => f.path === r.answer);
    return [
      h("section", { key: "answer", class: "class-answer", "aria-label": "Answer" }, this.answer(r, watched)),
      h("section", { key: "curve", class: "class-curve", "aria-labelledby": "class-curve" }, h("h2", { id: "class-curve", class: "out-of-sight" }, "Curve"), this.against(r), this.chart(r), this.spans(r)),
      h("section", { key: "inputs", class: "class-inputs", "aria-labelledby": "class-inputs" }, h("h2", { id: "class-inputs" }, "Inputs"), this.sliders(r), this.acts(), this.every(r, about)),
      h("section", { key: "figures", class: "class-cases", "aria-labelledby": "class-figures" }, h("h2", { id: "class-figures" }, this.#held ? "Two cases" : "Answers"), this.figures(r), this.minded(r)),
    ];
  }

  // ── The answer and its formula ──

  answer(r, watched) {
    const full = this.#full;
    const step = plain(full?.steps, full?.figures?.find((f) => f.path === full.answer)?.step);
    const s = full?.answer === r.answer && full.steps?.[step];
    const stale = full !== r;
    return [
      h(
        "div",
        { key: "now", class: "class-now" },
        h("label", { class: "class-pick" }, h("span", null, "Answer"), h("select", { class: "field-input", "data-pick": "answer", ".value": r.answer, onchange: (e) => this.watch(e.target.value) }, !watched && h("option", { value: r.answer }, "no answer here"), r.figures.map((f) => h("option", { value: f.path }, f.part ? `${f.part}: ${f.label}` : f.label)))),
        h("p", { class: "class-figure", "data-now": r.answer }, watched ? watched.texts.at(-1) : "no answer here"),
      ),
      r.faults.filter((f) => !f.missing).map((f) => h("p", { key: "fault " + f.field, class: "field-fault" }, faultText(f))),
      s &&
        h(
          "div",
          { key: "formula", class: "class-formula", tabindex: "0", role: "group", "aria-label": `Formula for ${s.result.what}`, "data-stale": String(stale) },
          s.math ? s.math.map((row) => formula(row)) : [h("p", { key: "method", class: "class-method" }, s.formula ?? s.method ?? "")],
        ),
      s?.source && h("p", { key: "source", class: "class-source" }, "Source: " + s.source),
      s && this.fold("working", "Working, step by step", () => h("pw-working", { class: "working", ".data": { steps: full.steps, step } })),
      !s && !stale && h("p", { key: "no-step", class: "class-source" }, watched ? "This answer is looked up or counted; it has no formula." : "Move a slider back to where there is an answer."),
    ];
  }

  // ── Inputs ──

  sliders(r) {
    const main = r.sliders.filter((s) => this.#main.includes(s.field));
    const rest = r.sliders.filter((s) => !this.#main.includes(s.field));
    const draw = (s) => {
      const standing = textOf(get(this.#open.doc, s.field));
      return slider(s, s.moving ?? s.text, {
        moved: (text, resting) => {
          s.moving = text;
          this.change({ type: "edit", path: s.field, value: text, done: true }, resting ? 0 : still);
        },
        typed: (text) => (text.trim() && text !== s.text ? this.typed(s, text) : standing && this.draw()),
      });
    };
    return [h("div", { key: "main", class: "class-sliders" }, main.map(draw)), rest.length > 0 && this.fold("others", `Other numbers (${rest.length})`, () => h("div", { class: "class-sliders" }, rest.map(draw)))];
  }

  // What is typed is kept as the field keeps it, its unit with it.
  async typed(s, text) {
    const { state, room } = this.data;
    const field = this.fieldOf(s.field);
    const reply = field?.sort === "quantity" ? await room.ask("read", { units: state.prefs.units }, { kind: field.kind, unit: field.unit, text }, "") : null;
    this.change({ type: "edit", path: s.field, value: reply?.ok ? reply.keep : text, done: true }, 0);
  }

  fieldOf(path) {
    const { state } = this.data;
    let fields = state.calculators.find((c) => c.name === this.#lesson.calculator).fields;
    let found;
    for (const key of path.split(/[.[\]]+/).filter((k) => k && !/^\d+$/.test(k))) {
      found = fields?.find((f) => f.key === key);
      fields = found?.fields;
    }
    return found;
  }

  acts() {
    const act = (action, label, go, off) => h("button", { key: action, type: "button", class: "button", "data-action": action, disabled: off, onclick: go }, label);
    const { plan } = this.#lesson;
    return h(
      "div",
      { key: "acts", class: "class-acts" },
      this.#held ? act("let-go", "Let case A go", () => this.hold(null)) : act("hold", "Hold this case", () => this.hold({ input: this.#open.doc, sliders: this.#reply.sliders })),
      act("put-back", "Put everything back", () => this.restart(), this.#open.past.length === 0 && !this.#held),
      plan && act("take", "Take these values into the plan", () => this.take(), this.#open.past.length === 0),
    );
  }

  every(r, about) {
    if (!about || this.#lesson.calculator === "plan") return null;
    const known = { faults: {}, needs: {}, linked: {}, findings: {}, titles: {}, reading: () => undefined };
    for (const f of r.faults) (f.missing ? known.needs : known.faults)[f.field] ??= f;
    return this.fold("form", "Every entry of the calculator", () => h("div", { class: "class-form" }, form(about.fields, this.#open.doc, "", known)));
  }

  fold(key, label, body) {
    const open = this.#folds.has(key);
    return h(
      "details",
      { key, class: "fold class-fold-" + key, ".open": open, ontoggle: (e) => e.currentTarget.open !== this.#folds.has(key) && (this.#folds[e.currentTarget.open ? "add" : "delete"](key), this.draw()) },
      h("summary", null, label),
      open && body(),
    );
  }

  // ── Curve ──

  against(r) {
    return h("label", { key: "against", class: "class-pick" }, h("span", null, "Against"), h("select", { class: "field-input", "data-pick": "vary", ".value": r.vary, onchange: (e) => ((this.#lesson = { ...this.#lesson, vary: e.target.value, from: undefined, to: undefined }), this.ask(true, false)) }, r.sliders.map((s) => h("option", { value: s.field }, s.label))));
  }

  chart(r) {
    const two = r.cases.length > 1;
    const axes = { xLabel: r.x.label, xUnit: r.x.unit, yLabel: r.y.label, yUnit: r.y.unit };
    const order = two ? [1, 0] : [0]; // the live case has the full line
    const same = two && JSON.stringify(r.cases[0].runs) === JSON.stringify(r.cases[1].runs); // only what moves is apart
    const curves = (same ? [1] : order).map((i) => ({ ...axes, label: two && !same ? (i === 0 ? "A, held" : "B, now") : r.y.label, runs: r.cases[i].runs }));
    const live = r.cases.at(-1);
    const marks = order.flatMap((i) => (r.cases[i].now ? [{ x: r.cases[i].now[0], y: r.cases[i].now[1], label: two ? "AB"[i] : "" }] : [])).filter((m) => m.x >= r.x.low && m.x <= r.x.high);
    const spans = live.spans.filter((s) => !s.throughout).map((s) => ({ from: s.from, to: s.to, state: s.state, label: spanWords[s.state] }));
    const ys = [...curves.flatMap((c) => c.runs.flat().map((p) => p[1])), ...marks.map((m) => m.y)];
    if (ys.length < 2) return h("p", { key: "none", class: "class-none" }, "There is no answer anywhere on this stretch.");
    return h("pw-chart", { key: "chart", class: "class-chart", ".data": { curves, spans, marks, reach: [r.x.low, r.x.high], rise: this.risen(r, ys), flat: Math.min(0.44, (0.3 * innerHeight) / (0.5 * innerWidth)), name: `${r.y.label} against ${r.x.label.charAt(0).toLowerCase()}${r.x.label.slice(1)}` } });
  }

  // The y axis grows with what is moved and does not shrink again, or every
  // curve would look the same.
  risen(r, ys) {
    const key = [r.answer, r.vary, r.y.unit, r.x.low, r.x.high].join();
    const low = Math.min(...ys);
    const high = Math.max(...ys);
    this.#rise = this.#rise?.key === key ? { key, low: Math.min(low, this.#rise.low), high: Math.max(high, this.#rise.high) } : { key, low, high };
    return [this.#rise.low, this.#rise.high];
  }

  spans(r) {
    const spans = r.cases.at(-1).spans.filter((s) => !s.throughout);
    if (spans.length === 0) return null;
    const list = (some) => h("ul", { class: "class-spans", "aria-label": "Shaded on the curve" }, some.map((s) => h("li", { class: "class-span-line", "data-state": s.state }, s.state === "refused" ? h("span", { class: "state state-fault" }, shape("fault"), h("span", { class: "state-word" }, spanWords.refused)) : levelMark(s.state), h("p", null, h("b", null, capital(s.ends) + ": "), s.text))));
    return [list(spans.slice(0, inSight)), spans.length > inSight && this.fold("spans", `More that is shaded (${spans.length - inSight})`, () => list(spans.slice(inSight)))];
  }

  // ── Figures ──

  figures(r) {
    if (r.figures.length === 0) return h("p", { key: "none", class: "quiet" }, "There are no answers here.");
    return figureTable({ figures: r.figures, answer: r.answer, moved: this.moved(r), open: this.#folds.has("figures") }, {
      watch: (path) => this.watch(path),
      unfold: (open) => open !== this.#folds.has("figures") && (this.#folds[open ? "add" : "delete"]("figures"), this.draw()),
    });
  }

  /** What differs between the two cases, for the heads of their columns. */
  moved(r) {
    if (!this.#held) return {};
    const other = new Map(this.#held.sliders.map((s) => [s.field, s.text]));
    const apart = r.sliders.filter((s) => other.has(s.field) && other.get(s.field) !== s.text).slice(0, 2);
    const say = (text) => apart.map((s) => `${s.label} ${text(s)}`).join(", ");
    return { a: say((s) => other.get(s.field)), b: say((s) => s.text) };
  }

  minded(r) {
    const shown = r.cases.at(-1).spans.filter((s) => !s.throughout).map((s) => s.text);
    const pressing = r.findings.filter((f) => f.level !== "note" && !shown.includes(f.text));
    return pressing.length > 0 && this.fold("minded", `What to mind (${pressing.length})`, () => h("div", null, pressing.map((f) => finding(f))));
  }

  // ── What happens ──

  async begin(lesson, units) {
    this.#begun = lesson + units;
    const again = this.#lesson && this.#lesson.address === lesson;
    if (!again) {
      this.#lesson = null;
      this.#reply = this.#full = this.#held = undefined;
      this.#told = false;
      this.#main = [];
      const begun = { ...(await begin(lesson, units, this.data.room)), address: lesson };
      if (this.#begun !== lesson + units) return;
      this.#lesson = begun;
      if (begun.missing) return this.draw();
      this.restart();
    } else {
      this.ask(true, true);
    }
  }

  restart() {
    this.#open = { id: "class", doc: this.#lesson.input, past: [], future: [], typing: null, rev: 0 };
    this.#held = undefined;
    this.#told = false;
    this.#rise = undefined;
    this.ask(true, this.#main.length === 0);
  }

  tell(on) {
    if (!on) return this.restart();
    const { show } = this.#lesson;
    this.#told = true;
    this.#held = { input: this.#open.doc, sliders: this.#reply.sliders };
    this.#open = { ...this.#open, past: [this.#open.doc], doc: withTexts(this.#open.doc, show.then) };
    this.ask(true, false);
    this.draw();
  }

  hold(held) {
    this.#held = held ?? undefined;
    this.ask(true, false);
  }

  watch(answer) {
    this.#lesson = { ...this.#lesson, answer };
    this.ask(true, true);
  }

  take() {
    const { plan, station } = this.#lesson;
    const { sliders } = this.#reply;
    const texts = Object.fromEntries(sliders.filter((s) => textOf(get(this.#open.doc, s.field)) !== textOf(get(this.#lesson.input, s.field))).map((s) => [`${station}.${s.field}`, textOf(get(this.#open.doc, s.field))]));
    this.data.room.take(plan, station, texts);
  }

  // The fields of the form tell what is wanted as those of a plan do.
  wanted(e) {
    const { detail } = e;
    if (detail.type === "commit") {
      e.stopPropagation();
      return this.typed({ field: detail.path }, detail.text);
    }
    if (detail.type !== "edit" && !detail.type.startsWith("list-")) return;
    e.stopPropagation();
    this.change(detail, still);
  }

  /** Changes the live case, draws the curve at once, and the working when it is still. */
  change(action, wait) {
    this.#open = reduce({ open: this.#open }, action).open;
    if (wait === 0) return this.ask(true, false);
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.ask(true, false), wait);
    this.ask(false, false);
  }

  async ask(full, rank) {
    const { state, room } = this.data;
    const mine = ++this.#asked;
    if (full) clearTimeout(this.#timer);
    const { calculator, input, vary, answer, from, to, sliders } = this.#lesson;
    const since = performance.now();
    const reply = await room.ask(
      "curve",
      { units: state.prefs.units, working: full },
      { calculator, cases: [...(this.#held ? [this.#held.input] : []), this.#open.doc], base: input, vary, answer, from, to, points: full ? fine : this.#points, rank: rank && !sliders },
      "class",
    );
    if (!reply || mine < this.#asked) return;
    if (reply.faults?.[0]?.field === "vary" && !reply.ok) {
      this.#lesson = { ...this.#lesson, vary: "", from: undefined, to: undefined };
      return this.ask(full, rank);
    }
    if (!full) this.#points = Math.round(Math.min(fine, Math.max(12, (this.#points * quick) / Math.max(2, performance.now() - since))));
    if (!reply.ok && !reply.broken) return; // a stretch that the lesson named wrongly
    this.#reply = reply;
    if (reply.ok && full) this.#full = reply;
    if (reply.ok && (rank || this.#main.length === 0)) this.#main = mainOf(reply.sliders, sliders, reply.vary);
    this.draw();
  }

  drawn() {
    fit([...this.querySelectorAll(".class-formula")]);
  }
}

customElements.define("pw-class", ClassRoom);

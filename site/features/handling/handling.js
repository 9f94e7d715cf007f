// The safe-handling list of the pour, with its hold points to answer. What is
// answered is part of the plan.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { finding } from "../../shared/finding.js";
import { to } from "../../app/route.js";
import { handlingList } from "./list.js";

const choices = [
  ["yes", "Yes"],
  ["no", "No"],
  ["not-applicable", "Does not apply"],
];

/** Data: {state, about}. */
export class Handling extends Element {
  view({ state }) {
    const list = handlingList(state);
    const station = state.reply?.stations.find((s) => s.key === "handling");
    return [
      h("h1", { tabindex: "-1" }, "Safe handling"),
      h("p", { class: "handling-ways" }, h("a", { class: "button", href: to.sheet(state.open.id, "handling") }, "What the list is made from"), h("a", { class: "button button-quiet", href: to.plan(state.open.id, "print") }, "Print it")),
      !state.reply && h("p", { key: "wait", class: "quiet" }, "Working it out."),
      state.reply && !list && this.wanting(station, state),
      list && this.list(list, station, state),
    ];
  }

  wanting(station, state) {
    const missing = [...station.faults, ...station.needs];
    return h(
      "div",
      { key: "wanting", class: "handling-wanting" },
      h("p", null, "The list is made for this pour, so it needs to know a little about it."),
      missing.length > 0 && h("p", null, "Still wanted: " + missing.map((f) => f.label.toLowerCase()).join(", ") + "."),
      h("p", null, h("a", { class: "button button-first", href: to.sheet(state.open.id, "handling") }, "Fill it in")),
    );
  }

  list({ sections, holds, open, standing }, station, state) {
    const answers = state.open.doc.handling?.answers ?? [];
    return [
      h("p", { key: "standing", class: "handling-standing" }, standing),
      h("p", { key: "count", class: "handling-count", role: "status" }, open === 0 ? `All ${holds} hold points are answered.` : `${open} of ${holds} hold points still open. Answer each before the metal moves.`),
      station.findings.filter((f) => f.level === "stop").map((f) => finding(f)),
      sections.map((section) =>
        h(
          "section",
          { key: section.title, class: "handling-part" },
          h("h2", null, section.title),
          h("ol", { class: "handling-items" }, section.items.map((item) => this.item(item, answers.find((a) => a.code === item.code)))),
        ),
      ),
    ];
  }

  item(item, answer) {
    return h(
      "li",
      { key: item.code, class: "handling-item" + (item.hold ? " hold" : ""), "data-item": item.code, "data-hold": String(item.hold), "data-state": item.state },
      item.hold && h("p", { class: "hold-word" }, h("b", null, "Hold point"), h("span", null, item.state)),
      h("p", { class: "handling-text" }, item.text),
      item.why && h("p", { class: "handling-why" }, item.why),
      item.hold && this.answering(item, answer),
      (item.source || item.law) && h("p", { class: "handling-source" }, [item.source, item.law].filter(Boolean).join(". ")),
    );
  }

  answering(item, answer) {
    const id = "hold-" + item.code;
    const set = (change, done) => this.want("hold", { code: item.code, change, done });
    const text = (key, label, hint) =>
      h(
        "div",
        { key, class: "hold-" + key },
        h("label", { class: "field-label", for: `${id}-${key}` }, label),
        h("input", {
          id: `${id}-${key}`,
          class: "field-input",
          type: "text",
          autocomplete: "off",
          placeholder: hint,
          "data-hold-field": `${item.code}.${key}`,
          ".value": answer?.[key] ?? "",
          oninput: (e) => set({ [key]: e.target.value }),
          onchange: (e) => set({ [key]: e.target.value }, true),
        }),
      );
    return h(
      "div",
      { class: "hold-answer" },
      h(
        "fieldset",
        { key: "answer", class: "choice" },
        h("legend", { class: "out-of-sight" }, "Answer: " + item.text),
        h(
          "div",
          { class: "choice-row" },
          choices.map(([value, label]) =>
            h("label", { class: "choice-item" }, h("input", { type: "radio", name: id, "data-hold-answer": `${item.code}=${value}`, ".checked": answer?.answer === value, onchange: () => set({ answer: value }, true) }), h("span", null, label)),
          ),
        ),
      ),
      text("by", "By", "name or initials"),
      answer && answer.answer && answer.answer !== "yes" && text("reason", "Reason", "why it is set aside, and who says so"),
    );
  }
}

customElements.define("pw-handling", Handling);

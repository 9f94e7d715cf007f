// The root of the page: one view at a time, and the notices over it.
import { h } from "../shared/draw.js";
import { Element } from "../shared/element.js";
import { plainBar } from "../features/bar/bar.js";
import { title } from "./save.js";
import { to } from "./route.js";
import "../features/class/class.js";
import "../features/compare/compare.js";
import "../features/evidence/evidence.js";
import "../features/plan/plan.js";
import "../features/print/rule.js";
import "../features/settings/settings.js";
import "../features/share/shared.js";
import "../features/start/start.js";

const names = { settings: "Settings", sources: "Sources", rule: "Contraction rule", class: "Class", compare: "Two plans side by side", shared: "A shared plan" };

/** Data: {state, examples, readEvidence, room (what the class needs)}. */
export class App extends Element {
  #view = "";

  view({ state, examples, readEvidence, room }) {
    const notices = this.notices(state);
    const view = this.shown(state, examples, readEvidence, room);
    return [notices.length > 0 && h("div", { key: "notices", class: "notices", role: "status" }, notices), view];
  }

  shown(state, examples, readEvidence, room) {
    const { route, open, calculators } = state;
    switch (route.view) {
      case "settings":
        return h("pw-settings", { key: "settings", ".data": { state } });
      case "sources":
        return h("pw-evidence", { key: "sources", ".data": { state, readEvidence } });
      case "rule":
        return h("pw-rule", { key: "rule", ".data": { state } });
      case "class":
        return h("pw-class", { key: "class", ".data": { state, lesson: route.lesson, room } });
      case "compare":
        return h("pw-compare", { key: "compare", ".data": { state } });
      case "shared":
        return h("pw-shared", { key: "shared", ".data": { state } });
      case "plan":
        if (open?.id === route.plan && calculators) return h("pw-plan", { key: "plan", ".data": { state } });
        return [plainBar(state), h("main", { key: "wait", class: "page prose" }, h("h1", { tabindex: "-1" }, state.missing === route.plan ? "This plan is not on this device" : "Opening the plan"), state.missing === route.plan && h("p", null, "It may have been deleted, or kept in another browser. ", h("a", { href: to.start() }, "See the saved plans")))];
    }
    return h("pw-start", { key: "start", ".data": { state, examples } });
  }

  notices(state) {
    const act = (type, label, detail) => h("button", { type: "button", class: "button", "data-action": type, onclick: () => this.want(type, detail) }, label);
    const standing = [
      state.engine === "failed" && { id: "engine", text: "The engine that does the sums did not start. Your plans are untouched.", acts: [act("engine-again", "Try again")] },
      state.broken && { id: "broken", text: `The engine came upon a mistake of ours (${state.broken}). Your plan is untouched and saved; the answers below are those from before the last change.`, acts: [act("engine-again", "Try again"), act("save-file", "Save as file")] },
      state.saving.state === "failed" && {
        id: "saving",
        text: state.saving.full ? "The last changes are not saved: this device has no room left for them. Save the plan as a file, then make room." : `The last changes are not saved: ${state.saving.why}. Save the plan as a file.`,
        acts: [act("save-file", "Save as file"), act("save-again", "Try again")],
      },
      state.update && { id: "update", text: "A newer Pourwright is ready. Your plans stay as they are.", acts: [act("take-update", "Use it now")] },
    ].filter(Boolean);
    return [...standing, ...state.notices].map((n) => h("div", { key: n.id, class: "notice", "data-notice": n.id }, h("p", null, n.text), h("div", { class: "notice-acts" }, n.acts ?? act("dismiss", "Close", { id: n.id }))));
  }

  // A page that has just been opened starts at its top, with the focus on its
  // heading; its title is in the window's bar.
  drawn() {
    const { route, open } = this.data.state;
    const name = route.view === "plan" && open ? title(open.doc) : names[route.view];
    document.title = name ? `${name} · Pourwright` : "Pourwright";
    const view = [route.view, route.plan, route.lesson, route.a, route.b, route.code].join();
    if (view === this.#view) return;
    const first = this.#view === "";
    this.#view = view;
    if (first) return;
    scrollTo(0, 0);
    this.querySelector("h1")?.focus({ preventScroll: true });
  }
}

customElements.define("pw-app", App);

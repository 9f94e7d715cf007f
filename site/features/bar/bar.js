// The bar over a plan: the way home, the plan's views, how saving stands, and
// the few things done to a plan as a whole.
import { h } from "../../shared/draw.js";
import { to } from "../../app/route.js";

const savedWords = {
  saving: "Saving",
  saved: "Saved",
  kept: "Saved in the smaller store",
  failed: "Not saved",
};

/** Raises an intent from whichever element was touched. */
const want = (type, detail) => (e) => e.currentTarget.dispatchEvent(new CustomEvent("pw-want", { bubbles: true, detail: { type, ...detail } }));

export const unitSwitch = ({ prefs }) =>
  h(
    "div",
    { key: "units", class: "switch", role: "group", "aria-label": "Units" },
    [
      ["metric", "Metric"],
      ["us", "US"],
    ].map(([units, label]) => h("button", { type: "button", class: "switch-item", "aria-pressed": String(prefs.units === units), "data-units": units, onclick: want("prefs", { prefs: { units } }) }, label)),
  );

export const bar = (state) => {
  const { open, route, saving } = state;
  const link = (page, label) => h("a", { class: "bar-link", href: to.plan(open.id, page), "aria-current": route.page === page ? "page" : undefined }, label);
  const undo = (when) => [
    h("button", { type: "button", class: "button button-quiet " + when, "data-action": "undo", disabled: open.past.length === 0, onclick: want("undo") }, "Undo"),
    h("button", { type: "button", class: "button button-quiet " + when, "data-action": "redo", disabled: open.future.length === 0, onclick: want("redo") }, "Redo"),
  ];
  return h(
    "header",
    { key: "bar", class: "bar" },
    h("a", { class: "wordmark when-roomy", href: to.start() }, "Pourwright"),
    h("nav", { class: "bar-views", "aria-label": "Views of the plan" }, link("mould", "Mould"), link("handling", "Safe handling"), link("furnace", "Furnace side"), link("print", "Print")),
    h("p", { class: "bar-saved" + (saving.state === "failed" ? " failed" : ""), role: saving.state === "failed" ? "alert" : undefined, "data-saved": saving.state }, savedWords[saving.state]),
    h("div", { class: "bar-tools" }, undo("when-wide"), h("div", { class: "when-roomy" }, unitSwitch(state)), h("button", { type: "button", class: "button button-quiet", "data-action": "menu", popovertarget: "plan-menu" }, "More")),
    h(
      "div",
      { class: "menu", id: "plan-menu", popover: "auto", onbeforetoggle: place, onclick: (e) => e.target.closest("a, button") && e.currentTarget.hidePopover() },
      undo("when-narrow"),
      h("div", { class: "when-tight" }, unitSwitch(state)),
      h("button", { type: "button", class: "button button-quiet", "data-action": "save-file", onclick: want("save-file") }, "Save as file"),
      h("a", { class: "button button-quiet", href: to.lesson("") }, "Class"),
      h("a", { class: "button button-quiet", href: to.plan(open.id, "share"), "data-action": "share" }, "Share"),
      h("a", { class: "button button-quiet", href: to.settings() }, "Settings"),
      h("a", { class: "button button-quiet", href: to.sources() }, "Sources"),
      h("a", { class: "button button-quiet", href: to.start() }, "All plans"),
    ),
  );
};

/** Puts the menu under its button. */
function place(e) {
  const under = document.querySelector("[popovertarget=plan-menu]").getBoundingClientRect();
  e.target.style.setProperty("top", `${under.bottom}px`);
  e.target.style.setProperty("right", `${document.documentElement.clientWidth - under.right}px`);
}

/** The plainer bar of the pages that belong to no plan. */
export const plainBar = (state, here) =>
  h(
    "header",
    { key: "bar", class: "bar" },
    h("a", { class: "wordmark", href: to.start(), "aria-current": here === "start" ? "page" : undefined }, "Pourwright"),
    h(
      "nav",
      { class: "bar-views", "aria-label": "Site" },
      h("a", { class: "bar-link", href: to.start(), "aria-current": here === "start" ? "page" : undefined }, "Plans"),
      h("a", { class: "bar-link", href: to.lesson(""), "aria-current": here === "class" ? "page" : undefined }, "Class"),
      h("a", { class: "bar-link", href: to.sources(), "aria-current": here === "sources" ? "page" : undefined }, "Sources"),
      h("a", { class: "bar-link", href: to.settings(), "aria-current": here === "settings" ? "page" : undefined }, "Settings"),
    ),
    h("div", { class: "bar-tools when-roomy" }, unitSwitch(state)),
  );

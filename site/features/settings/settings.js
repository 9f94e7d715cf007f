// Settings: units, theme, currency, the shop's own figures, and how safely the
// device keeps the plans.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { currencyOf, themes } from "../../app/prefs.js";
import { plainBar } from "../bar/bar.js";
import "./own.js";

/** Data: {state}. */
export class Settings extends Element {
  #persisted = null;

  view({ state }) {
    const { prefs } = state;
    return [
      plainBar(state, "settings"),
      h(
        "main",
        { key: "main", class: "page prose" },
        h("h1", { tabindex: "-1" }, "Settings"),
        h(
          "section",
          null,
          h("h2", null, "Units"),
          h("p", null, "This decides what answers are shown in, and which unit a bare number stands for. A number with its unit written is taken as written, in either system."),
          this.pick("units", [["metric", "Metric: mm, kg, °C"], ["us", "US customary: in, lb, °F"]], prefs.units),
        ),
        h("section", null, h("h2", null, "Look"), this.pick("theme", themes, prefs.theme)),
        h(
          "section",
          null,
          h("h2", null, "Currency"),
          h("p", null, "The sign or code that amounts of money are shown with: €, £, SEK. Nothing is converted; a plan holds bare amounts."),
          h("label", { class: "out-of-sight", for: "currency" }, "Currency"),
          h("input", {
            id: "currency",
            class: "field-input currency",
            type: "text",
            maxlength: "4",
            autocomplete: "off",
            placeholder: "none",
            "data-setting": "currency",
            ".value": prefs.currency,
            onchange: (e) => {
              e.target.value = currencyOf(e.target.value);
              this.want("prefs", { prefs: { currency: e.target.value } });
            },
          }),
        ),
        h("pw-own", { key: "own", ".data": { state } }),
        h(
          "section",
          null,
          h("h2", null, "Plans on this device"),
          h("p", null, "Plans are kept in this browser, on this device, and go nowhere else. Clearing the browser's data deletes them: save what matters as a file as well."),
          this.#persisted === true && h("p", null, "The browser has agreed not to clear them by itself when the device runs short of room."),
          this.#persisted === false && h("p", null, "The browser may clear them when the device runs short of room. ", h("button", { type: "button", class: "button", onclick: () => this.persist() }, "Ask it not to")),
        ),
        POURWRIGHT_BUILD === "hosted" &&
          h("section", null, h("h2", null, "Take it along"), h("p", null, "All of Pourwright fits in one file that opens on any tablet or computer without a network: put it on a stick, or in the tablet's files."), h("p", null, h("a", { class: "button", href: "pourwright.html", download: "" }, "Download the one file"))),
      ),
    ];
  }

  pick(name, choices, chosen) {
    return h(
      "fieldset",
      { class: "choice" },
      h("legend", { class: "out-of-sight" }, name === "units" ? "Units" : "Look"),
      h(
        "div",
        { class: "choice-row" },
        choices.map(([value, label]) =>
          h("label", { class: "choice-item" }, h("input", { type: "radio", name: "setting-" + name, "data-setting": `${name}=${value}`, ".checked": value === chosen, onchange: () => this.want("prefs", { prefs: { [name]: value } }) }), h("span", null, label)),
        ),
      ),
    );
  }

  async entered() {
    this.#persisted = (await navigator.storage?.persisted?.()) ?? null;
    if (this.isConnected) this.draw();
  }

  async persist() {
    this.#persisted = await navigator.storage.persist();
    this.draw();
  }
}

customElements.define("pw-settings", Settings);

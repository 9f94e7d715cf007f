// The plan as a file, as a link that carries it whole, and as a QR code of that
// link, made in this page.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";

const margin = 4; // squares of quiet ground that a reader wants round the code

/** Data: {state}. */
export class Share extends Element {
  view({ state: { open, packed } }) {
    const now = packed?.doc === open.doc ? packed : null;
    const act = (type, label, more) => h("button", { type: "button", class: "button", "data-action": type, onclick: () => this.want(type), ...more }, label);
    return [
      h("h1", { tabindex: "-1" }, "Share this plan"),
      h("p", { class: "quiet" }, "Whoever opens it gets a plan of his own; yours stays as it is, and nothing goes through a server."),
      h(
        "div",
        { class: "share" },
        h("section", { key: "file" }, h("h2", null, "As a file"), h("p", null, "A text that a person can read. It opens from the start page of any Pourwright, for ever."), h("p", null, act("save-file", "Save as file"))),
        h("section", { key: "link" }, h("h2", null, "As a link"), now ? this.link(now, act) : h("p", { key: "wait", role: "status" }, "Packing it.")),
        h("section", { key: "code", class: "share-code" }, h("h2", null, "As a QR code"), now ? this.code(now) : h("p", { key: "wait", class: "quiet" }, "Packing it.")),
      ),
    ];
  }

  link({ link }, act) {
    if (!link) return h("p", { key: "long" }, "The plan is too long for a link: mail and messengers would cut it. Send it as a file.");
    return [
      h("p", { key: "how" }, POURWRIGHT_BUILD === "carried" ? "The link leads to this very file where it lies now. Elsewhere, paste it on the start page under “Open a link”." : "The whole plan stands behind the # of the address, which no browser sends to a server."),
      h("label", { key: "label", class: "field-label", for: "share-link" }, "Link"),
      h("input", { key: "link", id: "share-link", class: "field-input share-link", type: "text", readonly: true, "data-shared": "link", ".value": link, onfocus: (e) => e.target.select() }),
      h("p", { key: "acts", class: "share-acts" }, act("copy-link", "Copy"), navigator.share && act("send-link", "Send")),
    ];
  }

  code({ link, rows }) {
    if (!rows) return h("p", { key: "long", "data-shared": "too-long" }, `The plan is too long for a QR code, which holds 2953 letters at most. Send it as a ${link ? "file or a link" : "file"}.`);
    const side = rows.length + 2 * margin;
    return [
      h("p", { key: "how" }, POURWRIGHT_BUILD === "carried" ? "Scan it with a camera, then paste what it says on the start page of another Pourwright under “Open a link”." : "Scan it with the camera of another device: it opens the link. Hold it close; a whole plan makes small squares."),
      h(
        "svg:svg",
        { key: "code", class: "qr", viewBox: `0 0 ${side} ${side}`, role: "img", "aria-label": "QR code of the plan", "data-shared": "qr", "shape-rendering": "crispEdges" },
        h("svg:path", { class: "qr-ground", d: `M0 0h${side}v${side}h${-side}z` }),
        h("svg:path", { class: "qr-squares", d: squares(rows) }),
      ),
    ];
  }
}

/** Runs of dark squares as one path. */
function squares(rows) {
  let d = "";
  rows.forEach((row, y) => {
    for (const { index, 0: run } of row.matchAll(/1+/g)) d += `M${index + margin} ${y + margin}h${run.length}v1h${-run.length}z`;
  });
  return d;
}

customElements.define("pw-share", Share);

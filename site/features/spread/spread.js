// How far the answers may stray: for each ruling answer its likely span, drawn
// and written, and the entries that drive it.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { to } from "../../app/route.js";

/**
 * Data: {plan (id), straying (whether any entry carries a ±), reply (of the
 * engine to "spread", or null), fresh (whether it is of the plan as it
 * stands), titles (of the stations)}.
 */
export class Spread extends Element {
  view({ plan, straying, reply, fresh, titles }) {
    return [h("h3", null, "Likely span"), straying ? this.told(plan, reply, fresh, titles) : h("p", { key: "how", class: "quiet" }, "Write ± behind any figure, such as 420 ± 5 mm, to see how far the answers may stray.")];
  }

  told(plan, reply, fresh, titles) {
    if (!reply) return h("p", { key: "wait", class: "quiet", role: "status" }, "Working out how far the answers may stray.");
    if (!reply.ok) return h("p", { key: "none", class: "quiet" }, "No spans could be worked out. They come back when the entries are put right.");
    const reach = Math.max(...reply.answers.map(({ si: [low, middle, high] }) => Math.max(middle - low, high - middle) / Math.abs(middle)).filter(Number.isFinite), 0);
    return [
      h("p", { key: "about", class: "span-about" }, reply.answers.length > 0 ? `From ${reply.draws} draws inside the ± that you wrote, each ± taken as two standard deviations. Nine in ten lie between the outer figures; the middle one halves them. The bars are to one scale.` : "No ruling answer moves with the ± that you wrote.", reply.left > 0 && ` ${reply.left} more with ± were held at their middle.`),
      h("ul", { key: "spans", class: "spans", "aria-busy": String(!fresh) }, reply.answers.map((a) => this.answer(plan, a, reach, titles))),
      !fresh && h("p", { key: "again", class: "quiet" }, "Working them out again."),
    ];
  }

  answer(plan, a, reach, titles) {
    return h(
      "li",
      { key: a.station + "." + a.answer, class: "span", "data-span": a.station + "." + a.answer },
      h("a", { class: "span-name", href: to.sheet(plan, a.station, a.answer) }, a.label),
      h("span", { class: "span-text" }, h("span", null, a.low), " – ", h("b", null, a.middle), " – ", h("span", null, a.high)),
      reach > 0 && bar(a.si, reach),
      h(
        "p",
        { class: "span-why" },
        titles[a.station] ?? a.station,
        a.drivers.length > 0 && [". Mostly ", a.drivers.map((d, i) => [i > 0 && "; ", h("a", { href: to.field(plan, d.field) }, named(d)), `, ${d.share.replace(" ", "\u00a0")}`])],
        a.lost && `. No such answer in ${a.lost} of the draws`,
        ".",
      ),
    );
  }
}

/** An entry's name in a sentence, with its number where it stands in a list. */
const named = ({ field, label }) => label.charAt(0).toLowerCase() + label.slice(1) + (/\[(\d+)\]/.test(field) ? ` of no. ${Number(field.match(/\[(\d+)\]/)[1]) + 1}` : "");

/** The span on a line that reaches as far to both sides of the middle as the widest of all. */
function bar([low, middle, high], reach) {
  const at = (v) => 50 + (48 * (v - middle)) / (Math.abs(middle) * reach);
  return h(
    "svg:svg",
    { class: "span-bar", "aria-hidden": "true" },
    h("svg:line", { class: "span-ground", x1: "0", x2: "100%", y1: "50%", y2: "50%" }),
    Number.isFinite(at(low)) && h("svg:line", { class: "span-reach", x1: at(low).toFixed(2) + "%", x2: at(high).toFixed(2) + "%", y1: "50%", y2: "50%" }),
    h("svg:line", { class: "span-middle", x1: "50%", x2: "50%", y1: "10%", y2: "90%" }),
  );
}

customElements.define("pw-spread", Spread);

// Sheets parted into pages, as they will be printed: each sheet begins on a
// page of its own, with a head and a foot that say what it is. The browser's
// own page breaks would do for a long text; a preview, a "page 2 of 3" and a
// head that names the sheet they do not give everywhere.
//
// A sheet is {key, title, blocks} or, where it is laid out by itself,
// {key, title, pages}. A block is {key, node}, or {key, wrap, items} for what
// may be parted between its items: wrap(items) draws any run of them. keep
// holds a block with the next; half sets it in one of two columns. A sheet
// whose last page would be all but empty is set tighter, if that saves the page.
import { h, patch } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";

const scant = 0.4; // of a page: with less on it a last page is worth saving

/** Data: {sheets, name (of the plan), date, paper ("a4" or "letter")}. */
export class Pages extends Element {
  #laid = []; // the sheets' pages, of #of
  #tight = new Set(); // the keys of sheets that are set tighter
  #of = null;
  #room = 0; // px of width for the preview

  entered() {
    this.onSize(({ width }) => this.fit(width));
  }

  view(data) {
    return [
      this.#of !== data && h("div", { key: "galley", class: "galley", "aria-hidden": "true", "data-paper": data.paper }, this.galley(data)),
      this.#laid.map(({ sheet, pages, of, tight }) => pages.map((bands, i) => h("div", { key: `${sheet.key} ${i}`, class: "page-frame", "data-paper": of.paper }, this.page(of, sheet, bands, i, pages.length, tight)))),
    ];
  }

  // Everything once on pages without an end, to be measured.
  galley(data) {
    const blocks = data.sheets.filter((s) => s.blocks).flatMap((s) => s.blocks.map((b) => [s, b]));
    const strip = (half) => blocks.filter(([, b]) => Boolean(b.half) === half).map(([s, b]) => h("div", { key: s.key + " " + b.key, class: this.#tight.has(s.key) ? "page-block tight" : "page-block", "data-block": s.key + " " + b.key }, drawn({ block: b, from: 0, to: b.items?.length })));
    return [
      this.page(data, { key: "measure", title: "" }, [[]], 0, 1),
      h("div", { class: "paper-page galley-page" }, h("div", { class: "page-body" }, strip(false))),
      h("div", { class: "paper-page galley-page" }, h("div", { class: "page-body" }, h("div", { class: "page-halves" }, h("div", { class: "page-half" }, strip(true)), h("div", { class: "page-half" })))),
    ];
  }

  page({ name, date, paper }, sheet, bands, i, count, tight) {
    const first = i === 0 && sheet.key === this.data.sheets[0].key;
    const says = count > 1 ? `${sheet.title}, page ${i + 1} of ${count}` : sheet.title;
    return h(
      "section",
      { class: "paper-page", "data-paper": paper, "data-sheet-page": sheet.key, "aria-label": says, style: { "--margin": `${sheet.margin ?? 12}mm` } },
      // The heading of the room stays on screen; the first page brings its own.
      h("div", { class: "page-head" }, h("p", { class: "page-name" }, name), first && h("h1", { class: "page-name" }, name), h("p", null, "Printed " + date)),
      h("div", { class: tight ? "page-body tight" : "page-body" }, sheet.pages ? bands : bands.map(band)),
      h("div", { class: "page-foot" }, h("p", null, "Pourwright: arithmetic and reminders. Local codes and people on the spot decide."), h("p", null, says)),
    );
  }

  drawn() {
    if (this.#of === this.data) return;
    const body = this.querySelector("[data-sheet-page=measure] .page-body");
    const height = body.clientHeight;
    if (!height) return; // not in sight, so not to be measured
    const measured = (sheet, block) => measure(this.querySelector(`[data-block="${CSS.escape(sheet.key + " " + block.key)}"]`), block);
    const lay = (sheet) => {
      if (sheet.pages) return { of: this.data, sheet, pages: sheet.pages };
      const { pages, used } = laidOut(sheet.blocks.map((b) => measured(sheet, b)), height);
      return { of: this.data, sheet, pages, tight: this.#tight.has(sheet.key), scant: pages.length > 1 && used < scant * height };
    };
    this.#tight = new Set();
    let laid = this.data.sheets.map(lay);
    this.#tight = new Set(laid.filter((l) => l.scant).map((l) => l.sheet.key));
    if (this.#tight.size > 0) {
      patch(this, this.view(this.data)); // the galley again, tighter
      laid = laid.map((l) => (l.scant ? [lay(l.sheet)].find((t) => t.pages.length < l.pages.length) : null) ?? l);
      this.#tight = new Set();
    }
    this.#laid = laid;
    this.#of = this.data;
    this.draw();
    this.zoom();
  }

  fit(width) {
    if (width === this.#room) return;
    this.#room = width;
    if (this.#of !== this.data) this.drawn();
    this.zoom();
  }

  // On screen a page is never wider than its place.
  zoom() {
    const page = this.querySelector(".page-frame > .paper-page");
    if (page && this.#room) this.style.setProperty("--zoom", String(Math.min(1, this.#room / (page.offsetWidth + 2))));
  }
}

const drawn = ({ block, from, to }) => (block.items ? block.wrap(block.items.slice(from, to), from > 0) : block.node);

const piece = (p) => h("div", { key: `${p.block.key} ${p.from ?? ""}`, class: "page-block" }, drawn(p));

/** A band of a page: one frame over the whole width, or two halves side by side. */
const band = (frames, i) => (frames.length === 1 ? h("div", { key: i, class: "page-whole" }, frames[0].map(piece)) : h("div", { key: i, class: "page-halves" }, frames.map((frame) => h("div", { class: "page-half" }, frame.map(piece)))));

/** A block with its heights: of the whole, of each item, and of what stands round the items. */
function measure(place, block) {
  const height = place.getBoundingClientRect().height;
  if (!block.items) return { block, height };
  const items = [...place.querySelectorAll("[data-row]")].map((row) => row.getBoundingClientRect().height);
  return { block, height, items, round: height - items.reduce((sum, v) => sum + v, 0) };
}

/** Parts measured blocks into pages, each a list of bands, each of one or two frames of pieces; and says how much of the last is used. */
function laidOut(blocks, height) {
  const pages = [[]];
  let used = 0;
  const turn = () => {
    pages.push([]);
    used = 0;
  };
  const queue = blocks.map((m) => ({ ...m, from: 0 }));
  while (queue.length > 0) {
    const half = Boolean(queue[0].block.half);
    const end = queue.findIndex((m) => Boolean(m.block.half) !== half);
    const run = queue.splice(0, end < 0 ? queue.length : end);
    const after = queue[0] ? least(queue[0]) : 0; // to be held with a heading that ends the run
    while (run.length > 0) {
      const left = height - used;
      const fresh = used === 0;
      const [frames, tall, rest] = half ? halves(run, left, fresh) : whole(run, left, fresh, after);
      if (frames.some((frame) => frame.length > 0)) pages.at(-1).push(frames);
      used += tall;
      run.splice(0, run.length, ...rest);
      if (run.length > 0) turn();
    }
  }
  return { pages, used };
}

function whole(run, limit, fresh, after) {
  const rest = [...run];
  const { frame, used } = fill(rest, limit, fresh, after);
  return [[frame], used, rest];
}

// Two columns; on the last page as even as can be.
function halves(run, limit, fresh) {
  const attempt = (tall, force) => {
    const rest = [...run];
    const left = fill(rest, tall, force);
    const right = fill(rest, tall, force);
    return [[left.frame, right.frame], Math.max(left.used, right.used), rest];
  };
  const most = attempt(limit, fresh);
  if (most[2].length > 0) return most;
  let low = 0;
  let high = limit;
  while (high - low > 2) {
    const middle = (low + high) / 2;
    if (attempt(middle, false)[2].length > 0) low = middle;
    else high = middle;
  }
  const even = attempt(high, false);
  return even[2].length > 0 ? most : even;
}

// Two items at least stand together, at the foot of a page and at the head of the next.
const pair = 2;
const least = (m) => (m.items ? m.items.slice(m.from, m.from + pair).reduce((sum, v) => sum + v, m.round) : m.height);

/** Takes from the front of a queue what a frame holds. On a fresh page at least one piece goes in, come what may. */
function fill(queue, limit, fresh, after = 0) {
  const frame = [];
  let used = 0;
  while (queue.length > 0) {
    const m = queue[0];
    let want = least(m);
    for (let i = 0; queue[i]?.block.keep; i++) want += queue[i + 1] ? least(queue[i + 1]) : after;
    if (used + want > limit && !(fresh && frame.length === 0)) break;
    if (!m.items) {
      frame.push({ block: m.block });
      used += m.height;
      queue.shift();
      continue;
    }
    let to = m.from;
    let tall = m.round;
    while (to < m.items.length && (to === m.from || used + tall + m.items[to] <= limit)) tall += m.items[to++];
    const short = pair - (m.items.length - to);
    if (to < m.items.length && short > 0 && to - m.from - short >= pair) tall -= m.items.slice(to - short, to).reduce((sum, v) => sum + v, 0), (to -= short);
    frame.push({ block: m.block, from: m.from, to });
    used += tall;
    if (to < m.items.length) {
      queue[0] = { ...m, from: to };
      break;
    }
    queue.shift();
  }
  return { frame, used };
}

customElements.define("pw-pages", Pages);

// A contraction rule on paper, at full size: the engine's places drawn in
// millimetres. The strips lie along the page's long side and are read with the
// page turned, so that a rule has as few joins as can be; the check length lies
// the same way, because a printer may be true across and not along.
import { h } from "../../shared/draw.js";

const lead = 6; // mm from the end of a strip to its first line
const words = 42; // mm of the page's width for the check length and what it says
const across = 26; // mm of the page's width for a strip
const tall = 22; // mm of that for the strip itself
const lengths = [12, 9, 6.5, 5, 4, 3.2, 2.6]; // mm of the lines, by rank
const papers = { a4: [210, 297], letter: [215.9, 279.4] }; // mm, upright
const letter = 1.35; // mm that a letter of the small print takes, at most
const furniture = 18; // mm of the page's length for its head and foot

/** The pages of a rule, of the engine's answers. */
export function ruleSheet(answers) {
  const mm = (leaf) => leaf.si * 1000;
  const [width, height] = papers[answers.paper.text];
  const margin = mm(answers.margin);
  const [w, l] = [width - 2 * margin, height - 2 * margin - furniture];
  const pages = [];
  for (let n = 1; n <= answers.pages.value; n++) {
    pages.push(
      h(
        "svg:svg",
        { class: "rule", width: `${w}mm`, height: `${l}mm`, viewBox: `0 0 ${w} ${l}`, role: "img", "aria-label": `Contraction rule for ${answers.name.text}, page ${n}` },
        h("svg:g", { transform: `translate(${w} 0) rotate(90)` }, said(answers, mm, l), answers.strips.filter((s) => s.page.value === n).map((s) => strip(s, answers, mm))),
      ),
    );
  }
  return { pages, margin };
}

const text = (x, y, size, words, more) => h("svg:text", { x, y, "font-size": size, ...more }, words);

function said(a, mm, long) {
  const end = lead + mm(a.check_sent);
  const half = (lead + end) / 2;
  const convention = `Every size of the casting is drawn longer by ${a.longer.text}: ${a.per_metre.text}, about ${a.per_foot.text}.`;
  return h(
    "svg:g",
    { key: "said" },
    text(lead, 6, 5, `Contraction rule: ${a.name.text}`, { class: "rule-title" }),
    text(lead, 11, 3, convention),
    text(lead, 15, 2.6, `From ${a.source.text}.`, fits(`From ${a.source.text}.`, 2.6, long - 2 * lead)),
    text(lead, 22.5, 3, `Before you use it, measure this line with a good steel rule: printed true it is ${a.check_says.text} long.`, { class: "rule-strong" }),
    h("svg:path", { class: "rule-check", d: `M${lead} 28H${end}M${lead} 25V31M${end} 25V31M${half} 26.5V29.5` }),
    text(end + 5, 27, 2.8, "It measures:"),
    h("svg:path", { class: "rule-check", d: `M${end + 5} 32.5H${Math.min(end + 50, long - 2)}` }),
    text(lead, 35, 2.8, `If it is not, put in what it measures and print again. Correction of this print: ${a.correction_says.text}. Print at 100 %, with nothing fitted to the page.`),
    text(lead, 39, 2.8, "Printers scale, and paper moves with damp: measure the line again on the day. A printed rule is for wood and plaster, not for the machine shop."),
  );
}

/** Squeezes a text that would be longer than its room. */
const fits = (words, size, room) => (words.length * size * 0.5 > room ? { textLength: room, lengthAdjust: "spacingAndGlyphs" } : {});

function strip(s, a, mm) {
  const top = words + (s.place.value - 1) * across;
  const foot = top + tall;
  const first = s.number.value === 1;
  const last = s.number.value === a.count.value;
  const join = lead + mm(s.join);
  const left = first ? 0 : lead;
  const right = lead + mm(s.ends) + (last ? lead : 0);
  const near = (n) => String.fromCharCode(64 + n);
  const numbers = s.lines[0];
  return h(
    "svg:g",
    { key: "strip " + s.number.value, "data-strip": s.number.value },
    h("svg:path", { class: "rule-cut", d: `M${left} ${top}H${right}V${foot}H${left}Z` }),
    s.lines.map((lines) =>
      h("svg:path", { key: lines.rank.value, class: "rule-lines rule-rank-" + Math.min(lines.rank.value, 5), d: lines.at.map((at) => `M${(lead + mm(at)).toFixed(4)} ${top}v${lengths[lines.rank.value]}`).join("") }),
    ),
    numbers.at.map((at, i) => {
      const x = lead + mm(at);
      if (!last && x > join + 0.01) return null;
      return text(x.toFixed(3), top + 15.6, 3.2, numbers.numbers[i].text, { class: "rule-number", key: i, "text-anchor": !first && i === 0 ? "start" : !last && x > join - 0.01 ? "end" : "middle", dx: !first && i === 0 ? 0.6 : !last && x > join - 0.01 ? -0.6 : 0 });
    }),
    text(left + (first ? lead : 7), foot - 1.6, 2.5, legend(s, a, join - (first ? lead : 7) - 8)),
    !first && [h("svg:path", { class: "rule-join", d: diamond(lead, foot - 2.6, 1) }), text(lead + 3.6, foot - 1.6, 2.8, near(s.number.value - 1), { class: "rule-strong" })],
    !last && [
      h("svg:path", { class: "rule-fold", d: `M${join} ${top + lengths[0]}V${foot}` }),
      h("svg:path", { class: "rule-join", d: diamond(join, foot - 2.6, -1) }),
      text(join - 5.4, foot - 1.6, 2.8, near(s.number.value), { class: "rule-strong" }),
      text(join + 1, top + 15, 2.1, "paste the"),
      text(join + 1, top + 17.6, 2.1, "next strip"),
      text(join + 1, top + 20.2, 2.1, "on here"),
    ],
  );
}

/** What a strip says of itself, as much as there is room for. */
function legend(s, a, room) {
  const parts = [a.count.value > 1 && `Strip ${s.number.value} of ${a.count.value}.`, `${a.name.text}, ${a.contraction.text}.`, `Numbered in ${a.unit.text === "in" ? "inches" : "millimetres"} of the casting.`].filter(Boolean);
  while (parts.length > 1 && parts.join(" ").length * letter > room) parts.pop();
  return parts.join(" ");
}

/** Half of a diamond, that its other half on the next strip makes whole. */
const diamond = (x, y, side) => `M${x} ${y - 2.2}L${x + side * 2.6} ${y}L${x} ${y + 2.2}Z`;

// Where a class begins: the prepared demonstrations, and every calculator.
import { h } from "../../shared/draw.js";
import { to } from "../../app/route.js";
import { showOf } from "./lesson.js";

/** The page of lessons to choose from. */
export const choose = (calculators, { demonstrations, openings }) =>
  h(
    "main",
    { key: "choose", class: "class-choose" },
    h("h1", { tabindex: "-1" }, "Class"),
    h("p", { class: "class-about" }, "One formula at a time, large, with sliders on its inputs and the curve of its answer. Nothing that is moved here changes a plan."),
    h(
      "section",
      { class: "class-list" },
      h("h2", null, "Demonstrations"),
      h("ul", { class: "plans" }, demonstrations.map((d) => h("li", { key: d.file, class: "plan-row" }, h("a", { class: "plan-open", href: to.lesson("show/" + showOf(d.file)), "data-lesson": showOf(d.file) }, h("span", { class: "plan-name" }, d.title), h("span", { class: "plan-note" }, d.question))))),
    ),
    h(
      "section",
      { class: "class-list" },
      h("h2", null, "Calculators"),
      h("ul", { class: "plans class-calculators" }, calculators.filter((c) => c.name in openings).map((c) => h("li", { key: c.name, class: "plan-row" }, h("a", { class: "plan-open", href: to.lesson(c.name), "data-lesson": c.name }, h("span", { class: "plan-name" }, c.title), h("span", { class: "plan-note" }, c.about))))),
    ),
  );

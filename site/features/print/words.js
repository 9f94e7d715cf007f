// What several of the printed sheets say alike.
import { h } from "../../shared/draw.js";

export const station = (reply, key) => reply.stations.find((s) => s.key === key);

/** An answer that is known, or undefined. */
export const known = (answers, key) => (answers?.[key] && !answers[key].unknown ? answers[key] : undefined);

/** A size as its reader works to it: a part of an inch where the engine gives one. */
export const sized = (leaf) => leaf?.fraction ?? leaf?.text ?? "";

/** The head of a sheet, on its first page. */
export const sheetHead = (title, note) => ({ key: "head", node: h("div", { class: "paper-top" }, h("h2", null, title), note && h("p", { class: "paper-note" }, note)), keep: true });

export const heading = (key, text) => ({ key, node: h("h3", { class: "paper-heading" }, text), keep: true });

/** A box to tick; done, it carries a cross. */
export const box = (done) => h("span", { class: "tick-box", "aria-hidden": "true" }, done ? "×" : "");

/** Lines to write on, each with what belongs there. */
export const toWrite = (labels, name) => h("div", { class: "to-write" + (name ? " " + name : "") }, labels.map((label) => h("p", null, h("span", null, label))));

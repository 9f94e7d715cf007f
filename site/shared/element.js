// What all elements of the page have in common: data goes down as one
// property, intent goes up as one event.
import { patch } from "./draw.js";

/** An element that draws itself from its data. Subclasses give view(data). */
export class Element extends HTMLElement {
  #data;
  #gone;

  get data() {
    return this.#data;
  }

  /** Data is compared member by member, so passing the same again costs nothing. */
  set data(next) {
    if (this.#data && alike(this.#data, next)) return;
    this.#data = next;
    this.draw();
  }

  connectedCallback() {
    this.#gone = new AbortController();
    this.draw();
    this.entered?.();
  }

  disconnectedCallback() {
    this.#gone.abort();
    this.left?.();
  }

  draw() {
    if (!this.#data || !this.isConnected) return;
    patch(this, this.view(this.#data));
    this.drawn?.();
  }

  /** Listens on something that outlives the element, for as long as the element is in the page. */
  listen(target, event, handler) {
    target.addEventListener(event, handler, { signal: this.#gone.signal });
  }

  /** Calls back with the element's box whenever that changes, for as long as the element is in the page. */
  onSize(changed) {
    const watch = new ResizeObserver(() => this.isConnected && changed(this.getBoundingClientRect()));
    watch.observe(this);
    this.#gone.signal.addEventListener("abort", () => watch.disconnect());
  }

  /** Tells whoever holds the state what the user wants. */
  want(type, detail) {
    this.dispatchEvent(new CustomEvent("pw-want", { bubbles: true, detail: { type, ...detail } }));
  }
}

function alike(a, b) {
  const keys = Object.keys(b);
  return keys.length === Object.keys(a).length && keys.every((k) => Object.is(a[k], b[k]));
}

/** An id that labels and descriptions can point to, made of a field's path. */
export const idOf = (path, suffix = "") => "at-" + path.replaceAll(/[^a-z0-9]+/gi, "-") + suffix;

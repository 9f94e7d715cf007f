// Keeps the screen from going dark, where the device lets a page do that.

export class Awake {
  #lock = null;
  #wanted = false;
  #said;

  /** said(held) is told whether the screen is held awake; it never is while the page is out of sight. */
  constructor(said) {
    this.#said = said;
  }

  async hold() {
    this.#wanted = true;
    if (this.#lock || document.visibilityState === "hidden") return;
    try {
      const lock = await navigator.wakeLock.request("screen");
      if (!this.#wanted) return lock.release();
      this.#lock = lock;
      lock.addEventListener("release", () => {
        this.#lock = null;
        if (!this.#wanted) return;
        if (document.visibilityState === "visible") this.#said(false);
      });
      this.#said(true);
    } catch {
      this.#said(false); // no such thing here, or the battery is low
    }
  }

  release() {
    this.#wanted = false;
    this.#lock?.release();
    this.#lock = null;
  }
}

// The beats that the pourer tips by, as short tones. A beat's pitch rises
// along the pour; the last is double.

const ahead = 0.4; // s that tones are laid ahead of the drawing
const length = 0.07; // s of a tone
const from = 440; // Hz at the first beat, twice that at the last

export class Sound {
  #context = null;
  #laid = 0; // beats of this pour that are laid already
  #muted = false;

  get muted() {
    return this.#muted;
  }

  mute(on) {
    this.#muted = on;
  }

  /** Called on a touch: a page may not sound before. */
  wake() {
    this.#context ??= "AudioContext" in window ? new AudioContext() : null;
    if (this.#context?.state === "suspended") this.#context.resume().catch(() => {});
  }

  /** A pour begins; beats up to now are past. */
  begin(beats, now) {
    this.#laid = beats.filter((b) => b < now - 0.1).length;
  }

  /** Lays the beats that are due. beats are seconds of the pour, now is where it stands. */
  follow(beats, now) {
    for (; this.#laid < beats.length && beats[this.#laid] < now + ahead; this.#laid++) {
      if (this.#muted || this.#context?.state !== "running") continue;
      const share = beats.length > 1 ? this.#laid / (beats.length - 1) : 0;
      const at = this.#context.currentTime + Math.max(beats[this.#laid] - now, 0);
      this.#tone(at, from * 2 ** share);
      if (this.#laid === beats.length - 1) this.#tone(at + 2 * length, 2 * from);
    }
  }

  #tone(at, pitch) {
    const tone = this.#context.createOscillator();
    const loud = this.#context.createGain();
    tone.frequency.value = pitch;
    tone.type = "square"; // carries over a burner
    loud.gain.setValueAtTime(0.25, at);
    loud.gain.exponentialRampToValueAtTime(0.001, at + length);
    tone.connect(loud).connect(this.#context.destination);
    tone.start(at);
    tone.stop(at + length);
  }

  close() {
    this.#context?.close();
    this.#context = null;
  }
}

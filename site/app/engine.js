// The page's side of the engine: one worker, one call at a time, started again
// after a crash. A call is (name, options, input) → reply, as the door has it;
// a call that could not be made is answered as the door answers its own bugs.
import { startWorker } from "./engine-source.js";

const patience = 1500; // ms that a call in progress may go on once a newer one in its lane waits
const attempts = 2; // how often a call is tried when the worker dies under it

export class Engine {
  #worker = null;
  #ready = false;
  #queue = [];
  #now = null;
  #clock = 0;
  #failures = 0;
  #given = ""; // why the engine was given up
  #said;

  /** said(state) is told "starting", "ready" or "failed". It starts at its turn; calls made before that wait. */
  constructor(said, turn = Promise.resolve()) {
    this.#said = said;
    turn.then(() => this.#worker ?? this.#start());
  }

  /**
   * Makes a call. Of the calls in one lane only the newest matters: an older
   * one that waits is dropped and resolves to null, one that has been running
   * for too long is ended with its worker.
   */
  call(name, options, input, lane) {
    if (this.#given) return Promise.resolve({ ok: false, broken: this.#given });
    return new Promise((answer) => {
      if (lane) {
        for (const old of this.#queue.filter((c) => c.lane === lane)) old.answer(null);
        this.#queue = this.#queue.filter((c) => c.lane !== lane);
        const now = this.#now;
        if (now?.lane === lane) {
          setTimeout(() => {
            if (this.#now !== now) return;
            this.#now = null;
            now.answer(null);
            this.#start();
          }, Math.max(0, patience - (performance.now() - now.since)));
        }
      }
      this.#queue.push({ name, options: JSON.stringify(options), input: JSON.stringify(input), lane, answer, tries: 0 });
      this.#next();
    });
  }

  #start() {
    this.#worker?.terminate();
    this.#ready = false;
    this.#said("starting");
    let worker;
    try {
      worker = startWorker();
    } catch (error) {
      return this.#broke(String(error));
    }
    this.#worker = worker;
    worker.onmessage = ({ data }) => {
      if (worker !== this.#worker) return;
      if (data.ready) {
        this.#ready = true;
        this.#said("ready");
      } else if (data.id === this.#now?.id) {
        const { answer } = this.#now;
        this.#now = null;
        this.#failures = 0;
        answer(JSON.parse(data.reply));
      }
      this.#next();
    };
    worker.onerror = (event) => {
      event.preventDefault();
      if (worker === this.#worker) this.#broke(event.message || "the engine did not start");
    };
  }

  #next() {
    if (!this.#ready || this.#now || this.#queue.length === 0) return;
    const call = this.#queue.shift();
    call.id = ++this.#clock;
    call.tries++;
    call.since = performance.now();
    this.#now = call;
    this.#worker.postMessage({ id: call.id, name: call.name, options: call.options, input: call.input });
  }

  // The worker is gone. The call that it died in is tried once more; an engine
  // that dies again and again is given up, and says so at every call.
  #broke(why) {
    const call = this.#now;
    this.#now = null;
    this.#worker?.terminate();
    this.#worker = null;
    this.#ready = false;
    if (call) {
      if (call.tries < attempts) this.#queue.unshift(call);
      else call.answer({ ok: false, broken: why });
    }
    if (++this.#failures <= 3) return this.#start();
    this.#given = why;
    this.#said("failed");
    for (const waiting of this.#queue.splice(0)) waiting.answer({ ok: false, broken: why });
  }

  /** Gives a failed engine another try. */
  again() {
    this.#failures = 0;
    this.#given = "";
    this.#start();
  }
}

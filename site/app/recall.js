// The engine's last answers to each plan, kept on the device: they stand on the
// page before the engine has started. One engine answers one question in one
// way, so an answer is kept with its question, which names the engine, and is
// good for that alone. What is lost here is worked out again.
//
// A record is {plan, name, question, reply}: the last reply to the call of that
// name.
import { asked, openDatabase } from "./save.js";

const answersStore = "answers";
const rest = 400; // ms that nothing newer must come for an answer to be kept

export class Recall {
  #db = openDatabase("pourwright.answers", 1, answersStore, ["plan", "name"]).catch(() => null);
  #timers = new Map(); // by name of the call

  /** What is kept of a plan: its records by name. */
  async of(plan) {
    try {
      const records = await asked((await this.#store("readonly")).getAll(IDBKeyRange.bound([plan], [plan, []])));
      return Object.fromEntries(records.map((r) => [r.name, r]));
    } catch {
      return {};
    }
  }

  keep(record) {
    clearTimeout(this.#timers.get(record.name));
    this.#timers.set(
      record.name,
      setTimeout(async () => {
        try {
          (await this.#store("readwrite")).put(record);
        } catch {
          // A device without room: the engine will be asked.
        }
      }, rest),
    );
  }

  async remove(plan) {
    for (const timer of this.#timers.values()) clearTimeout(timer); // lest its last answer come after it
    try {
      (await this.#store("readwrite")).delete(IDBKeyRange.bound([plan], [plan, []]));
    } catch {
      // There is nothing that could be left.
    }
  }

  async #store(mode) {
    return (await this.#db).transaction(answersStore, mode).objectStore(answersStore);
  }
}

// Where plans are kept: IndexedDB, and where that is not to be had,
// localStorage under keys of our own (all pages opened as files share it).
//
// A record is {version, id, title, changed, units, stamp, doc}: units is the
// system that a bare number in doc was typed in. Every write checks that the
// record is still the one this page last saw; where another window has changed
// it meanwhile, the plan is kept beside it as a copy.

const plansStore = "plans";
const version = 1;
const prefix = "pourwright.plan.";
const unsavedPrefix = "pourwright.unsaved.";

export class Keeper {
  #db = null;
  #waiting = new Map(); // id → record not yet written
  #writing = null; // the record being written
  #stamps = new Map(); // id → stamp last seen
  #writer = newId();
  #count = 0;
  #said;
  #forked;

  /** said(saving) is told how saving stands; forked(from, record) that a plan went on as a copy. */
  constructor(said, forked) {
    this.#said = said;
    this.#forked = forked;
  }

  /** Opens the store and takes in what was left unwritten when a page was closed in haste. */
  async open() {
    try {
      this.#db = await openDatabase("pourwright", version, plansStore, "id");
    } catch {
      this.#db = null;
    }
    for (const key of keys(unsavedPrefix)) {
      const record = JSON.parse(localStorage.getItem(key));
      const standing = await this.get(record.id);
      if (!standing || standing.changed < record.changed) await this.#store({ ...record }, standing?.stamp);
      localStorage.removeItem(key);
    }
  }

  async list() {
    const records = this.#db
      ? await asked(this.#db.transaction(plansStore).objectStore(plansStore).getAll())
      : keys(prefix).map((key) => JSON.parse(localStorage.getItem(key)));
    const unwritten = this.#unwritten();
    return [...records.filter((r) => !unwritten.some((u) => u.id === r.id)), ...unwritten].map(({ id, title, changed, units, doc }) => ({ id, title, changed, units, doc })).sort((a, b) => (a.changed < b.changed ? 1 : -1));
  }

  async get(id) {
    const inHand = this.#unwritten().find((r) => r.id === id);
    if (inHand) return inHand;
    const record = this.#db ? await asked(this.#db.transaction(plansStore).objectStore(plansStore).get(id)) : JSON.parse(localStorage.getItem(prefix + id));
    if (record) this.#stamps.set(id, record.stamp);
    return record ?? null;
  }

  async remove(id) {
    this.#waiting.delete(id);
    if (this.#db) await asked(this.#db.transaction(plansStore, "readwrite").objectStore(plansStore).delete(id));
    else localStorage.removeItem(prefix + id);
  }

  /** Keeps a plan; of several in a row only the last is written. */
  put(id, doc, units) {
    this.#waiting.set(id, { version, id, title: title(doc), changed: new Date().toISOString(), units, doc });
    this.#said({ state: "saving" });
    return this.#write();
  }

  /**
   * Called when the page is hidden and may never come back: what is not
   * written yet is put where writing takes no waiting.
   */
  flush() {
    for (const record of this.#unwritten()) {
      try {
        localStorage.setItem(unsavedPrefix + record.id, JSON.stringify(record));
      } catch {
        // Full: the write that is under way is all there is.
      }
    }
  }

  // What is in hand only, each plan once and as it was last changed: a device
  // that refuses to store it must not make it look gone.
  #unwritten() {
    return [...new Map([this.#writing, ...this.#waiting.values()].filter(Boolean).map((r) => [r.id, r])).values()];
  }

  async #write() {
    if (this.#writing) return;
    while (this.#waiting.size > 0) {
      const [[id, record]] = this.#waiting;
      this.#waiting.delete(id);
      this.#writing = record;
      try {
        await this.#store(record, this.#stamps.get(id));
        localStorage.removeItem(unsavedPrefix + id);
        this.#said({ state: this.#db ? "saved" : "kept" });
      } catch (error) {
        this.#writing = null;
        if (!this.#waiting.has(id)) this.#waiting.set(id, record);
        this.#said({ state: "failed", full: error?.name === "QuotaExceededError", why: String(error?.message ?? error) });
        return;
      }
      this.#writing = null;
    }
  }

  async #store(record, seen) {
    record.stamp = `${this.#writer}.${++this.#count}`;
    if (!this.#db) {
      localStorage.setItem(prefix + record.id, JSON.stringify(record));
      return;
    }
    const transaction = this.#db.transaction(plansStore, "readwrite");
    const plans = transaction.objectStore(plansStore);
    const standing = await asked(plans.get(record.id));
    const from = record.id;
    if (standing && seen !== undefined && standing.stamp !== seen) {
      record.id = newId();
      record.title = copyTitle(record.title);
      record.doc = { ...record.doc, title: record.title };
    }
    plans.put(record);
    await new Promise((done, failed) => {
      transaction.oncomplete = done;
      transaction.onabort = transaction.onerror = () => failed(transaction.error);
    });
    this.#stamps.set(record.id, record.stamp);
    if (record.id === from) return;
    const later = this.#waiting.get(from);
    if (later) {
      this.#waiting.delete(from);
      this.#waiting.set(record.id, { ...later, id: record.id });
    }
    this.#forked(from, record);
  }
}

export const title = (doc) => (typeof doc?.title === "string" && doc.title.trim() ? doc.title.trim() : "Plan without a title");

export const copyTitle = (text) => text + ", copy";

/** An id that no other plan has. */
export const newId = () => Array.from(crypto.getRandomValues(new Uint8Array(8)), (b) => b.toString(16).padStart(2, "0")).join("");

/** Opens a database with one store in it, whose records are known by a key of theirs. */
export function openDatabase(name, version, store, keyPath) {
  return new Promise((done, failed) => {
    const request = indexedDB.open(name, version);
    request.onupgradeneeded = () => request.result.createObjectStore(store, { keyPath });
    request.onsuccess = () => {
      const db = request.result;
      db.onversionchange = () => db.close();
      done(db);
    };
    request.onerror = () => failed(request.error);
    request.onblocked = () => failed(new Error("another window holds an older store"));
  });
}

/** What a request of a database comes to. */
export const asked = (request) =>
  new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });

function keys(start) {
  return Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i)).filter((key) => key.startsWith(start));
}

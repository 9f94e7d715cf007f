// The one store. All that the page shows follows from its state; the state
// changes only by actions through the pure reducers below.
import { get, put, textOf } from "../shared/document.js";

const deepest = 300; // changes that can be taken back

/** A document in hand: what can be taken back, the field that is typed in, how often it has changed. */
function session(id, doc) {
  return { id, doc, past: [], future: [], typing: null, rev: 0 };
}

/** @typedef {{type: string}} Action and whatever its reducer reads */

export const initial = {
  route: { view: "start" },
  prefs: { units: "metric", theme: "", currency: "" }, // theme "": as the device says
  own: session("own", {}), // the shop's own figures, edited as a plan is
  ownFields: null, // their fields, in prefs.units
  ownFaults: [], // what is wrong with them
  ownHere: null, // what they are worth in the plan in hand: {question, fills, ladles, stands}
  calculators: null, // the door's list, in prefs.units
  engine: "starting", // ready, failed
  sketch: null, // the drawing of an empty plan, for the start page
  briefs: {}, // metal and metal to pour of the saved plans, by id
  plans: null, // the saved plans, newest first; null while they are being read
  open: null, // the plan in hand, see "open"
  reply: null, // the engine's answer to it, never of an older units or plan
  whole: false, // whether all its stations have come in full
  answered: 0, // the revision of the plan that it answers
  furnace: null, // the engine's answer to the furnace side, the last that was good
  spread: null, // how far the answers stray: {question, reply}, see spreadQuestion
  broken: "", // the engine's third reply: our own bug
  working: false, // whether the steps are wanted
  readings: {}, // how typed texts are read, by readingKey
  compared: null, // two plans side by side: {a, b, plans, reply}
  packed: null, // the plan in hand as a link: {doc, link, carries, rows (of its QR code)}
  shared: null, // the plan that the address carries: {code, doc, wrong, brief}
  saving: { state: "saved" }, // saving, kept (in the smaller store), failed
  print: { sheets: {}, paper: "", rule: {} }, // what goes on paper, see features/print/choice.js
  rule: { question: "", reply: null }, // the contraction rule, see ruleQuestion
  missing: "", // the plan that was asked for and is not on this device
  notices: [],
  update: false, // a new release of the page waits
};

/** What a spread was asked of: of another plan, change or system it is out of date. */
export const spreadQuestion = ({ open, prefs }) => open && [open.id, open.rev, prefs.units, prefs.currency].join();

/** Whether a station of a reply has come in full. */
export const inFull = (station) => station.answers !== undefined;

export const readingKey = (units, field, text) => [units, field.kind, field.unit, text].join("|");

const reducers = {
  route: (s, { route }) => ({
    ...s,
    route,
    working: Boolean(route.answer) || (s.working && s.route.station === route.station && s.route.plan === route.plan),
  }),
  prefs: (s, { prefs }) => ({ ...s, prefs: { ...s.prefs, ...prefs }, readings: "currency" in prefs ? {} : s.readings }),
  calculators: (s, { calculators }) => ({ ...s, calculators }),
  engine: (s, { state }) => ({ ...s, engine: state }),
  sketch: (s, { drawing }) => ({ ...s, sketch: drawing }),
  plans: (s, { plans }) => ({ ...s, plans }),
  briefs: (s, { briefs }) => ({ ...s, briefs }),
  compared: (s, { compared }) => ({ ...s, compared }),
  packed: (s, { packed }) => ({ ...s, packed }),
  shared: (s, { shared }) => ({ ...s, shared }),
  print: (s, { print }) => ({ ...s, print: { ...s.print, ...print } }),
  "rule-edit": (s, { path, value }) => ({ ...s, print: put(s.print, path, value === "" ? undefined : value) }),
  rule: (s, { question, reply }) => ({ ...s, rule: { question, reply } }),
  open: (s, { id, doc, strange }) => ({ ...s, open: { ...session(id, doc), strange }, reply: null, whole: false, furnace: null, spread: null, ownHere: null, broken: "" }),
  missing: (s, { id }) => ({ ...s, missing: id }),
  close: (s) => ({ ...s, open: null, reply: null, whole: false, furnace: null, spread: null, ownHere: null, broken: "", working: false }),
  renamed: (s, { from, id }) => (s.open?.id === from ? { ...s, open: { ...s.open, id } } : s),
  reply: (s, { reply }) => ({ ...s, answered: s.open.rev, ...(reply.broken ? { broken: reply.broken } : { reply, whole: reply.stations.every(inFull), broken: "" }) }),
  // The same answer with the stations that had not come in full; all else stays,
  // lest it be drawn again.
  rest: (s, { reply }) => ({ ...s, whole: true, reply: { ...s.reply, stations: s.reply.stations.map((station, i) => (inFull(station) ? station : reply.stations[i])) } }),
  furnace: (s, { reply }) => (reply.ok ? { ...s, furnace: reply.furnace } : { ...s, broken: reply.broken ?? s.broken }),
  spread: (s, { spread }) => ({ ...s, spread }),
  working: (s) => ({ ...s, working: true }),
  reading: (s, { readings }) => ({ ...s, readings: { ...s.readings, ...readings } }),
  saving: (s, { saving }) => ({ ...s, saving }),
  notice: (s, { notice }) => ({ ...s, notices: [...s.notices.filter((n) => n.id !== notice.id), notice] }),
  dismiss: (s, { id }) => ({ ...s, notices: s.notices.filter((n) => n.id !== id) }),
  update: (s) => ({ ...s, update: true }),

  // Strokes in one field are one change to take back, until the field is left.
  edit: (s, { path, value, done }) => {
    const doc = put(s.open.doc, path, value === "" ? undefined : value);
    const goesOn = s.open.typing === path;
    if (textOf(get(s.open.doc, path)) === textOf(value) && typeof value !== "boolean") {
      return done ? { ...s, open: { ...s.open, typing: null } } : s;
    }
    return changed(s, doc, { push: !goesOn, typing: done ? null : path });
  },
  // What the engine says to keep of a typed text: its unit with it. Dropped if
  // the field has changed since.
  keep: (s, { path, text, keep }) => {
    const open = s.open.typing === path ? { ...s.open, typing: null } : s.open;
    if (textOf(get(open.doc, path)) !== text || keep === text) return { ...s, open };
    return changed({ ...s, open }, put(open.doc, path, keep), { push: false, typing: null });
  },

  "list-add": (s, { path }) => list(s, path, (items) => [...items, {}]),
  "list-remove": (s, { path, at }) => list(s, path, (items) => items.toSpliced(at, 1)),
  "list-copy": (s, { path, at }) => list(s, path, (items) => items.toSpliced(at + 1, 0, structuredClone(items[at]))),
  "list-move": (s, { path, at, to }) => list(s, path, (items) => items.toSpliced(at, 1).toSpliced(to, 0, items[at])),

  // Blanks that the shop's own figures fill, as one change.
  fill: (s, { fills }) => changed(s, fills.reduce((doc, { path, value }) => put(doc, path, value), s.open.doc), { push: true, typing: null }),

  // A change of the shop's own figures is one that a plan might have.
  own: (s, { action }) => ({ ...s, own: reducers[action.type]({ ...s, open: s.own }, action).open }),
  "own-open": (s, { figures }) => ({ ...s, own: { ...s.own, doc: figures, rev: s.own.rev + 1, typing: null } }),
  ownFields: (s, { fields }) => ({ ...s, ownFields: fields }),
  ownFaults: (s, { faults }) => ({ ...s, ownFaults: faults }),
  ownHere: (s, { here }) => ({ ...s, ownHere: here }),

  // A hold point is answered in the plan, under its code.
  hold: (s, { code, change, done }) => {
    const answers = s.open.doc.handling?.answers ?? [];
    const known = answers.findIndex((a) => a.code === code);
    const at = known < 0 ? answers.length : known;
    const typing = `handling.answers[${at}].` + Object.keys(change)[0];
    const doc = put(s.open.doc, `handling.answers[${at}]`, { code, ...answers[known], ...change });
    return changed(s, doc, { push: s.open.typing !== typing, typing: done ? null : typing });
  },

  // What happened at the pour. It changes no answer of the plan, and is not
  // taken back: an entry made by mistake is struck out and stays to be read.
  record: (s, { event, strike }) => {
    const events = s.open.doc.record?.events ?? [];
    const next = event ? [...events, event] : events.with(strike, { ...events[strike], struck: true });
    return { ...s, open: { ...s.open, doc: put(s.open.doc, "record.events", next) } };
  },

  undo: (s) => {
    const { past, future, doc } = s.open;
    if (past.length === 0) return s;
    return turned(s, past.at(-1), past.slice(0, -1), [doc, ...future]);
  },
  redo: (s) => {
    const { past, future, doc } = s.open;
    if (future.length === 0) return s;
    return turned(s, future[0], [...past, doc], future.slice(1));
  },
};

function changed(s, doc, { push, typing }) {
  const past = push ? [...s.open.past, s.open.doc].slice(-deepest) : s.open.past;
  return { ...s, open: { ...s.open, doc, past, future: [], typing, rev: s.open.rev + 1 } };
}

const turned = (s, { record: _, ...doc }, past, future) => ({ ...s, open: { ...s.open, doc: s.open.doc.record ? { ...doc, record: s.open.doc.record } : doc, past, future, typing: null, rev: s.open.rev + 1 } });

function list(s, path, change) {
  const items = get(s.open.doc, path);
  return changed(s, put(s.open.doc, path, change(Array.isArray(items) ? items : [])), { push: true, typing: null });
}

/** @param {Action} action */
export function reduce(state, action) {
  const reducer = reducers[action.type];
  if (!reducer) throw new Error(`there is no action "${action.type}"`);
  return reducer(state, action);
}

/** A store: its state, a way to change it, and a call after each round of changes. */
export function createStore(state = initial) {
  let told = false;
  const listeners = [];
  return {
    get state() {
      return state;
    },
    dispatch(action) {
      const next = reduce(state, action);
      if (next === state) return;
      state = next;
      if (told) return;
      told = true;
      queueMicrotask(() => {
        told = false;
        for (const listener of listeners) listener(state);
      });
    },
    subscribe(listener) {
      listeners.push(listener);
    },
  };
}

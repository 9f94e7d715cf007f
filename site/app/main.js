// Starts the page and does everything that is not drawing: it turns what the
// user wants into actions on the store, and the store's changes into calls of
// the engine and writes to the device.
import { ruleQuestion, ruleWanted } from "../features/print/choice.js";
import { get, put, quantities, strays, understood } from "../shared/document.js";
import "./app.js";
import { examples, lessons, readCalculators, readEvidence, readFirst, readSketch } from "./data.js";
import { Engine } from "./engine.js";
import { keepOffline } from "./engine-source.js";
import { newest, readFile, saveFigures, saveFile, saveRecord } from "./files.js";
import { anything, keepOwn, readOwn } from "./own.js";
import { keepPrefs, keepPrint, readPrefs, readPrint, themeOf } from "./prefs.js";
import { Recall } from "./recall.js";
import { read, to } from "./route.js";
import { copyTitle, Keeper, newId, title } from "./save.js";
import { codeIn, fits, pack, unpack } from "./share.js";
import { createStore, inFull, initial, readingKey, spreadQuestion } from "./store.js";

const pause = 40; // ms that the answers wait for the next stroke
const calm = 250; // ms that the spans wait after the answers
const rest = 300; // ms after which nobody seems to be waiting for the engine
const latest = 1000; // ms after which the engine is started, whatever comes between

const store = createStore({ ...initial, prefs: readPrefs(), print: readPrint(), own: { ...initial.own, doc: readOwn() }, route: read(location.hash) });
const { dispatch } = store;
const app = document.createElement("pw-app");
const notice = (id, text) => dispatch({ type: "notice", notice: { id, text } });

// ── What goes wrong without anybody having foreseen it ──
addEventListener("error", (e) => e.error && notice("error", `Something on this page went wrong (${e.message}). What you entered is saved. If the page behaves oddly, load it again.`));
addEventListener("unhandledrejection", (e) => notice("error", `Something on this page went wrong (${e.reason?.message ?? e.reason}). What you entered is saved. If the page behaves oddly, load it again.`));

/** What is asked with every call: the reader's units and currency. */
const asks = () => ({ units: store.state.prefs.units, currency: store.state.prefs.currency });

// Starting the engine takes all that a small device has, for a second. So where
// nobody waits for it, the page first shows what it can show without it.
let begin;
const turn = new Promise((done) => (begin = done));
setTimeout(begin, latest);
const engine = new Engine((state) => dispatch({ type: "engine", state }), turn);
const drawn = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));

const keeper = new Keeper(
  (saving) => dispatch({ type: "saving", saving }),
  (from, record) => {
    notice("forked", `Another window has changed this plan meanwhile. Yours goes on as “${record.title}”; nothing was lost.`);
    dispatch({ type: "renamed", from, id: record.id });
    dispatch({ type: "edit", path: "title", value: record.title, done: true });
    location.replace(location.href.replace(from, record.id));
  },
);

const recall = new Recall();
const keeperOpen = keeper.open(); // before anything is drawn, to be there the sooner

// ── What the user wants ──
const wants = {
  prefs: ({ prefs }) => dispatch({ type: "prefs", prefs }),
  edit: (detail) => dispatch(detail),
  commit: async ({ path, field, text }) => {
    const { units } = store.state.prefs;
    const reply = field.sort === "quantity" && text.trim() ? await engine.call("read", { units }, { kind: field.kind, unit: field.unit, text }) : null;
    if (store.state.open) dispatch({ type: "keep", path, text, keep: reply?.ok ? reply.keep : text });
  },
  "list-add": (detail) => dispatch(detail),
  "list-remove": (detail) => dispatch(detail),
  "list-copy": (detail) => dispatch(detail),
  "list-move": (detail) => dispatch(detail),
  hold: (detail) => dispatch(detail),
  print: ({ print }) => dispatch({ type: "print", print }),
  "rule-edit": (detail) => dispatch(detail),
  "rule-commit": async ({ path, field, text }) => {
    const { units } = store.state.prefs;
    const reply = text.trim() && field.sort === "quantity" ? await engine.call("read", { units }, { kind: field.kind, unit: field.unit, text }) : null;
    if (reply?.ok && get(store.state.print, path) === text) dispatch({ type: "rule-edit", path, value: reply.keep });
  },
  record: (detail) => {
    dispatch(detail);
    queueMicrotask(() => keeper.flush()); // after it was handed to the keeper: it must outlive even this moment
  },
  "save-record": () => saveRecord(store.state.open.doc),
  "pour-again": async () => {
    const { record: _, ...doc } = store.state.open.doc;
    const { answers: __, ...handling } = doc.handling ?? {};
    const id = newId();
    await keeper.put(id, { ...doc, title: copyTitle(title(doc)), ...(doc.handling && { handling }) }, store.state.prefs.units);
    location.hash = to.plan(id, "furnace");
  },
  undo: () => dispatch({ type: "undo" }),
  redo: () => dispatch({ type: "redo" }),
  dismiss: ({ id }) => dispatch({ type: "dismiss", id }),
  "show-working": ({ answer }) => {
    const { open, route } = store.state;
    location.replace(to.sheet(open.id, route.station, answer));
  },
  "new-plan": async () => start(await withOwn({ format: newest, title: "" })),
  own: async ({ action }) => {
    if (action.type !== "commit") return dispatch({ type: "own", action });
    const { path, field, text } = action;
    const reply = field.sort === "quantity" && text.trim() ? await engine.call("read", asks(), { kind: field.kind, unit: field.unit, text }) : null;
    dispatch({ type: "own", action: { type: "keep", path, text, keep: reply?.ok ? reply.keep : text } });
  },
  "use-own": ({ fills }) => dispatch({ type: "fill", fills }),
  "save-own": () => saveFigures(store.state.own.doc),
  "open-own": async ({ file }) => {
    try {
      const { figures } = await readFile(file);
      if (typeof figures !== "object" || figures === null) throw new Error(`“${file.name}” holds no shop's figures. Nothing was changed.`);
      dispatch({ type: "own-open", figures });
    } catch (error) {
      notice("file", error.message);
    }
  },
  "open-example": ({ at }) => start(structuredClone(examples[at].plan)),
  "open-file": async ({ file }) => {
    try {
      const doc = await readFile(file);
      if (doc.figures) throw new Error(`“${file.name}” holds a shop's own figures: open it in the settings.`);
      if (Number(doc.format) > newest) notice("newer", `“${file.name}” was written by a newer Pourwright (format ${doc.format}). It opens as far as it is understood, and keeps the rest.`);
      await start(doc);
    } catch (error) {
      notice("file", error.message);
    }
  },
  "open-link": ({ text }) => {
    const code = codeIn(text);
    if (code) location.hash = to.shared(code);
    else notice("file", "That is no link that carries a plan. Such a link has #/shared/ in it and a long run of letters behind.");
  },
  "take-shared": () => store.state.shared?.doc && start(store.state.shared.doc),
  "copy-link": async () => {
    try {
      await navigator.clipboard.writeText(store.state.packed.link);
      notice("copied", "The link is copied.");
    } catch {
      notice("copied", "This browser does not let a page copy. Mark the link and copy it by hand.");
    }
  },
  "send-link": () => navigator.share({ title: title(store.state.open.doc), url: store.state.packed.link }).catch(() => {}), // who calls it off wants no notice
  "copy-plan": async ({ id }) => {
    const record = await keeper.get(id);
    if (!record) return;
    await keeper.put(newId(), { ...record.doc, title: copyTitle(title(record.doc)) }, record.units);
    await refresh();
  },
  "delete-plan": async ({ id }) => {
    await Promise.all([keeper.remove(id), recall.remove(id)]);
    await refresh();
  },
  "save-file": () => store.state.open && saveFile(store.state.open.doc),
  "save-again": () => keep(store.state),
  "engine-again": () => {
    engine.again();
    asked = followed = null;
    return store.state.open ? follow(store.state) : go();
  },
  "take-update": async () => {
    keeper.flush();
    const registration = await navigator.serviceWorker.getRegistration();
    navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
    registration?.waiting?.postMessage("take over");
  },
};
app.addEventListener("pw-want", ({ detail }) => wants[detail.type](detail));

// ── Plans ──

/** Opens a document as a new plan. Bare numbers in it are metric. */
async function start(doc) {
  const id = newId();
  const settled = await settle(doc, "metric");
  await keeperOpen;
  // Without an engine it is kept as it came, to be settled when it is opened.
  if (settled) keeper.put(id, settled, store.state.prefs.units);
  else keeper.put(id, doc, "metric");
  location.hash = to.plan(id);
}

async function openPlan(id) {
  const [record, kept] = await Promise.all([keeperOpen.then(() => keeper.get(id)), recall.of(id), calculatorsKnown]);
  if (store.state.route.plan !== id) return;
  if (!record) return dispatch({ type: "missing", id });
  const doc = await settle(record.doc, record.units);
  if (!doc) return; // the engine did not start, and says so
  const good = ["plan", "furnace", "spread"].filter((name) => kept[name]?.question === questionOf(name, doc));
  // An example is answered before the engine has started, also at the first time.
  const first = good.includes("plan") ? null : await readFirst(doc, asks()).catch(() => null);
  if (store.state.route.plan !== id) return;
  dispatch({ type: "open", id, doc, strange: understood(doc, planFields()).strange });
  for (const name of good) answered(name, kept[name].reply);
  if (first) answered("plan", first);
  bring(id);
}

// All that the engine's answers to the plan in hand hang on: which engine it is
// (POURWRIGHT_ENGINE is its digest, put in by the build), and what it is asked.
function questionOf(name, doc = store.state.open.doc) {
  const { record, ...plan } = understood(doc, planFields()).known;
  return JSON.stringify([POURWRIGHT_ENGINE, asks(), plan, name === "furnace" && record]);
}

function answered(name, reply) {
  if (name === "plan") dispatch({ type: "reply", reply });
  else if (name === "furnace") dispatch({ type: "furnace", reply });
  else dispatch({ type: "spread", spread: { question: spreadQuestion(store.state), reply } });
}

const remember = (name, reply) => recall.keep({ plan: store.state.open.id, name, question: questionOf(name), reply });

/** Takes the engine's answer to the plan in hand and keeps it for the next time. */
function take(name, reply) {
  answered(name, reply);
  if (reply.ok) remember(name, reply);
}

const planFields = () => store.state.calculators.find((c) => c.name === "plan").fields;

/**
 * Writes its unit behind every bare number, lest it change when the units do;
 * undefined where there is no engine to ask.
 */
async function settle(doc, units) {
  const listed = await readCalculators(units);
  let out = doc;
  for (const { path, field, text } of quantities(doc, listed.find((c) => c.name === "plan").fields)) {
    if (!field.unit || !bare(text)) continue;
    begin();
    const reply = await engine.call("read", { units }, { kind: field.kind, unit: field.unit, text });
    if (reply.broken) return undefined;
    if (reply.ok) out = put(out, path, reply.keep);
  }
  return out;
}

// Whether a text is a number without its unit: the % of 420 ± 5 % is none.
const bare = (text) => !/[^\d\s.,+\-/±½¼¾⅓⅔⅛⅜⅝⅞]/.test(text.replace(/(±|\+\/?-)[^%]*%\s*$/, ""));

// What the class needs: it asks the engine by itself, and gives a plan what was
// moved only when that is asked for; what was moved can then be taken back.
let brought = null; // the entries to make once the plan is open
const room = {
  lessons,
  examples,
  ask: (name, options, input, lane) => engine.call(name, options, input, lane),
  readPlan: async (id) => {
    await keeperOpen;
    const record = await keeper.get(id);
    return record && settle(record.doc, record.units);
  },
  take: (id, station, texts) => {
    brought = { id, texts };
    location.hash = to.sheet(id, station);
  },
};

function bring(id) {
  if (brought?.id === id) for (const [path, value] of Object.entries(brought.texts)) dispatch({ type: "edit", path, value, done: true });
  brought = null;
}

async function refresh() {
  const plans = await keeper.list();
  dispatch({ type: "plans", plans });
  const briefs = await inBrief(plans);
  if (store.state.plans === plans) dispatch({ type: "briefs", briefs: Object.fromEntries(plans.map((p, i) => [p.id, briefs[i]])) });
}

/** What each plan pours, and how much of it: of [{doc, units}], [{metal, poured}]. */
async function inBrief(plans) {
  await calculatorsKnown;
  if (plans.length === 0) return [];
  const reply = await engine.call("brief", asks(), { plans: plans.map(({ doc, units }) => ({ units, plan: understood(doc, planFields()).known })) });
  return reply.plans ?? [];
}

// Two plans side by side, asked about again when the units change.
async function compare() {
  const { a, b } = store.state.route;
  await keeperOpen;
  await calculatorsKnown;
  const records = await Promise.all([keeper.get(a), keeper.get(b)]);
  const { units } = store.state.prefs;
  let reply = null;
  if (records.every(Boolean)) {
    const docs = await Promise.all(records.map((r) => settle(r.doc, r.units)));
    const [first, second] = docs.map((doc) => doc && understood(doc, planFields()).known);
    if (first && second) reply = await engine.call("compare", asks(), { a: first, b: second });
  }
  const { route, prefs } = store.state;
  if (route.a === a && route.b === b && prefs.units === units) dispatch({ type: "compared", compared: { a, b, plans: records.map((r) => r && { id: r.id, title: title(r.doc) }), reply } });
}

// The plan in hand as a link and a QR code. A page that was opened as a file
// has an address that leads nowhere on another device, so its QR code carries
// the plan alone, to be pasted into another Pourwright.
let packing = null; // the document that is packed, or being packed

async function packUp() {
  const { id, doc } = store.state.open;
  packing = doc;
  const code = await pack(doc);
  const link = fits(code) ? location.href.replace(/#.*/, "") + to.shared(code) : null;
  const carries = location.protocol === "file:" ? to.shared(code) : link;
  const reply = link && (await engine.call("qr", {}, { text: carries }));
  if (store.state.open?.id === id && store.state.open.doc === doc) dispatch({ type: "packed", packed: { doc, link, rows: reply?.rows ?? null } });
}

// The plan that the address carries, to be looked at before it is taken.
async function unpackShared() {
  const { code } = store.state.route;
  const shared = { code };
  try {
    shared.doc = await unpack(code);
    [shared.brief] = await inBrief([{ doc: shared.doc, units: "metric" }]);
  } catch (error) {
    shared.wrong = error.message;
  }
  if (store.state.route.code === code) dispatch({ type: "shared", shared });
}

// ── The shop's own figures ──

const ownKnown = () => (store.state.ownFields ? understood(store.state.own.doc, store.state.ownFields).known : store.state.own.doc);

/** A new plan with the shop's figures in it. */
async function withOwn(doc) {
  if (!anything(store.state.own.doc)) return doc;
  begin();
  const reply = await engine.call("own", asks(), { figures: ownKnown(), plan: doc });
  return (reply.fills ?? []).reduce((out, { path, value }) => put(out, path, value), doc);
}

// What the figures are worth in the plan in hand, asked once its answers are in.
async function askOwn() {
  const { open, own, prefs } = store.state;
  if (!anything(own.doc)) return;
  const question = [open.id, open.rev, own.rev, prefs.units].join();
  if (store.state.ownHere?.question === question) return;
  const reply = await engine.call("own", asks(), { figures: ownKnown(), plan: understood(open.doc, planFields()).known }, "own");
  if (reply?.ok && store.state.open === open) dispatch({ type: "ownHere", here: { question, fills: reply.fills, ladles: reply.ladles, stands: new Set(reply.stands) } });
}

// The fields of the figures, and what is wrong with what stands in them.
async function lookOwn() {
  const { units } = store.state.prefs;
  const reply = await engine.call("ownfields", asks(), {});
  if (!reply.ok || units !== store.state.prefs.units) return;
  dispatch({ type: "ownFields", fields: reply.fields });
  await checkOwn();
}

async function checkOwn() {
  const { rev } = store.state.own;
  const reply = await engine.call("own", asks(), { figures: ownKnown(), plan: {} }, "own");
  if (!reply?.ok || rev !== store.state.own.rev) return;
  dispatch({ type: "ownFaults", faults: reply.faults });
  await readAll(quantities(store.state.own.doc, store.state.ownFields ?? []));
}

let warm = false;

// What the start page does while nobody waits.
async function idle() {
  if (!store.state.sketch) readSketch().then((drawing) => dispatch({ type: "sketch", drawing }), () => {}); // the page does without
  await new Promise((done) => setTimeout(done, rest));
  if (store.state.route.view !== "start") return;
  begin();
  // A browser compiles each part of the engine when it is first used, which takes a
  // third of a second: better now, with nobody waiting, than when the first plan is
  // opened. In no lane, lest a slow one be ended with the engine.
  if (!warm) engine.call("plan", asks(), examples[0].plan);
  warm = true;
}

// ── What follows from a change of state ──

let was = store.state;
let asked = null; // what the engine was last asked for
let timer = 0;

function follow(state) {
  const before = was;
  was = state;
  app.data = { state, examples, readEvidence, room };
  if (state.prefs !== before.prefs) {
    keepPrefs(state.prefs);
    wear(state.prefs.theme);
    if (state.prefs.units !== before.prefs.units) knowCalculators();
  }
  if (state.open && state.open.id === before.open?.id && state.open.doc !== before.open.doc) keep(state);
  if (state.own.doc !== before.own.doc) {
    if (!keepOwn(state.own.doc)) notice("own", "The shop's figures are not saved: this device has no room left for them. Save them as a file.");
    if (state.ownFields) checkOwn();
  }
  if (state.open && state.calculators) {
    calculate(state);
    if (state.route.page === "furnace") followPour(state);
  }
  if (state.print !== before.print) keepPrint(state.print);
  if (ruleWanted(state) && state.calculators) setRule(state);
  if (state.open && state.route.page === "share" && state.open.doc !== packing) packUp();
  if (state.prefs.units !== before.prefs.units) look(state.route);
}

// What a view of no one plan shows, as it is opened and in other units.
function look({ view }) {
  if (view === "start") refresh();
  if (view === "settings") lookOwn();
  if (view === "compare") compare();
  if (view === "shared") unpackShared();
}

const keep = ({ open, prefs }) => open && keeper.put(open.id, open.doc, prefs.units);

// Asks for the answers a moment after the last change, and of the steps for
// those of the open sheet alone: at first for what is looked at, and right behind
// it for the rest. A reply that comes too late for what is now in hand is dropped.
function calculate(state) {
  const question = [state.open.id, state.open.rev, state.prefs.units, state.prefs.currency, state.working && state.route.station].join();
  if (asked && asked.question === question && asked.calculators === state.calculators) return;
  const fresh = !asked || asked.id !== state.open.id || !state.reply;
  asked = { question, id: state.open.id, calculators: state.calculators };
  const mine = asked;
  clearTimeout(timer);
  timer = setTimeout(async () => {
    const { open, working, route } = store.state;
    if (!open || asked !== mine) return;
    const plan = understood(open.doc, planFields()).known;
    const ask = async (full) => {
      const reply = await engine.call("plan", { ...asks(), working, station: route.station, full }, plan, "plan");
      return asked === mine && store.state.open?.id === mine.id ? reply : null;
    };
    const first = await ask(looked(route));
    if (!first) return;
    answered("plan", first);
    const rest = first.ok && !store.state.whole && ask(first.stations.filter((s) => !inFull(s)).map((s) => s.key));
    readTexts();
    askOwn();
    askSpread();
    const second = await rest;
    if (second?.ok) dispatch({ type: "rest", reply: second });
    else if (second) answered("plan", second);
    if (first.ok && store.state.whole && asked === mine) remember("plan", store.state.reply);
  }, fresh ? 0 : pause);
}

/**
 * The stations that the engine is to tell of in full at first: on the mould's
 * page that of the open sheet, on all others every one (undefined).
 */
const looked = ({ page, station }) => (page === "mould" ? [station].filter(Boolean) : undefined);

// Asks for the contraction rule, where one is shown or printed.
let ruled = ""; // what it was last asked of

async function setRule(state) {
  const input = ruleQuestion(state);
  const question = JSON.stringify([input, state.prefs.units]);
  if (question === ruled) return;
  ruled = question;
  const reply = await engine.call("rule", { units: state.prefs.units, working: true }, input, "rule");
  if (reply && question === ruled) dispatch({ type: "rule", question, reply });
}

// Asks, at the furnace, how the pour stands: after every entry of its record
// and every change of the plan.
let followed = null;

async function followPour({ open, prefs }) {
  const question = [open.id, open.rev, prefs.units].join();
  if (followed?.question === question && followed.record === open.doc.record) return;
  const mine = (followed = { question, record: open.doc.record });
  const reply = await engine.call("furnace", { units: prefs.units }, understood(open.doc, planFields()).known, "furnace");
  if (reply && followed === mine && store.state.open?.id === open.id) take("furnace", reply);
}

// Asks how far the answers may stray, once they are in. A spread works the plan
// through hundreds of times, so it has an engine of its own, started when the
// first ± is typed: no answer waits for it.
let aside = null;
let spreadTimer = 0;

function askSpread() {
  const { open, prefs, spread } = store.state;
  const question = spreadQuestion(store.state);
  if (spread?.question === question) return;
  clearTimeout(spreadTimer);
  if (!quantities(open.doc, planFields()).some((q) => strays(q.text))) {
    if (spread) dispatch({ type: "spread", spread: null });
    return;
  }
  spreadTimer = setTimeout(async () => {
    aside ??= new Engine(() => {});
    const reply = await aside.call("spread", asks(), understood(open.doc, planFields()).known, "spread");
    if (reply && spreadQuestion(store.state) === question) take("spread", reply);
  }, calm);
}

// Asks how the texts of the open sheet are read, so that "16 1/2 in" can show
// what it comes to.
async function readTexts() {
  const { open, route } = store.state;
  const field = planFields().find((f) => f.key === route.station);
  if (field && open) await readAll(quantities(open.doc[field.key], field.fields));
}

async function readAll(typed) {
  const { prefs, readings } = store.state;
  const fresh = {};
  for (const q of typed) {
    const key = readingKey(prefs.units, q.field, q.text);
    if (key in readings || key in fresh) continue;
    const reply = await engine.call("read", asks(), { kind: q.field.kind, unit: q.field.unit, text: q.text });
    fresh[key] = reply.ok ? reply.shown : "";
  }
  if (Object.keys(fresh).length > 0) dispatch({ type: "reading", readings: fresh });
}

let calculatorsKnown = knowCalculators();

function knowCalculators() {
  const { units } = store.state.prefs;
  return (calculatorsKnown = readCalculators(units).then((calculators) => {
    if (units === store.state.prefs.units) dispatch({ type: "calculators", calculators });
  }));
}

// ── Address, theme, keys, coming and going ──

function wear(theme) {
  document.documentElement.dataset.theme = themeOf(theme);
}
for (const query of ["(prefers-color-scheme: dark)", "(prefers-contrast: more)"]) matchMedia(query).addEventListener("change", () => wear(store.state.prefs.theme));

async function go() {
  const route = read(location.hash);
  dispatch({ type: "route", route });
  if (route.view !== "plan") {
    if (store.state.open) dispatch({ type: "close" });
    asked = followed = null;
    await keeperOpen;
    look(route);
    if (route.view === "start") await idle();
    else begin();
  } else if (store.state.open?.id !== route.plan) {
    if (store.state.open) dispatch({ type: "close" });
    asked = followed = null;
    await openPlan(route.plan);
    if (store.state.reply) drawn().then(begin);
    else begin();
  } else {
    readTexts();
  }
}
addEventListener("hashchange", go);

addEventListener("keydown", (e) => {
  if (!(e.ctrlKey || e.metaKey) || e.altKey || !store.state.open) return;
  const key = e.key.toLowerCase();
  if (key === "s") {
    e.preventDefault();
    wants["save-file"]();
  } else if (key === "z" && !e.target.closest?.("input, textarea")) {
    e.preventDefault();
    dispatch({ type: e.shiftKey ? "redo" : "undo" });
  }
});

addEventListener("pagehide", () => keeper.flush());
document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && keeper.flush());

wear(store.state.prefs.theme);
store.subscribe(follow);
app.data = { state: store.state, examples, readEvidence, room };
const show = () => app.isConnected || document.body.append(app);
if (store.state.route.view === "plan") {
  // A plan is not drawn before it is open, unless that takes too long.
  setTimeout(show, 300);
  go().finally(show);
} else {
  show();
  go();
}

// After the first paint, so that keeping the page costs nobody time.
requestAnimationFrame(() =>
  setTimeout(async () => {
    try {
      const registration = await keepOffline();
      if (!registration) return;
      const waits = () => registration.waiting && navigator.serviceWorker.controller && dispatch({ type: "update" });
      waits();
      registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", waits));
    } catch {
      // A host without https: the page works, but has to be fetched each time.
    }
  }),
);

// What the engine's answer says of each field, by its path in the plan.
import { readingKey } from "../../app/store.js";

/**
 * @returns {{faults, needs, linked, findings, titles, reading}} maps by path;
 * titles by station. The field that is being typed in is left in peace.
 */
export function about(state) {
  const { reply, open, ownHere } = state;
  const out = { faults: {}, needs: {}, linked: {}, findings: {}, titles: {}, stands: ownHere?.stands, currency: state.prefs.currency };
  for (const s of reply?.stations ?? []) {
    out.titles[s.key] = s.title;
    for (const f of s.faults) if (f.field !== open?.typing) out.faults[f.field] ??= f;
    for (const f of s.needs) out.needs[f.field] ??= f;
    for (const l of s.linked ?? []) out.linked[l.field] ??= l;
    for (const f of s.findings ?? []) if (f.field) (out.findings[`${s.key}.${f.field}`] ??= []).push(f);
  }
  out.reading = readingIn(state);
  return out;
}

/** How the engine reads a typed text, where that says more than the text. */
export const readingIn =
  ({ readings, prefs }) =>
  (field, text) => {
    const shown = text && readings[readingKey(prefs.units, field, text)];
    return shown && plain(shown) !== plain(text) ? shown : undefined;
  };

const plain = (text) => text.replaceAll(/\s+/g, "").toLowerCase();

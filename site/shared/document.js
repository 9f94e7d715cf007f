// A plan document is a tree of texts, ticks, groups and lists, addressed by
// paths such as "weight.solids[2].length". All changes make a new tree that
// shares what did not change.

export const steps = (path) => path.split(/[.[\]]+/).filter(Boolean).map((s) => (/^\d+$/.test(s) ? Number(s) : s));

export const join = (base, key) => (base ? `${base}.${key}` : key);

export const get = (doc, path) => steps(path).reduce((at, step) => at?.[step], doc);

export function put(doc, path, value) {
  const write = (at, [step, ...rest]) => {
    if (step === undefined) return value;
    const copy = Array.isArray(at) ? [...at] : { ...at };
    copy[step] = write(at?.[step] ?? (typeof rest[0] === "number" ? [] : {}), rest);
    if (copy[step] === undefined) delete copy[step];
    return copy;
  };
  return write(doc, steps(path));
}

/** The text of a leaf; a number in a file counts as typed. */
export const textOf = (value) => (value === undefined || value === null || typeof value === "object" ? "" : String(value));

export const ticked = (value) => value === true || (typeof value === "string" && /^(yes|true|1)$/i.test(value.trim()));

/** Whether a field counts, going by the neighbour it depends on. */
export function counts(field, fields, group) {
  if (!field.when) return true;
  const neighbour = fields.find((f) => f.key === field.when.key);
  const given = group?.[field.when.key];
  const value = neighbour?.sort === "tick" ? (ticked(given ?? neighbour.default) ? "yes" : "no") : textOf(given) || neighbour?.default || "";
  return field.when.values.includes(value);
}

const bookkeeping = new Set(["format"]);

/**
 * Parts the document into what the fields know and the paths that they do
 * not. Those are kept in the file, but not sent to the engine, which would
 * refuse the whole.
 */
export function understood(doc, fields) {
  const strange = [];
  const group = (at, fields, base) => {
    if (typeof at !== "object" || at === null || Array.isArray(at)) {
      if (at !== undefined && at !== null) strange.push(base);
      return undefined;
    }
    const out = {};
    for (const [key, value] of Object.entries(at)) {
      const path = join(base, key);
      const field = fields.find((f) => f.key === key);
      if (!field) {
        if (base === "" && bookkeeping.has(key)) out[key] = value;
        else strange.push(path);
      } else if (field.sort === "group") {
        out[key] = group(value, field.fields, path);
      } else if (field.sort === "list") {
        if (Array.isArray(value)) out[key] = value.map((item, i) => group(item, field.fields, `${path}[${i}]`) ?? {});
        else if (value !== null) strange.push(path);
      } else if (typeof value === "object" && value !== null) {
        strange.push(path);
      } else {
        out[key] = value;
      }
      if (out[key] === undefined) delete out[key];
    }
    return out;
  };
  const known = group(doc, fields, "") ?? {};
  return { known, strange };
}

/** Whether a text carries a plus and minus: 420 ± 5 mm. */
export const strays = (text) => /±|\+\/?-/.test(text);

/** Every quantity that stands in the document: its path, field and text. */
export function quantities(doc, fields, base = "") {
  return fields.flatMap((field) => {
    const path = join(base, field.key);
    const value = doc?.[field.key];
    if (field.sort === "group") return quantities(value, field.fields, path);
    if (field.sort === "list") return (Array.isArray(value) ? value : []).flatMap((item, i) => quantities(item, field.fields, `${path}[${i}]`));
    if (field.sort === "quantity" && textOf(value)) return [{ path, field, text: textOf(value) }];
    return [];
  });
}

// A plan as a text that an address can carry: its JSON, gzipped, in the letters
// that need no escaping. It stands behind the "#", which no browser sends to a
// server.

const longest = 16_000; // letters of a link; longer ones get cut on their way
const largest = 1_000_000; // bytes of a plan out of a link

/** Packs a plan; a text of letters, digits, - and _. */
export async function pack(doc) {
  const bytes = new Uint8Array(await new Response(new Blob([JSON.stringify(bare(doc) ?? {})]).stream().pipeThrough(new CompressionStream("gzip"))).arrayBuffer());
  let text = "";
  for (const b of bytes) text += String.fromCharCode(b);
  return btoa(text).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** Whether a packed plan fits into a link. */
export const fits = (code) => code.length <= longest;

/** Unpacks what pack has packed; throws an Error whose message can be shown. */
export async function unpack(code) {
  if (!fits(code)) throw new Error("It is longer than a link that Pourwright makes.");
  let doc;
  try {
    const bytes = Uint8Array.from(atob(code.replaceAll("-", "+").replaceAll("_", "/")), (c) => c.charCodeAt(0));
    doc = JSON.parse(await gunzip(bytes));
  } catch (error) {
    if (error.tooLarge) throw new Error("What it carries is larger than any plan.");
    throw new Error("It was changed or cut short on its way. Ask for it again, or for the plan as a file.");
  }
  if (typeof doc !== "object" || doc === null || Array.isArray(doc)) throw new Error("What it carries is no plan.");
  return doc;
}

async function gunzip(bytes) {
  const parts = [];
  let size = 0;
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip")).getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return new Blob(parts).text();
    size += value.length;
    if (size > largest) throw Object.assign(new Error(), { tooLarge: true });
    parts.push(value);
  }
}

/** A document without its blanks. */
function bare(node) {
  if (Array.isArray(node)) return node.map((item) => bare(item) ?? {});
  if (typeof node !== "object" || node === null) return node === "" || node === null ? undefined : node;
  const kept = Object.entries(node).map(([key, value]) => [key, bare(value)]).filter(([, value]) => value !== undefined);
  return kept.length > 0 ? Object.fromEntries(kept) : undefined;
}

/** The packed plan in a text that somebody pasted: a link, or the code alone. */
export const codeIn = (text) => text.trim().match(/(?:#\/shared\/|^)([\w-]{20,})$/)?.[1];

// Reads the data blocks of the carried file; site/carried.go writes them.

/** What a block holds, still packed. */
export function block(name) {
  const text = Array.from(document.querySelectorAll(`script[type="application/x-${name}"]`), (e) => e.textContent).join("");
  const out = new Uint8Array(2 * text.length);
  let at = 0;
  for (let i = 1; i < text.length; i++) {
    let letter = text.charCodeAt(i);
    if (letter === 1) letter = text.charCodeAt(++i) ^ 0x8000;
    out[at++] = letter;
    out[at++] = letter >> 8;
  }
  return out.subarray(0, at - Number(text[0]));
}

/** What a block packed with gzip holds, as a response to be read as text or JSON. */
export const unzipped = (name) => new Response(new Blob([block(name)]).stream().pipeThrough(new DecompressionStream("gzip")));

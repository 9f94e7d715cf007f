// The first script of the carried file: it puts in the style and the page's own
// script, and the worker's for engine-source.js to find. The security policy
// knows their digests.
import { unzipped } from "./blocks.js";

function put(kind, text, more) {
  document.head.append(Object.assign(document.createElement(kind), { textContent: text }, more));
}

async function load() {
  const [style, worker, page] = await Promise.all(["style", "worker", "page"].map((name) => unzipped(name).text()));
  put("style", style);
  put("script", worker, { type: "text/x-worker" });
  put("script", page);
}

load().catch((error) => document.body.append(`Pourwright cannot start here (${error}). It wants a browser of 2023 or later; this file may also be damaged: copy it again.`));

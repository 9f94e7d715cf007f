// The first script of the carried file: it puts in the style and the page's own
// script, and the worker's for engine-source.js to find. The security policy
// knows their digests.
import { unzipped } from "./blocks.js";

function put(to, kind, text, more) {
  to.append(Object.assign(document.createElement(kind), { textContent: text }, more));
}

async function load() {
  const [style, worker, page] = await Promise.all(["style", "worker", "page"].map((name) => unzipped(name).text()));
  put(document.head, "style", style);
  put(document.head, "script", worker, { type: "text/x-worker" });
  put(document.head, "script", page);
}

load().catch((error) => {
  put(document.body, "h1", "Pourwright cannot start here");
  put(document.body, "p", "It wants a browser of 2023 or later. In a newer one this file has been damaged on its way: copy it again. Plans kept in this browser are not touched.");
  put(document.body, "p", `The browser says: ${error.message}.`);
});

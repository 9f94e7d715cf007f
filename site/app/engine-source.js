// Where the page gets its engine and its data from. A hosted build has them in
// files beside the page; a carried build, the one file, has them in data blocks
// of the page itself (site/carried.go writes them), of which only the engine
// stands behind this script. POURWRIGHT_BUILD is "hosted" or "carried", put in by
// the build.
import { block, unzipped } from "./blocks.js";

/**
 * Starts a worker that has, or fetches, the engine. It posts {ready: true}
 * once; after that every {id, name, options, input} of strings is answered by
 * {id, reply}. A worker that fails raises "error" and answers nothing more:
 * end it and start another.
 */
export function startWorker() {
  if (POURWRIGHT_BUILD === "hosted") return new Worker("worker.js");
  const url = URL.createObjectURL(new Blob([document.querySelector('script[type="text/x-worker"]').textContent], { type: "text/javascript" }));
  const worker = new Worker(url);
  whole.then(() => {
    const engine = block("engine");
    worker.postMessage({ engine }, [engine.buffer]);
  });
  return worker;
}

/** Reads the JSON that the build has put aside under a name: "proofs", "calculators" … */
export async function readAside(name) {
  if (POURWRIGHT_BUILD === "carried") return unzipped(name).json();
  const response = await fetch(`${name}.json`);
  if (!response.ok) throw new Error(`the host answers ${response.status}`);
  return response.json();
}

/** Makes the hosted build work without a network from now on; for a carried build there is nothing to do. */
export async function keepOffline() {
  if (POURWRIGHT_BUILD === "hosted" && "serviceWorker" in navigator) {
    return navigator.serviceWorker.register("sw.js");
  }
}

const whole = new Promise((done) => {
  if (document.readyState === "loading") addEventListener("DOMContentLoaded", done, { once: true });
  else done();
});

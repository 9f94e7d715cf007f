// A page that only starts the engine and lets a test ask it: the build's own
// tests put it in the place of app/main.js.
import { readCalculators } from "./data.js";
import { keepOffline, readAside, startWorker } from "./engine-source.js";
import { unpack } from "./unpack.js";

const waiting = [];
const worker = startWorker();
worker.onmessage = ({ data }) => {
  if (data.ready) document.title = "ready";
  else waiting[data.id](data.reply);
};
worker.onerror = (event) => {
  document.title = `failed: ${event.message}`;
};
keepOffline()?.catch((error) => {
  document.title = `failed: ${error}`;
});

globalThis.calculators = async (units) => JSON.stringify(await readCalculators(units));
globalThis.aside = async (name) => JSON.stringify(await readAside(name));
globalThis.ask = (name, options, input) =>
  new Promise((answer) => worker.postMessage({ id: waiting.push(answer) - 1, name, options, input }));
globalThis.unpacked = async (base64) => (await new Blob([...unpack(Uint8Array.fromBase64(base64))]).bytes()).toBase64();

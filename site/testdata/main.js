// A page that only starts the engine and shows what it answers to "list": the
// build's own tests put it in the place of app/main.js.
import { keepOffline, startWorker } from "./engine-source.js";

const worker = startWorker();
worker.onmessage = ({ data }) => {
  if (data.ready) worker.postMessage({ id: 7, name: "list", options: "{}", input: "{}" });
  else document.title = `${data.id} ${data.reply}`;
};
worker.onerror = (event) => {
  document.title = `failed: ${event.message}`;
};
keepOffline()?.catch((error) => {
  document.title = `failed: ${error}`;
});

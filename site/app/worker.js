// The worker that runs the engine. See engine-source.js for how it is started
// and spoken to.
import "go-wasm-exec"; // Go's own runtime glue, from the toolchain that built the engine
import { unpack } from "./unpack.js";

const go = new Go();

globalThis.pourwrightReady = () => {
  globalThis.onmessage = ({ data: { id, name, options, input } }) =>
    postMessage({ id, reply: pourwrightCall(name, options, input) });
  postMessage({ ready: true });
};

// The engine is compiled while it is still being read; the type is set here,
// for not every host knows it.
async function run(bytes) {
  const engine = new Response(await bytes, { headers: { "content-type": "application/wasm" } });
  const { instance } = await WebAssembly.instantiateStreaming(engine, go.importObject);
  await go.run(instance);
  throw new Error("the engine has stopped");
}

// A promise that fails in a worker does not reach the page as "error"; what a
// timer throws does.
const fail = (error) =>
  setTimeout(() => {
    throw error;
  });

if (POURWRIGHT_BUILD === "hosted") {
  run(fetch("pourwright.wasm").then((response) => response.body)).catch(fail);
} else {
  globalThis.onmessage = ({ data: { engine } }) => {
    const parts = unpack(engine);
    const pull = (stream) => {
      const { value, done } = parts.next();
      if (done) stream.close();
      else stream.enqueue(value);
    };
    run(new ReadableStream({ pull })).catch(fail);
  };
}

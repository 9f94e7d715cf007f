// The worker that runs the engine. See engine-source.js for how it is started
// and spoken to.
import "go-wasm-exec"; // Go's own runtime glue, from the toolchain that built the engine

const go = new Go();

globalThis.pourwrightReady = () => {
  globalThis.onmessage = ({ data: { id, name, options, input } }) =>
    postMessage({ id, reply: pourwrightCall(name, options, input) });
  postMessage({ ready: true });
};

async function run(bytes) {
  const { instance } = await WebAssembly.instantiate(await bytes, go.importObject);
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
  run(fetch("pourwright.wasm").then((response) => response.arrayBuffer())).catch(fail);
} else {
  globalThis.onmessage = ({ data: { engine } }) => {
    const unzipped = new Blob([engine]).stream().pipeThrough(new DecompressionStream("gzip"));
    run(new Response(unzipped).arrayBuffer()).catch(fail);
  };
}

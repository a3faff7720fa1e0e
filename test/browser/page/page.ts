/** Gives the test one function: a file and a request go to a worker, what it answers comes back. */
Object.assign(globalThis, {
  traceInWorker: async (address: string, name: string, request: unknown): Promise<unknown> => {
    const bytes = new Uint8Array(await (await fetch(address)).arrayBuffer());
    const worker = new Worker(new URL('./traceWorker.ts', import.meta.url), { type: 'module' });
    const answer = new Promise((settle, fail) => {
      worker.onmessage = ({ data }) => settle(data);
      worker.onerror = ({ message }) => fail(new Error(message));
    });
    worker.postMessage({ bytes, name, request });
    return await answer.finally(() => worker.terminate());
  },
});

/**
 * Gives the memory of a buffer back that the browser gave, as pixels of a canvas or bytes of a file: the browser itself holds on to them until
 * it collects, even when their buffer is transferred within the language. Sent to a port that nobody listens at, they are gone at once.
 */
export function letGoOfBuffer(buffer: ArrayBuffer): void {
  const { port1, port2 } = new MessageChannel();
  port2.close();
  port1.postMessage(null, [buffer]);
  port1.close();
}

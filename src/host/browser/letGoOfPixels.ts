/**
 * Gives the memory of pixels back that a canvas gave: the browser itself holds on to them until it collects, even when their buffer is
 * transferred within the language. Sent to a port that nobody listens at, they are gone at once.
 */
export function letGoOfPixels({ data }: ImageData): void {
  const { port1, port2 } = new MessageChannel();
  port2.close();
  port1.postMessage(null, [data.buffer]);
  port1.close();
}

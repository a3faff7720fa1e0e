/** Does something once the frame that is being made stands on the screen; gives what calls it off. */
export function afterFrame(act: () => void): () => void {
  let isOff = false;
  const frame = requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      if (!isOff) act();
    };
    port2.postMessage(null);
  });
  return () => {
    isOff = true;
    cancelAnimationFrame(frame);
  };
}

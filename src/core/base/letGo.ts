/**
 * Gives the memory of large buffers back at once where the language has a way to (`ArrayBuffer.prototype.transfer`); collectors leave them
 * lying for long. Nobody reads or writes them any more: elsewhere they stay as they are until they are collected.
 */
export function letGo(...views: readonly ArrayBufferView[]): void {
  for (const { buffer } of views) {
    // One that is gone already has no bytes, and cannot go twice.
    if (buffer.byteLength > 0) (buffer as { transfer?: (bytes: number) => unknown }).transfer?.(0);
  }
}

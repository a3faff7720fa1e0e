/**
 * Gives the memory of large buffers back at once where the language has a way to (`ArrayBuffer.prototype.transfer`); collectors leave them
 * lying for long. Only who made a buffer lets go of it, once nobody reads or writes it any more: where the language has no such way it
 * stays as it is until it is collected, so that a reader who comes too late would go unnoticed there.
 */
export function letGo(...views: readonly ArrayBufferView[]): void {
  for (const { buffer } of views) {
    // One that is gone already has no bytes, and cannot go twice.
    if (buffer.byteLength > 0) (buffer as { transfer?: (bytes: number) => unknown }).transfer?.(0);
  }
}

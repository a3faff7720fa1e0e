/** Lets the browser save bytes under a name. */
export function download(name: string, bytes: Uint8Array, type: string): void {
  const address = URL.createObjectURL(new Blob([Uint8Array.from(bytes)], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}

/** ms that a browser may take to begin saving. */
const KEPT_MS = 60_000;

/** A file name that every system takes, from what the maker calls the instrument. */
export function fileNameOf(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/[^A-Za-z0-9-]/g, '')
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  return plain === '' ? 'instrument' : plain;
}

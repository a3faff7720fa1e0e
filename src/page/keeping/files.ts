/** What files are asked for: of which kinds, whether several, whether from the camera. */
interface FilesAsked {
  readonly accept: string;
  readonly multiple?: boolean;
  readonly capture?: 'environment';
}

/** The field of the question that is open: held, for a browser may let go of one that lies in no page before its answer is there. */
let field: HTMLInputElement | null = null;

/** Asks for files in the browser's own way; nothing where none is chosen. The same file may be chosen again. */
export function askForFiles(asked: FilesAsked, take: (files: readonly File[]) => void): void {
  const opened = Object.assign(document.createElement('input'), { type: 'file', ...asked });
  opened.onchange = () => take([...(opened.files ?? [])]);
  field = opened;
  field.click();
}

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

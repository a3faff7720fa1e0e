/** Tags of the Exif standard (CIPA DC-008): the pointer to the camera's own notes, and the 35 mm equivalent in it. */
const EXIF_POINTER = 0x8769;
const FOCAL_35_MM = 0xa405;
const ENTRY_BYTES = 12;
const SHORT = 3;

/**
 * The focal length as 35 mm equivalent from a picture's Exif block (with or without its six-byte heading), or
 * undefined where the camera noted none or the block is damaged.
 */
export function focal35MmOf(exif: Uint8Array): number | undefined {
  const heading = new TextDecoder('latin1').decode(exif.subarray(0, 4)) === 'Exif' ? 6 : 0;
  const view = new DataView(exif.buffer, exif.byteOffset + heading, Math.max(0, exif.byteLength - heading));
  if (view.byteLength < 8) return undefined;
  const order = view.getUint16(0);
  if (order !== 0x4949 && order !== 0x4d4d) return undefined;
  const little = order === 0x4949;
  const notes = entryIn(view, view.getUint32(4, little), EXIF_POINTER, little);
  if (notes === undefined) return undefined;
  const focal = entryIn(view, view.getUint32(notes + 8, little), FOCAL_35_MM, little);
  if (focal === undefined || view.getUint16(focal + 2, little) !== SHORT) return undefined;
  const mm = view.getUint16(focal + 8, little);
  return mm > 0 ? mm : undefined;
}

/** Where in the block the entry of `tag` begins, in the directory at `directory`. */
function entryIn(view: DataView, directory: number, tag: number, little: boolean): number | undefined {
  if (directory + 2 > view.byteLength) return undefined;
  const count = view.getUint16(directory, little);
  for (let place = 0; place < count; place++) {
    const entry = directory + 2 + place * ENTRY_BYTES;
    if (entry + ENTRY_BYTES > view.byteLength) return undefined;
    if (view.getUint16(entry, little) === tag) return entry;
  }
  return undefined;
}

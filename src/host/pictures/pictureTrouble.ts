import type { Fault } from '../../core/index.ts';

/** More pixels than this do not fit the memory of an old laptop while they are worked on. */
const MOST_PIXELS = 120_000_000;
/** px. With a shorter side than this no outline can be found to a millimetre. */
const SHORTEST_SIDE_PX = 300;
/** Times as long as wide. No camera takes a picture like that, and no body fills one. */
const LONGEST_STRIP = 8;
const MEGAPIXEL = 1_000_000;

/** Brands of the HEIF file family that phones write (ISO/IEC 23008-12). */
const HEIC_BRANDS = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1'];

/** Fault `picture.heic` for a file that phones save and few programs open; `name` is what the file is called. */
export function heicFaults(bytes: Uint8Array, name: string): readonly Fault[] {
  const text = new TextDecoder('latin1').decode(bytes.subarray(4, 12));
  if (!(text.startsWith('ftyp') && HEIC_BRANDS.includes(text.slice(4)))) return [];
  return [
    {
      code: 'picture.heic',
      at: name,
      found: 'this is a HEIC picture, as some phones save them',
      need: 'a JPEG or PNG',
      remedy: 'set the phone to save JPEG, or export the picture as JPEG at full size',
    },
  ];
}

/** Faults `picture.tooLarge`, `picture.tooSmall` and `picture.strip`, told from the size alone, before anything is decoded. */
export function sizeFaults(widthPx: number, heightPx: number, name: string): readonly Fault[] {
  if (widthPx * heightPx > MOST_PIXELS) return [tooLargeFault(name, widthPx, heightPx)];
  const [short, long] = [Math.min(widthPx, heightPx), Math.max(widthPx, heightPx)];
  if (short < SHORTEST_SIDE_PX) return [tooSmallFault(name, widthPx, heightPx)];
  return long > LONGEST_STRIP * short ? [stripFault(name, widthPx, heightPx)] : [];
}

export function unreadableFault(at: string, error: unknown): Fault {
  return {
    code: 'picture.unreadable',
    at,
    found: `it cannot be read as a picture (${plainReason(error)})`,
    need: 'a whole JPEG or PNG',
    remedy: 'open it in a picture viewer; if that fails too, copy it from the camera again',
  };
}

/** What a decoder says, in a maker's words. */
function plainReason(error: unknown): string {
  const said = error instanceof Error ? error.message : String(error);
  if (/is empty/i.test(said)) return 'the file is empty';
  if (/premature|truncat|too soon|read error|end of (file|stream)/i.test(said)) return 'it ends too soon';
  if (/unsupported image format|neither a/i.test(said)) return 'neither a JPEG nor a PNG';
  return 'it is damaged';
}

function stripFault(at: string, width: number, height: number): Fault {
  return {
    code: 'picture.strip',
    at,
    found: `a strip of ${width} by ${height} pixels`,
    need: `a photograph at most ${LONGEST_STRIP} times as long as wide`,
    remedy: 'use the picture as the camera saved it',
  };
}

function tooLargeFault(at: string, width: number, height: number): Fault {
  return {
    code: 'picture.tooLarge',
    at,
    found: `${width} by ${height} pixels, ${Math.round((width * height) / MEGAPIXEL)} megapixels`,
    need: `at most ${MOST_PIXELS / MEGAPIXEL} megapixels`,
    remedy: 'save it at half the size; 12 to 50 megapixels are plenty',
  };
}

function tooSmallFault(at: string, width: number, height: number): Fault {
  return {
    code: 'picture.tooSmall',
    at,
    found: `only ${width} by ${height} pixels`,
    need: `at least ${SHORTEST_SIDE_PX} pixels each way, better 4000`,
    remedy: 'use the picture as the camera saved it, not a preview of it',
  };
}

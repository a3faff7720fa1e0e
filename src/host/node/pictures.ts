import sharp from 'sharp';
import { accept, type Checked, type Fault, type Picture, refuse } from '../../core/index.ts';
import { readBytes } from './files.ts';
import { focal35MmOf } from './focalNote.ts';
import { sha256 } from './packFolder.ts';

/** More pixels than this do not fit the memory of an old laptop while they are worked on. */
const MOST_PIXELS = 120_000_000;
/** px. With a shorter side than this no outline can be found to a millimetre. */
const SHORTEST_SIDE_PX = 300;

/**
 * A photograph from a file, upright as the camera noted it, in eight-bit sRGB, on white where it is transparent.
 * Faults: `file.unreadable`, `picture.heic`, `picture.unreadable`, `picture.tooLarge`, `picture.tooSmall`.
 */
export async function readPicture(path: string): Promise<Checked<Picture>> {
  const bytes = readBytes(path);
  return bytes.ok ? await decodePicture(bytes.value, path) : bytes;
}

/** The same with the fingerprint of the file, so that another picture of the same name can be told. */
export async function readPhotograph(
  path: string,
): Promise<Checked<{ readonly picture: Picture; readonly sha256: string }>> {
  const bytes = readBytes(path);
  if (!bytes.ok) return bytes;
  const picture = await decodePicture(bytes.value, path);
  return picture.ok ? accept({ picture: picture.value, sha256: sha256(bytes.value) }) : picture;
}

/** The same from bytes; `name` is what the faults call them. */
export async function decodePicture(bytes: Uint8Array, name: string): Promise<Checked<Picture>> {
  if (isHeic(bytes)) return refuse(heicFault(name));
  try {
    const source = sharp(bytes, { limitInputPixels: false });
    const { width, height, exif } = await source.metadata();
    if (width * height > MOST_PIXELS) return refuse(tooLargeFault(name, width, height));
    if (Math.min(width, height) < SHORTEST_SIDE_PX) return refuse(tooSmallFault(name, width, height));
    const { data, info } = await source
      .autoOrient()
      .flatten({ background: '#ffffff' })
      .toColourspace('srgb')
      .removeAlpha()
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    const focal35Mm = exif && focal35MmOf(exif);
    return accept({
      widthPx: info.width,
      heightPx: info.height,
      rgb: new Uint8Array(data.buffer, data.byteOffset, data.byteLength),
      ...(focal35Mm !== undefined && { focal35Mm }),
    });
  } catch (error) {
    return refuse(unreadableFault(name, error));
  }
}

/** Brands of the HEIF file family that phones write (ISO/IEC 23008-12). */
const HEIC_BRANDS = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1'];

function isHeic(bytes: Uint8Array): boolean {
  const text = new TextDecoder('latin1').decode(bytes.subarray(4, 12));
  return text.startsWith('ftyp') && HEIC_BRANDS.includes(text.slice(4));
}

function heicFault(at: string): Fault {
  return {
    code: 'picture.heic',
    at,
    found: 'this is a HEIC picture, as some phones save them',
    need: 'a JPEG or PNG',
    remedy: 'set the phone to save JPEG, or export the picture as JPEG at full size',
  };
}

function unreadableFault(at: string, error: unknown): Fault {
  const reason = error instanceof Error ? error.message.split('\n')[0] : String(error);
  return {
    code: 'picture.unreadable',
    at,
    found: `it cannot be read as a picture (${reason})`,
    need: 'a whole JPEG or PNG',
    remedy: 'open it in a picture viewer; if that fails too, copy it from the camera again',
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

const MEGAPIXEL = 1_000_000;

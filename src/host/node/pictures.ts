import sharp from 'sharp';
import { accept, type Checked, type Picture, refuse } from '../../core/index.ts';
import { focal35MmOf } from '../pictures/focalNote.ts';
import { heicFaults, sizeFaults, unreadableFault } from '../pictures/pictureTrouble.ts';
import { readBytes } from './files.ts';
import { sha256 } from './packFolder.ts';

/**
 * A photograph from a file, upright as the camera noted it, in eight-bit sRGB, on white where it is transparent.
 * Faults: `file.unreadable`, `picture.heic`, `picture.unreadable`, `picture.tooLarge`, `picture.tooSmall`, `picture.strip`.
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
  const heic = heicFaults(bytes, name);
  if (heic.length > 0) return refuse(...heic);
  try {
    const source = sharp(bytes, { limitInputPixels: false });
    const { width, height, exif } = await source.metadata();
    const size = sizeFaults(width, height, name);
    if (size.length > 0) return refuse(...size);
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

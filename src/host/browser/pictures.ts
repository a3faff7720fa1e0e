import { accept, type Checked, type Picture, refuse } from '../../core/index.ts';
import { focal35MmOf } from '../pictures/focalNote.ts';
import { pictureHeader } from '../pictures/pictureHeader.ts';
import { heicFaults, sizeFaults, unreadableFault } from '../pictures/pictureTrouble.ts';
import { letGoOfBuffer } from './letGoOfBuffer.ts';

/**
 * A photograph that was dropped or chosen, upright as the camera noted it, in eight-bit sRGB, on white where it is
 * transparent; in a page or in a worker. Faults: `picture.heic`, `picture.unreadable`, `picture.tooLarge`, `picture.tooSmall`, `picture.strip`.
 */
export async function decodePictureHere(bytes: Uint8Array, name: string): Promise<Checked<Picture>> {
  const heic = heicFaults(bytes, name);
  if (heic.length > 0) return refuse(...heic);
  const header = pictureHeader(bytes);
  if (header === null) return refuse(unreadableFault(name, 'neither a JPEG nor a PNG'));
  const size = sizeFaults(header.widthPx, header.heightPx, name);
  if (size.length > 0) return refuse(...size);
  if (!header.isWhole) return refuse(unreadableFault(name, 'it ends too soon'));
  try {
    const bitmap = await createImageBitmap(new Blob([bytes as Uint8Array<ArrayBuffer>]), {
      imageOrientation: 'from-image',
    });
    const focal35Mm = header.exif && focal35MmOf(header.exif);
    return accept({
      widthPx: bitmap.width,
      heightPx: bitmap.height,
      rgb: rgbOf(bitmap),
      ...(focal35Mm !== undefined && { focal35Mm }),
    });
  } catch (error) {
    return refuse(unreadableFault(name, error));
  }
}

/** Rows drawn at a time, so that a large picture is not held twice with its transparency. */
const BAND_ROWS = 256;

function rgbOf(bitmap: ImageBitmap): Uint8Array {
  const { width, height } = bitmap;
  const rgb = new Uint8Array(3 * width * height);
  const canvas = new OffscreenCanvas(width, Math.min(BAND_ROWS, height));
  const pen = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  if (pen === null) throw new Error('this browser gives no canvas to draw on');
  pen.imageSmoothingEnabled = false;
  for (let top = 0; top < height; top += BAND_ROWS) {
    const rows = Math.min(BAND_ROWS, height - top);
    pen.fillStyle = '#ffffff';
    pen.fillRect(0, 0, width, rows);
    pen.drawImage(bitmap, 0, top, width, rows, 0, 0, width, rows);
    const { data } = pen.getImageData(0, 0, width, rows);
    let to = 3 * top * width;
    for (let from = 0; from < data.length; from += 4) {
      rgb[to++] = data[from] as number;
      rgb[to++] = data[from + 1] as number;
      rgb[to++] = data[from + 2] as number;
    }
    letGoOfBuffer(data.buffer);
  }
  bitmap.close();
  canvas.width = 0;
  return rgb;
}

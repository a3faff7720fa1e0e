/** What a picture file says of itself before it is decoded. */
export interface PictureHeader {
  readonly widthPx: number;
  readonly heightPx: number;
  /** The camera's notes (Exif), where there are any. */
  readonly exif?: Uint8Array;
  /** Whether the file has its end: half a picture decodes without a word in some programs. */
  readonly isWhole: boolean;
}

/** The header of a JPEG (ITU-T T.81) or PNG (ISO/IEC 15948) file; null for anything else, and for a damaged one. */
export function pictureHeader(bytes: Uint8Array): PictureHeader | null {
  if (bytes.length < 24) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.getUint32(0) === PNG_MARK) return pngHeader(view);
  return view.getUint16(0) === JPEG_START ? jpegHeader(view, bytes) : null;
}

const PNG_MARK = 0x89504e47;
const PNG_END = 0x49454e44;
const PNG_FIRST_CHUNK = 8;

function pngHeader(view: DataView): PictureHeader {
  let isWhole = false;
  for (let at = PNG_FIRST_CHUNK; at + 12 <= view.byteLength && !isWhole; ) {
    isWhole = view.getUint32(at + 4) === PNG_END;
    at += 12 + view.getUint32(at);
  }
  return { widthPx: view.getUint32(16), heightPx: view.getUint32(20), isWhole };
}

const JPEG_START = 0xffd8;
const JPEG_END = 0xd9;
const START_OF_SCAN = 0xda;
const CAMERA_NOTES = 0xe1;
/** Start-of-frame markers lie from C0 to CF; three of that row are tables. */
const NO_FRAMES = [0xc4, 0xc8, 0xcc];

function jpegHeader(view: DataView, bytes: Uint8Array): PictureHeader | null {
  let size: { widthPx: number; heightPx: number } | null = null;
  let exif: Uint8Array | undefined;
  let at = 2;
  while (at + 4 <= view.byteLength && view.getUint8(at) === 0xff) {
    const marker = view.getUint8(at + 1);
    if (marker === START_OF_SCAN) break;
    const length = view.getUint16(at + 2);
    const isFrame = marker >= 0xc0 && marker <= 0xcf && !NO_FRAMES.includes(marker);
    if (isFrame && at + 9 <= view.byteLength)
      size = { heightPx: view.getUint16(at + 5), widthPx: view.getUint16(at + 7) };
    if (marker === CAMERA_NOTES && exif === undefined && isExif(bytes, at + 4))
      exif = bytes.subarray(at + 4, at + 2 + length);
    at += 2 + length;
  }
  if (size === null) return null;
  return { ...size, ...(exif && { exif }), isWhole: hasEnd(bytes, at) };
}

function isExif(bytes: Uint8Array, at: number): boolean {
  return new TextDecoder('latin1').decode(bytes.subarray(at, at + 4)) === 'Exif';
}

/** Inside the scan an FF that is data is followed by 0, so FF D9 is the end. */
function hasEnd(bytes: Uint8Array, from: number): boolean {
  for (let at = bytes.length - 2; at >= from; at--)
    if (bytes[at] === 0xff && bytes[at + 1] === JPEG_END) return true;
  return false;
}

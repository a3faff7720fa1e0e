/**
 * A photograph made small enough for a screen, upright, as a picture file of its own: a browser holds what it shows at full size,
 * four bytes a pixel. Rejects where the file is no picture.
 *
 * @param whole what the file measures upright, px
 */
export async function viewOfPicture(
  file: Blob,
  whole: { readonly width: number; readonly height: number },
  longSidePx: number,
): Promise<Blob> {
  const share = Math.min(1, longSidePx / Math.max(whole.width, whole.height));
  const [width, height] = [Math.round(share * whole.width), Math.round(share * whole.height)];
  const small = await createImageBitmap(file, {
    imageOrientation: 'from-image',
    resizeWidth: width,
    resizeHeight: height,
    resizeQuality: 'high',
  });
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('this browser gives no canvas to draw on');
  pen.fillStyle = '#ffffff';
  pen.fillRect(0, 0, width, height);
  pen.drawImage(small, 0, 0);
  small.close();
  const view = await canvas.convertToBlob({ type: 'image/jpeg', quality: VIEW_QUALITY });
  canvas.width = 0;
  return view;
}

/** Of 1: nothing is seen to be lost (chosen by us). */
const VIEW_QUALITY = 0.92;

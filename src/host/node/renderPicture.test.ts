import sharp from 'sharp';
import { expect, test } from 'vitest';
import { pngOf, pngOfSvg } from './renderPicture.ts';

test('a drawing in millimetres has the pixels a millimetre that were asked for, each in its place', async () => {
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="40.2mm" viewBox="0 0 60 40.2"><rect x="30" width="30" height="40.2" fill="#ff0000"/></svg>';
  for (const pixels of [1, 2.5, 3]) {
    const { data, info } = await sharp(await pngOfSvg(svg, pixels))
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([Math.round(60 * pixels), Math.round(40.2 * pixels)]);
    const at = (xMm: number) => {
      const start = info.channels * (Math.round(10 * pixels) * info.width + Math.round(xMm * pixels));
      return [...data.subarray(start, start + 3)];
    };
    expect(at(28)).toEqual([255, 255, 255]);
    expect(at(32)).toEqual([255, 0, 0]);
  }
});

test('the picture reaches its border where its size is no whole number of pixels', async () => {
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" width="10.3mm" height="20.44mm" viewBox="0 0 10.3 20.44"><rect width="10.3" height="20.44" fill="#000000"/></svg>';
  const { data } = await sharp(await pngOfSvg(svg, 1))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  expect([...data].every((channel) => channel === 0)).toBe(true);
});

test('a raster comes back from its PNG as it went in, and gives the same bytes again', async () => {
  const raster = { widthPx: 3, heightPx: 2, rgb: Uint8Array.from({ length: 18 }, (_, index) => 13 * index) };
  const png = await pngOf(raster);
  expect(await pngOf(raster)).toEqual(png);
  const back = await sharp(png).removeAlpha().raw().toBuffer();
  expect([...back]).toEqual([...raster.rgb]);
});

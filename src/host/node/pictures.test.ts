import sharp from 'sharp';
import { expect, test } from 'vitest';
import { focal35MmOf } from '../pictures/focalNote.ts';
import { decodePicture, readPicture } from './pictures.ts';

/** Left half red, right half blue. */
async function redAndBlue(orientation: number): Promise<Buffer> {
  const raw = Buffer.alloc(3 * 600 * 400);
  for (let i = 0; i < 600 * 400; i++) raw[3 * i + (i % 600 < 300 ? 0 : 2)] = 255;
  return await sharp(raw, { raw: { width: 600, height: 400, channels: 3 } })
    .withExif({ IFD2: { FocalLengthIn35mmFilm: '77' } })
    .withMetadata({ orientation })
    .jpeg({ quality: 100, chromaSubsampling: '4:4:4' })
    .toBuffer();
}

test('a picture comes upright as the camera noted it, with the focal length noted', async () => {
  const plain = await decodePicture(await redAndBlue(1), 'plain.jpg');
  const turned = await decodePicture(await redAndBlue(6), 'turned.jpg');
  if (!plain.ok || !turned.ok) throw new Error();
  expect([plain.value.widthPx, plain.value.heightPx, plain.value.focal35Mm]).toEqual([600, 400, 77]);
  expect([turned.value.widthPx, turned.value.heightPx]).toEqual([400, 600]);
  expect(turned.value.rgb.length).toBe(3 * 400 * 600);
  const topMiddle = 3 * (20 * 400 + 200);
  expect(turned.value.rgb[topMiddle]).toBeGreaterThan(200);
  const bottomMiddle = 3 * (580 * 400 + 200);
  expect(turned.value.rgb[bottomMiddle + 2]).toBeGreaterThan(200);
});

test('grey pictures and pictures with transparent parts come as red, green, blue on white', async () => {
  const grey = await sharp(Buffer.alloc(400 * 400, 80), { raw: { width: 400, height: 400, channels: 1 } })
    .png()
    .toBuffer();
  const clear = await sharp({ create: { width: 400, height: 400, channels: 4, background: '#00000000' } })
    .png()
    .toBuffer();
  for (const [bytes, level] of [
    [grey, 80],
    [clear, 255],
  ] as const) {
    const picture = await decodePicture(bytes, 'x.png');
    if (!picture.ok) throw new Error();
    expect(picture.value.rgb.length).toBe(3 * 400 * 400);
    expect([...picture.value.rgb.subarray(0, 3)]).toEqual([level, level, level]);
    expect(picture.value.focal35Mm).toBeUndefined();
  }
});

test('a file that is no picture, a cut-off one, a HEIC, a missing one and a preview are refused by name', async () => {
  const whole = await redAndBlue(1);
  const heic = Uint8Array.from([0, 0, 0, 24, ...Buffer.from('ftypheic'), 0, 0, 0, 0]);
  const small = await sharp({ create: { width: 200, height: 900, channels: 3, background: '#888' } })
    .png()
    .toBuffer();
  const codes = await Promise.all([
    decodePicture(new TextEncoder().encode('no picture at all'), 'a.jpg'),
    decodePicture(whole.subarray(0, Math.floor(whole.length / 2)), 'b.jpg'),
    decodePicture(heic, 'c.heic'),
    readPicture('/nowhere/d.jpg'),
    decodePicture(small, 'e.png'),
  ]);
  expect(codes.map((one) => (one.ok ? 'ok' : one.faults[0]!.code))).toEqual([
    'picture.unreadable',
    'picture.unreadable',
    'picture.heic',
    'file.unreadable',
    'picture.tooSmall',
  ]);
});

test('a damaged Exif block gives no focal length and no crash', () => {
  expect(focal35MmOf(new Uint8Array(0))).toBeUndefined();
  for (let length = 0; length < 40; length++)
    expect(
      focal35MmOf(Uint8Array.from([0x49, 0x49, 42, 0, 8, 0, 0, 0, 255, 255, ...new Array(length).fill(7)])),
    ).toBeUndefined();
});

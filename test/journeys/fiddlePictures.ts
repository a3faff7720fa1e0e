import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { ROOT } from './runGarland.ts';

/** px. Long side of the smaller pictures: enough to trace, and quick. */
const LONG_SIDE_PX = 1500;

/** Pictures of the demo's fiddle that a maker might take by mistake, by the name of their file. */
const FIDDLE_PICTURES = {
  'fiddle.jpg': (small: Buffer) => keep(small),
  'sheet-hidden.jpg': (small: Buffer) => covered(small, [[0, 0, 0.5, 1]], '#655443'),
  'no-sheet.jpg': (_small: Buffer, plain: Buffer) => keep(plain),
  'cut-off.jpg': async (_small: Buffer, plain: Buffer) => {
    const { width, height } = await sharp(plain).metadata();
    const most = { left: 0, top: 0, width, height: Math.round(0.74 * height) };
    return await sharp(plain).extract(most).jpeg().toBuffer();
  },
  'bench.jpg': async (small: Buffer) => {
    const { height } = await sharp(small).metadata();
    const strip = await sharp(small).extract({ left: 0, top: 0, width: 90, height }).toBuffer();
    return await sharp(strip).resize({ width: 1100, height, fit: 'fill' }).jpeg().toBuffer();
  },
  'blank.jpg': () =>
    sharp({ create: { width: 1100, height: 1500, channels: 3, background: PAPER } })
      .jpeg()
      .toBuffer(),
  'truncated.jpg': async (small: Buffer) => small.subarray(0, Math.round(small.length / 2)),
  'text.jpg': async () => Buffer.from('This is no picture.\n'),
} as const;

export type FiddlePicture = keyof typeof FIDDLE_PICTURES;

/** Writes all of them into a folder. */
export async function writeFiddlePictures(folder: string): Promise<void> {
  const small = await sharp(readFileSync(join(ROOT, 'demo', 'photographs', 'fiddle-top.jpg')))
    .autoOrient()
    .resize({ height: LONG_SIDE_PX })
    .jpeg({ quality: 92 })
    .toBuffer();
  const plain = readFileSync(join(import.meta.dirname, 'fiddle-without-sheet.jpg'));
  for (const [name, picture] of Object.entries(FIDDLE_PICTURES))
    writeFileSync(join(folder, name), await picture(small, plain));
}

const PAPER = '#e9e7e2';

async function keep(small: Buffer): Promise<Buffer> {
  return small;
}

/** Boxes painted over: left, top, right, bottom, as shares of the picture. */
async function covered(
  picture: Buffer,
  boxes: readonly (readonly [number, number, number, number])[],
  colour: string,
): Promise<Buffer> {
  const { width, height } = await sharp(picture).metadata();
  const shapes = boxes.map(
    ([left, top, right, bottom]) =>
      `<rect x="${left * width}" y="${top * height}" width="${(right - left) * width}" height="${(bottom - top) * height}" fill="${colour}"/>`,
  );
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${shapes.join('')}</svg>`;
  return await sharp(picture)
    .composite([{ input: Buffer.from(svg) }])
    .jpeg({ quality: 92 })
    .toBuffer();
}

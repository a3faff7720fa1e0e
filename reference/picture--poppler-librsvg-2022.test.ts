/**
 * Programs: Poppler 22 (pdftoppm) and librsvg 2.54 (rsvg-convert), through Debian.
 * Claimed: two independent programs paint a picture that we wrote as PDF and as SVG alike: at each of some places, told in
 * millimetres, the colour that belongs there, on a page of the picture's size (ten pixels a millimetre).
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { point } from '../src/core/base/index.ts';
import { circleChain } from '../src/core/curve/index.ts';
import { writeSheetPdf, writeSheetSvg } from '../src/core/files/index.ts';
import type { PictureSheet } from '../src/core/judging/index.ts';
import { pngOf } from '../src/host/index.ts';

/** A disc of 16 mm cut out of a raster, red on the left and blue on the right, with a green ring and a grey spot. */
const sheet: PictureSheet = {
  title: 'Disc',
  box: { min: point(-30, -20), max: point(30, 20) },
  ground: [250, 240, 230],
  rasters: [
    {
      raster: { widthPx: 4, heightPx: 1, rgb: Uint8Array.from([255, 0, 0, 255, 0, 0, 0, 0, 255, 0, 0, 255]) },
      box: { min: point(-20, -10), max: point(20, 10) },
      within: circleChain(point<'drawing'>(0, 0), 8),
    },
  ],
  lines: [
    { chain: circleChain(point<'drawing'>(0, 0), 14), ink: [0, 128, 0], widthMm: 2 },
    { chain: circleChain(point<'drawing'>(22, 12), 3), ink: [0, 0, 0], widthMm: 0, fill: [90, 90, 90] },
  ],
  lettering: [],
};

const PLACES = [
  [
    [-6.5, 0],
    [255, 0, 0],
  ],
  [
    [6.5, 0],
    [0, 0, 255],
  ],
  [
    [-22, 12],
    [250, 240, 230],
  ],
  [
    [22, 12],
    [90, 90, 90],
  ],
  // Three tenths of a millimetre to either side of borders.
  [
    [-7.7, 0],
    [255, 0, 0],
  ],
  [
    [-8.3, 0],
    [250, 240, 230],
  ],
  [
    [7.7, 0],
    [0, 0, 255],
  ],
  [
    [8.3, 0],
    [250, 240, 230],
  ],
  [
    [0, 14.7],
    [0, 128, 0],
  ],
  [
    [0, 15.3],
    [250, 240, 230],
  ],
  [
    [0, -14.7],
    [0, 128, 0],
  ],
  [
    [0, -15.3],
    [250, 240, 230],
  ],
] as const;

test.each(['pdf', 'svg'] as const)('a picture as %s shows every colour where it belongs', async (kind) => {
  const folder = mkdtempSync(join(tmpdir(), 'garland-'));
  try {
    const [file, png] = [join(folder, `x.${kind}`), join(folder, 'x.png')];
    writeFileSync(file, kind === 'pdf' ? await writeSheetPdf(sheet) : await writeSheetSvg(sheet, pngOf));
    const run =
      kind === 'pdf'
        ? spawnSync('pdftoppm', [
            '-png',
            '-singlefile',
            '-scale-to-x',
            '600',
            '-scale-to-y',
            '400',
            file,
            join(folder, 'x'),
          ])
        : spawnSync('rsvg-convert', ['-w', '600', '-h', '400', '-o', png, file]);
    expect(run.stderr.toString()).toBe('');
    const { data, info } = await sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([600, 400]);
    for (const [[x, y], colour] of PLACES) {
      const start = 3 * (Math.round(10 * (20 - y)) * info.width + Math.round(10 * (x + 30)));
      const shown = [...data.subarray(start, start + 3)];
      for (const channel of [0, 1, 2] as const)
        expect(Math.abs((shown[channel] ?? 0) - colour[channel]), `${x}, ${y}: ${shown}`).toBeLessThanOrEqual(
          4,
        );
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

import { expect, test } from 'vitest';
import { point } from '../base/index.ts';
import { circleChain } from '../curve/index.ts';
import type { PictureSheet } from '../judging/index.ts';
import { writeSheetPdf } from './writeSheetPdf.ts';
import { writeSheetSvg } from './writeSheetSvg.ts';

const sheet: PictureSheet = {
  title: 'A disc & more',
  box: { min: point(-30, -20), max: point(30, 20) },
  ground: [255, 255, 255],
  rasters: [
    {
      raster: { widthPx: 2, heightPx: 1, rgb: Uint8Array.from([255, 0, 0, 0, 0, 255]) },
      box: { min: point(-20, -10), max: point(20, 10) },
      within: circleChain(point<'drawing'>(0, 0), 8),
    },
  ],
  lines: [
    { chain: circleChain(point<'drawing'>(0, 0), 8), ink: [0, 16, 255], widthMm: 0.5, dashMm: [2, 1] },
    { chain: circleChain(point<'drawing'>(20, 10), 2), ink: [0, 0, 0], widthMm: 0, fill: [1, 2, 3] },
  ],
  lettering: [
    {
      lettering: { text: 'L', at: point(0, -15), heightMm: 4, turnRad: 0, anchor: 'middle' },
      ink: [9, 9, 9],
    },
  ],
};

test('a picture is an SVG at true size: ground, raster inside its edge, lines, letters as strokes', async () => {
  const svg = await writeSheetSvg(sheet, async (raster) => raster.rgb.slice(0, 3));
  expect(svg).toContain('width="60mm" height="40mm" viewBox="0 0 60 40"');
  expect(svg).toContain('<title>A disc &amp; more</title>');
  expect(svg).toContain('<clipPath id="within-0"><path d="M38 20');
  expect(svg).toContain(
    '<image x="10" y="10" width="40" height="20" preserveAspectRatio="none" xlink:href="data:image/png;base64,/wAA"/>',
  );
  expect(svg).toContain('stroke="#0010ff" stroke-width="0.5" stroke-dasharray="2 1"');
  expect(svg).toMatch(/<path d="M52 10[^"]*" fill="#010203"\/>/);
  expect(svg).not.toContain('<text');
});

test('the digits of a raster end as the standard says, whatever its length', async () => {
  for (const [bytes, digits] of [
    [[], ''],
    [[102], 'Zg=='],
    [[102, 111], 'Zm8='],
    [[102, 111, 111], 'Zm9v'],
    [[102, 111, 111, 98, 97, 114], 'Zm9vYmFy'],
  ] as const) {
    const svg = await writeSheetSvg(sheet, async () => Uint8Array.from(bytes));
    expect(svg).toContain(`base64,${digits}"`);
  }
});

test('a picture is a PDF of one page of its own size, the same bytes each time', async () => {
  const pdf = await writeSheetPdf(sheet);
  expect(await writeSheetPdf(sheet)).toEqual(pdf);
  const text = new TextDecoder('latin1').decode(pdf);
  const media = /MediaBox \[ 0 0 ([\d.]+) ([\d.]+) \]/.exec(text);
  expect([Number(media?.[1]), Number(media?.[2])].map((points) => (points * 25.4) / 72)).toEqual([
    expect.closeTo(60, 4),
    expect.closeTo(40, 4),
  ]);
  expect(text).toMatch(/\/Width 2\s/);
  expect(text.match(/\/Type \/Page\b/g)).toHaveLength(1);
});

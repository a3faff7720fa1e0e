/**
 * Title: librsvg (rsvg-convert) and resvg 2.6; authors: the librsvg developers, the resvg developers; year: 2022 or later.
 * Claim: two independent renderers draw the laser file at its size: the outer edge spans what the design says within
 * 0.05 mm, read at 600 dots an inch.
 */
import { execFileSync } from 'node:child_process';
import { Resvg } from '@resvg/resvg-js';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { boundsOf } from '../src/core/curve/index.ts';
import { writeSvg } from '../src/core/files/index.ts';
import { fiddleForm } from '../test/laws/sampleDrawings.ts';

const DPI = 600;
const MM = 25.4 / DPI;

const renderers: Readonly<Record<string, (svg: string) => Buffer>> = {
  librsvg: (svg) =>
    execFileSync('rsvg-convert', ['-d', `${DPI}`, '-p', `${DPI}`, '-b', 'white'], {
      input: svg,
      maxBuffer: 1 << 28,
    }),
  resvg: (svg) =>
    Buffer.from(
      new Resvg(svg, {
        dpi: DPI,
        background: 'white',
        fitTo: { mode: 'zoom', value: (DPI / 25.4) * zoomOf(svg) },
      })
        .render()
        .asPng(),
    ),
};

test.each(Object.keys(renderers))('%s draws the form at its size', async (name) => {
  const form = fiddleForm();
  const svg = writeSvg({ ...form, lettering: [] });
  if (!svg.ok) throw new Error('refused');
  const png = renderers[name]?.(svg.value);
  if (!png) throw new Error('no renderer');
  const { data, info } = await sharp(png, { limitInputPixels: false })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  let [left, right, top, bottom] = [info.width, 0, info.height, 0];
  for (let y = 0; y < info.height; y++)
    for (let x = 0; x < info.width; x++) {
      if ((data[y * info.width + x] ?? 255) > 170) continue;
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  const [outer] = form.lines;
  if (!outer) throw new Error('no edge');
  const box = boundsOf(outer.chain);
  // Ink is one stroke, 0.1 mm, wider than the line.
  expect(Math.abs((right - left + 1) * MM - 0.1 - (box.max.x - box.min.x))).toBeLessThanOrEqual(0.05);
  expect(Math.abs((bottom - top + 1) * MM - 0.1 - (box.max.y - box.min.y))).toBeLessThanOrEqual(0.05);
});

test('a laser file says millimetres, holds no text, no transform and no reference line, and ends with the outer edge', () => {
  const svg = writeSvg({ ...fiddleForm(), title: '</title><script>"&' });
  if (!svg.ok) throw new Error('refused');
  expect(svg.value).toMatch(/width="206\.\d+mm" height="358\.\d+mm" viewBox="0 0 206\.\d+ 358\.\d+"/);
  expect(svg.value).not.toMatch(/<text|transform|<script|id="draw"/);
  expect([...svg.value.matchAll(/<g id="([\w-]+)"/g)].map((match) => match[1])).toEqual([
    'text',
    'score',
    'cut-inside',
    'cut',
  ]);
});

/** resvg takes a millimetre as it is at 96 dots an inch or at `dpi`, by version: asked here, so that the size is compared fairly. */
function zoomOf(svg: string): number {
  const width = Number(/viewBox="0 0 ([\d.]+)/.exec(svg)?.[1]);
  return width / new Resvg(svg, { dpi: DPI }).width;
}

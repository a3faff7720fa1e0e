import { expect, test } from 'vitest';
import type { Design } from '../../design/index.ts';
import type { Raster } from '../../judging/index.ts';
import { draft } from '../draft.ts';
import { type PictureTools, pictureFile } from './pictureFile.ts';
import { type PictureRequest, type PictureWords, parsePicture } from './pictureRequest.ts';
import { type PlatePicture, platePicture } from './platePicture.ts';

/** A small violin, so that few heights are asked for; with other values where given. */
function designOf(values: Readonly<Record<string, number>> = {}): Design {
  const json = { family: 'violin', name: 'Small violin', values: { bodyLength: 250, ...values } };
  const made = draft([{ name: 'table', json }]);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value.design;
}

const design = designOf();
const seen: Raster[] = [];
const tools: PictureTools = {
  pngOf: async (raster) => {
    seen.push(raster);
    return Uint8Array.from([1, 2, 3, 4]);
  },
  pngOfSvg: async (svg, pixelsPerMm) => new TextEncoder().encode(`${pixelsPerMm} ${svg.length}`),
};

function asked(words: Partial<PictureWords>): PictureRequest {
  const read = parsePicture({ of: 'section', plate: 'back', state: 'finished', out: 'x.svg', ...words });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

function pictureOf(request: PictureRequest, other?: Design): PlatePicture {
  const made = platePicture(design, request, other);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return made.value;
}

async function bytesOf(picture: PlatePicture, request: PictureRequest, path: string): Promise<Uint8Array> {
  const file = await pictureFile(picture, request, path, tools);
  if (!file.ok) throw new Error(JSON.stringify(file.faults));
  return file.value.bytes;
}
const textOf = (bytes: Uint8Array) => new TextDecoder('latin1').decode(bytes);

test('a section along the centre line is as high as the arch, and says where', async () => {
  const request = asked({ line: '0,0 0,250' });
  const picture = pictureOf(request);
  const archHeight = design.values.archHeightBack?.value ?? 0;
  expect(picture.says.join(' ')).toContain(`highest ${archHeight.toFixed(2)} mm, 125 mm from the start`);
  expect(textOf(await bytesOf(picture, request, 'x.svg'))).toContain('Section of the back');
  expect(textOf(await bytesOf(picture, request, 'x.pdf'))).toMatch(/^%PDF-/);
  expect(textOf(await bytesOf(picture, request, 'x.png'))).toMatch(/^3 \d+$/);
});

test('a section of a finished plate shows its inside and the wood under each height; on the half with the bar more', () => {
  const written = (picture: PlatePicture): readonly number[] =>
    (picture.drawing?.lettering ?? []).flatMap(({ text }) => {
      const wood = /^\((\d+\.\d)\)$/.exec(text);
      return wood ? [Number(wood[1])] : [];
    });
  const along = written(pictureOf(asked({ line: '0,0 0,250' })));
  expect(along.length).toBe(24);
  const middle = design.values.thicknessBackMiddle?.value ?? 0;
  expect(Math.max(...along.slice(8, 16))).toBeCloseTo(middle, 0);
  expect(pictureOf(asked({ line: '0,0 0,250', state: 'arched' })).drawing?.notes.join()).not.toContain(
    'brackets',
  );
  const barred: Design = {
    ...design,
    thickness: { top: { bar: { extra: 0.8 } }, back: { post: { extra: 0.8 } } },
  };
  const near = (plate: string, x: number): number => {
    const made = platePicture(barred, asked({ plate, line: `${x},100 ${x},116` }));
    return made.ok ? (written(made.value)[1] ?? 0) : Number.NaN;
  };
  // Bass bar on the bass side of the top, post on the treble side of both.
  expect(near('top', -11)).toBeGreaterThan(near('top', 11) + 0.4);
  expect(near('back', 14)).toBeGreaterThan(near('back', -14) + 0.4);
});

test('a section that never meets the plate is refused in words, one that leaves it has a gap', () => {
  const off = platePicture(design, asked({ line: '300,0 300,250' }));
  expect(off.ok ? [] : off.faults.map(({ code, at }) => `${code} ${at}`)).toEqual([
    'section.off-plate --line',
  ]);
  // Past the waist on the treble side: over both bouts, off the plate between them.
  const across = pictureOf(asked({ line: '55,0 55,250' }));
  const spans = (across.drawing?.lines ?? [])
    .filter(({ meaning }) => meaning === 'cut')
    .map(({ chain }) => chain.vertices.map(({ x }) => x))
    .map((ways) => [Math.min(...ways), Math.max(...ways)] as const);
  const over = (yMm: number) => spans.some(([from, to]) => from < yMm && yMm < to);
  expect([60, 128, 200].map(over)).toEqual([true, false, true]);
});

test('the lamp shows a dark room and a plate in it, at true size, the same bytes each time', async () => {
  const request = asked({ of: 'raking-light', lamp: '15,60' });
  const picture = pictureOf(request);
  const pdf = await bytesOf(picture, request, 'x.pdf');
  expect(await bytesOf(picture, request, 'x.pdf')).toEqual(pdf);
  const svg = textOf(await bytesOf(picture, request, 'x.svg'));
  expect(svg).toContain('data:image/png;base64,AQIDBA==');
  const { box } = picture.sheet ?? { box: { min: { x: 0, y: 0 }, max: { x: 0, y: 0 } } };
  const widthMm = box.max.x - box.min.x;
  expect(Number(/width="([\d.]+)mm"/.exec(svg)?.[1])).toBeCloseTo(widthMm, 3);
  const media = /MediaBox \[ 0 0 ([\d.]+) ([\d.]+) \]/.exec(textOf(pdf));
  expect(Number(media?.[1]) * (25.4 / 72)).toBeCloseTo(widthMm, 2);
  const raster = seen.at(-1);
  if (!raster) throw new Error('no raster');
  expect(raster.rgb.length).toBe(3 * raster.widthPx * raster.heightPx);
  // The flank that looks to the lamp, on the right, is lighter than the one behind it.
  const brightness = (share: number) => {
    const at = Math.round(raster.heightPx / 2) * raster.widthPx + Math.round(share * raster.widthPx);
    return raster.rgb[3 * at] as number;
  };
  expect(brightness(0.62)).toBeGreaterThan(brightness(0.38) + 60);
});

test('contours hold the heights that the plate has, on paper and on pages', async () => {
  const request = asked({ of: 'contours', interval: '3', paper: 'A3' });
  const picture = pictureOf(request);
  const archHeight = design.values.archHeightBack?.value ?? 0;
  const numbers = new Set(
    picture.drawing?.lettering.map(({ text }) => text).filter((text) => /^\d+$/.test(text)),
  );
  expect(numbers).toEqual(new Set([3, 6, 9].filter((mm) => mm < archHeight).map(String)));
  expect(picture.findings).toEqual([]);
  expect(textOf(await bytesOf(picture, request, 'x.pdf'))).toMatch(/^%PDF-/);
});

test('a design is like itself; one with a higher arch is told to be higher, by how much and where', () => {
  const request = asked({ of: 'difference', with: 'other.json' });
  expect(pictureOf(request, design).says).toEqual([
    'Heights of the back: alike to 0.05 mm everywhere.',
    'Thickness of the back: alike to 0.05 mm everywhere.',
    'Outlines: alike to 0.05 mm.',
  ]);
  const higher = designOf({ archHeightBack: (design.values.archHeightBack?.value ?? 0) + 1 });
  const says = pictureOf(request, higher).says;
  expect(says[1]).toMatch(
    /^The other is 1\.00 mm higher: waist, on the centre line, 12\d mm above the lower end\.$/,
  );
  expect(says).toContain('Outlines: alike to 0.05 mm.');
  expect(says.filter((line) => line.startsWith('arch'))).toEqual([
    expect.stringMatching(/^archHeightBack: [\d.]+ mm, in the other [\d.]+ mm\.$/),
  ]);
  const thinner = designOf({ thicknessBackMiddle: (design.values.thicknessBackMiddle?.value ?? 0) - 0.5 });
  expect(pictureOf(request, thinner).says[1]).toMatch(/^The other is 0\.[45]\d mm thinner at most: waist/);
  const wider = designOf({ bodyLength: 254 });
  expect(pictureOf(request, wider).says.join('\n')).toMatch(
    /The other outline lies 4\.00 mm outside at most: upper end, on the centre line/,
  );
});

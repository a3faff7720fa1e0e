import { expect, test } from 'vitest';
import { type PictureWords, parsePicture } from './pictureRequest.ts';

const words = (more: Partial<PictureWords>): PictureWords => ({
  of: 'contours',
  plate: 'back',
  state: 'finished',
  out: 'x.svg',
  ...more,
});
const faultsOf = (more: Partial<PictureWords>) => {
  const read = parsePicture(words(more));
  return read.ok ? [] : read.faults.map(({ code, at }) => `${code} ${at}`);
};

test('where little is said the usual picture is meant: a line every millimetre, a lamp low on the right', () => {
  const read = parsePicture(words({}));
  expect(read.ok && read.value).toMatchObject({
    kind: 'contours',
    plate: 'back',
    state: 'finished',
    intervalMm: 1,
    paper: 'A4',
    pixelsPerMm: 3,
  });
  const lit = parsePicture(words({ of: 'raking-light', lamp: '30°, -45' }));
  expect(lit.ok && lit.value.lamp.heightRad).toBeCloseTo(Math.PI / 6, 12);
  expect(lit.ok && lit.value.lamp.fromRad).toBeCloseTo(-Math.PI / 4, 12);
});

test('a line is two places with a space between them', () => {
  const read = parsePicture(words({ of: 'section', line: '-40.5,60  0,300' }));
  expect(read.ok && read.value.line).toEqual([
    { x: -40.5, y: 60 },
    { x: 0, y: 300 },
  ]);
  for (const line of ['0,60', '0,60 0,60', '0,60 0;300', '0,60 0,300 1,2', 'a,b c,d', ''])
    expect(faultsOf({ of: 'section', line })).toEqual(['picture.line --line']);
});

test.each([
  [{ interval: '0' }, ['picture.interval --interval']],
  [{ interval: 'NaN' }, ['picture.interval --interval']],
  [{ interval: '1e9' }, ['picture.interval --interval']],
  [{ of: 'raking-light', lamp: '0,60' }, ['picture.lamp --lamp']],
  [{ of: 'raking-light', lamp: '15' }, ['picture.lamp --lamp']],
  [{ of: 'raking-light', lamp: '15,60,3' }, ['picture.lamp --lamp']],
  [{ of: 'raking-light', lamp: '15,NaN' }, ['picture.lamp --lamp']],
  [{ of: 'raking-light', lamp: '90,10' }, ['picture.lamp --lamp']],
  [{ of: 'section' }, ['option.misplaced --line']],
  [{ of: 'difference' }, ['option.misplaced --with']],
  [
    { of: 'curvature', lamp: '15,60', interval: '1' },
    ['option.misplaced --interval', 'option.misplaced --lamp'],
  ],
  [
    { of: 'height', plate: 'side', state: 'raw', paper: 'B7' },
    ['--of', '--plate', '--state', '--paper'].map((at) => `option.unknown ${at}`),
  ],
  [{ pixels: '0.5' }, ['picture.pixels --pixels']],
  [{ out: 'x.tiff' }, ['map.name --out']],
] as const)('%j is refused by name', (more, faults) => {
  expect(faultsOf(more)).toEqual(faults);
});

import { beforeAll, expect, test } from 'vitest';
import { draftDesign } from '../../design/index.ts';
import { deriveInstrument, type Instrument } from '../../instrument/index.ts';
import { chosen } from '../../quantity/index.ts';
import { litPlate } from '../litPlate.ts';
import { HAND_STUFF, type HandBody, handBody } from './handBody.ts';
import {
  type HandHold,
  type HandLight,
  type HandPicture,
  handLamp,
  handPicture,
  seesTop,
} from './handPicture.ts';

const LAMP = { fromRad: -0.7, heightRad: 0.3 };
const SIZE = [300, 400] as const;

let instrument: Instrument;
let body: HandBody;

beforeAll(() => {
  const bodyLength = { value: 355, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family: 'violin', name: 'Test', values: { bodyLength } });
  const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
  if (!derived.ok) throw new Error('refused');
  instrument = derived.value;
  body = handBody(instrument);
});

function seen(hold: HandHold): HandPicture {
  const light = (plate: 'top' | 'back') => litPlate(instrument, plate, 'finished', LAMP, 2);
  const lights = { top: light('top'), back: light('back') };
  return handPicture(body, lights, handLamp(LAMP, hold), hold, ...SIZE);
}

function count({ stuff }: HandPicture, what: number): number {
  return stuff.filter((one) => one === what).length;
}

function box({ stuff, width }: HandPicture): { readonly across: number; readonly up: number } {
  const at = [...stuff].flatMap((what, place) => (what === HAND_STUFF.nothing ? [] : [place]));
  const xs = at.map((place) => place % width);
  const ys = at.map((place) => Math.floor(place / width));
  const span = (all: readonly number[]) => all.reduce((a, b) => Math.max(a, b), 0) - Math.min(...all) + 1;
  return { across: span(xs), up: span(ys) };
}

test('held squarely it has the proportions of its outline, both halves alike, and its sound holes', () => {
  const picture = seen({ turnRad: 0, tiltRad: 0 });
  const { across, up } = box(picture);
  expect(across / up).toBeCloseTo(body.widthMm / body.lengthMm, 1);
  const { width, stuff } = picture;
  let unlike = 0;
  for (let place = 0; place < stuff.length; place++) {
    const mirrored = Math.floor(place / width) * width + ((width - (place % width)) % width);
    if (place % width > 0 && (stuff[place] === 0) !== (stuff[mirrored] === 0)) unlike++;
  }
  expect(unlike).toBeLessThan(stuff.length * 0.004);
  const mmPerPx = body.lengthMm / up;
  const holesMm2 = count(picture, HAND_STUFF.hole) * mmPerPx ** 2;
  // Two openings of 450 to 650 mm² are usual; they lie a little nearer to the eye than the edge.
  expect(holesMm2).toBeGreaterThan(900);
  expect(holesMm2).toBeLessThan(1500);
});

test('turned over it shows the back, which has no holes; from the side it is as thin as ribs and arches', () => {
  const back = seen({ turnRad: Math.PI, tiltRad: 0 });
  expect(seesTop({ turnRad: Math.PI, tiltRad: 0 })).toBe(false);
  expect(count(back, HAND_STUFF.hole)).toBe(0);
  expect(count(back, HAND_STUFF.purfling)).toBeGreaterThan(200);
  const side = box(seen({ turnRad: Math.PI / 2, tiltRad: 0 }));
  const highMm = instrument.plates.top.archHeightMm + instrument.plates.back.archHeightMm + body.ribMm;
  expect(side.across / side.up).toBeGreaterThan((0.9 * highMm) / body.lengthMm);
  expect(side.across / side.up).toBeLessThan((1.12 * highMm) / body.lengthMm);
});

/** Light as even as this all over a plate. */
function even(value: number): HandLight {
  return { columns: 2, rows: 2, stepMm: 1, light: new Uint8Array(4).fill(value) };
}

test.each([
  ['the top', { turnRad: 0, tiltRad: 0 }, 200],
  ['the top, leaning', { turnRad: 0.3, tiltRad: -0.4 }, 200],
  ['the back', { turnRad: Math.PI, tiltRad: 0 }, 90],
] as const)('what faces the eye is seen, not what lies behind it: %s', (_which, hold, value) => {
  const lights = { top: even(200), back: even(90) };
  // No lamp: an underside seen through the plate would be as dark as a wall turned away.
  const { light, stuff } = handPicture(body, lights, [0, 0, 0], hold, ...SIZE);
  const wood = [...light].filter((_, place) => stuff[place] === HAND_STUFF.wood);
  const bright = wood.filter((one) => one === value);
  expect(wood.length).toBeGreaterThan(10_000);
  expect(bright.length).toBeGreaterThan(0.9 * wood.length);
});

test('ribs seen from the side are those on the side of the eye', () => {
  const lights = { top: even(1), back: even(1) };
  // Turned so that the bass side looks at the eye, and lit from that side only.
  const { light, stuff } = handPicture(
    body,
    lights,
    [-1, 0, 0],
    { turnRad: Math.PI / 2, tiltRad: 0 },
    ...SIZE,
  );
  const ribs = [...light].filter((one, place) => stuff[place] === HAND_STUFF.wood && one > 1);
  expect(ribs.length).toBeGreaterThan(1000);
  expect(ribs.filter((one) => one > 150).length).toBeGreaterThan(0.5 * ribs.length);
});

test('the lamp stands over the side that is seen', () => {
  expect(handLamp(LAMP, { turnRad: 0, tiltRad: 0 })[2]).toBeCloseTo(Math.sin(0.3), 9);
  expect(handLamp(LAMP, { turnRad: Math.PI, tiltRad: 0 })[2]).toBeCloseTo(-Math.sin(0.3), 9);
});

import { type Chance, chanceFrom } from './chance.ts';
import type { Development } from './develop.ts';
import { bow, type Dress, fittings } from './dress.ts';
import { drawGround, type GroundName } from './ground.ts';
import { drawInstrument, type Instrument } from './instrument.ts';
import { drawLight, intoRoom, type Standing } from './light.ts';
import { drawMeantShape } from './meantShape.ts';
import { type Pinhole, pinhole } from './pinhole.ts';
import type { Scene } from './render.ts';
import { drawDevelopment } from './sheetScene.ts';

/** A whole instrument as people photograph it, without a sheet. */
export interface ClutteredScene {
  readonly scene: Scene;
  readonly camera: Pinhole;
  readonly how: Development;
  /** The body that is meant: the first one standing. */
  readonly body: Instrument;
  readonly ground: GroundName;
  readonly tiltDegrees: number;
  readonly what: string;
}

const GROUNDS: readonly GroundName[] = [
  'white',
  'gradient',
  'cloth',
  'boards',
  'black',
  'varnished',
  'pattern',
  'bench',
];

/** Grounds have a stream of their own, so that no run of seeds, odd or even, has a ground to itself. */
const GROUND_SEEDS = 5000011;

/** A dressed instrument on some ground, perhaps with its other side beside it, perhaps with a bow, in any light. */
export function drawClutteredScene(seed: number, megapixels: number): ClutteredScene {
  const chance = chanceFrom(seed);
  const face = chance.isHappening(0.65) ? 'top' : 'back';
  const shape = drawMeantShape(chance);
  const first = drawInstrument({ face, shape }, chance);
  const isPair = chance.isHappening(0.15);
  const bodies = [
    first,
    ...(isPair
      ? [drawInstrument({ face: face === 'top' ? 'back' : 'top', shape, varnish: first.varnish }, chance)]
      : []),
  ].map((body, i) => ({
    ...body,
    place: {
      x: 200 + i * chance.between(235, 300),
      y: chance.between(-20, 20),
      turnRad: chance.between(-0.06, 0.06),
    },
  }));
  const isBare = chance.isHappening(0.12);
  const dress: Dress = {
    neck: !isBare,
    strings: !isBare && chance.isHappening(0.85),
    chinRest: !isBare && chance.isHappening(0.55),
    fineTuners: chance.isHappening(0.5),
  };
  const standing: Standing[] = bodies.map((body) => ({ body, slabs: fittings(body, dress, chance) }));
  const ground = chanceFrom(seed + GROUND_SEEDS).oneOf(GROUNDS);
  const light = drawLight(chance);
  const hasBow = chance.isHappening(0.3);
  const tiltDegrees = 20 * chance.next() ** 1.5;
  const isCropped = chance.isHappening(0.06);
  const body = bodies[0] as Instrument;
  return {
    scene: {
      standing,
      lying: hasBow
        ? bow(
            [
              chance.isHappening(0.5)
                ? 200 - chance.between(118, 170)
                : bodyRight(bodies) + chance.between(118, 170),
              -60,
            ],
            Math.PI / 2 + chance.between(-0.12, 0.12),
            chance,
          )
        : [],
      ground: drawGround(ground, body.varnish, chance),
      light,
    },
    camera: drawCamera(bodies, !isBare, tiltDegrees, isCropped, megapixels, chance),
    how: drawDevelopment(light, chance),
    body,
    ground,
    tiltDegrees,
    what: [
      face,
      ground,
      `tilt ${tiltDegrees.toFixed(0)}`,
      ...(isBare ? ['bare'] : []),
      ...(dress.chinRest ? ['chin rest'] : []),
      ...(isPair ? ['pair'] : []),
      ...(hasBow ? ['bow'] : []),
      ...(isCropped ? ['cropped'] : []),
    ].join(', '),
  };
}

function bodyRight(bodies: readonly Instrument[]): number {
  return Math.max(...bodies.map(({ place }) => place.x));
}

/** Aimed at the body or at the whole instrument, from a metre to two and a half, held upright or in any way. */
function drawCamera(
  bodies: readonly Instrument[],
  hasNeck: boolean,
  tiltDegrees: number,
  isCropped: boolean,
  megapixels: number,
  chance: Chance,
): Pinhole {
  const isWhole = hasNeck && chance.isHappening(0.7);
  const lengthMm = (bodies[0] as Instrument).meant.lengthMm;
  const high = isWhole ? lengthMm + 215 : lengthMm;
  const wide = 215 + bodyRight(bodies) - 200;
  const middle = intoRoom(bodies[0] as Instrument, 0, high / 2);
  const target = [
    middle[0] + (bodyRight(bodies) - 200) / 2 + chance.between(-15, 15),
    middle[1] + chance.between(-20, 20),
    20,
  ] as const;
  const far = chance.between(1000, 2500);
  const tilt = (tiltDegrees * Math.PI) / 180;
  const toward = chance.between(0, 2 * Math.PI);
  const eye = [
    target[0] + far * Math.sin(tilt) * Math.cos(toward),
    target[1] + far * Math.sin(tilt) * Math.sin(toward),
    target[2] + far * Math.cos(tilt),
  ] as const;
  const isTall = wide < high;
  const [short, long] = [
    Math.round(Math.sqrt(megapixels * 750000)),
    Math.round(Math.sqrt((megapixels * 1e6 * 4) / 3)),
  ];
  const [widthPx, heightPx] = isTall ? [short, long] : [long, short];
  const way = chance.oneOf(['up', 'up', 'up', 'up', 'up', 'turned', 'over'] as const);
  const extra =
    way === 'up'
      ? chance.between(-0.15, 0.15)
      : way === 'turned'
        ? chance.between(-0.6, 0.6)
        : Math.PI + chance.between(-0.1, 0.1);
  const fill = isCropped
    ? chance.between(1.25, 1.5)
    : chance.between(0.6, 0.92) / (way === 'turned' ? 1.25 : 1);
  const upright = {
    widthPx,
    heightPx,
    eye,
    target,
    centrePx: [widthPx / 2, heightPx / 2] as const,
    focalPx: fill * far * Math.min(widthPx / wide, heightPx / high),
    radial: [chance.between(-0.15, 0.08), chance.between(-0.05, 0.05)] as const,
    tangential: [0, 0] as const,
  };
  const level = pinhole({ ...upright, rollRad: 0 });
  const [ax, ay] = level.project([...intoRoom(bodies[0] as Instrument, 0, 0), 36]);
  const [bx, by] = level.project([...intoRoom(bodies[0] as Instrument, 0, lengthMm), 36]);
  return pinhole({ ...upright, rollRad: Math.atan2(by - ay, bx - ax) + Math.PI / 2 + extra });
}

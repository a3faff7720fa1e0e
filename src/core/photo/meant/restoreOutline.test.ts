import { expect, test } from 'vitest';
import { violinHalf } from '../../../../test/fixtures/violinHalf.ts';
import { type Point, point, seededNormal, seededRandom, WELD_MM } from '../../base/index.ts';
import { type Chain, nearestOn, sampleChain } from '../../curve/index.ts';
import { outlineHabit } from '../../knowledge/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';
import type { EdgeSpot, FoundEdge } from '../edge/foundEdge.ts';
import { restoreOutline } from './restoreOutline.ts';

const LENGTH_MM = 355;
const LEAN_MM = 0.15;
const NOISE_MM = 0.03;
/** mm either side of the centre line that are hidden at the lower and at the upper end. */
const BUTTON_MM = 6;
const FINGERBOARD_MM = 22;
const HALF = violinHalf();

interface Station {
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
  readonly section: OutlineSection;
  readonly alongMm: number;
}

/** The half outline as a chain of places about a millimetre apart, from the lower to the upper end. */
function stations(): readonly Station[] {
  const last = (chain: Chain<'body'>) => chain.vertices[chain.vertices.length - 1];
  const first = (chain: Chain<'body'>) => chain.vertices[0];
  const line = (a: Point<'body'>, b: Point<'body'>): Chain<'body'> => ({
    closed: false,
    vertices: [
      { ...a, bulge: 0 },
      { ...b, bulge: 0 },
    ],
  });
  const { lowerBout, cBout, upperBout } = HALF;
  const pieces: readonly (readonly [OutlineSection, Chain<'body'>])[] = [
    ['lowerBout', lowerBout],
    ['lowerCorner', line(last(lowerBout), first(cBout))],
    ['cBout', cBout],
    ['upperCorner', line(last(cBout), first(upperBout))],
    ['upperBout', upperBout],
  ];
  let start = 0;
  return pieces.flatMap(([section, chain]) => {
    const fine = sampleChain(chain, 0.0005);
    let walked = start;
    const found: Station[] = [];
    for (let i = 0; i + 1 < fine.length; i++) {
      const [dx, dy] = [fine[i + 1].x - fine[i].x, fine[i + 1].y - fine[i].y];
      const length = Math.hypot(dx, dy);
      for (let next = Math.ceil(walked - 0.5) + 0.5; next < walked + length; next++) {
        const share = (next - walked) / length;
        const [x, y] = [fine[i].x + share * dx, fine[i].y + share * dy];
        found.push({ x, y, normalX: dy / length, normalY: -dx / length, section, alongMm: next });
      }
      walked += length;
    }
    start = walked;
    return found;
  });
}

/** Wear: 1.2 mm deep about the lower bout's widest place on the right, 0.9 mm about the upper bout's on the left. */
const LOSSES = [
  { side: 'right', yMm: 72, reachMm: 26, depthMm: 1.2 },
  { side: 'left', yMm: 292, reachMm: 22, depthMm: 0.9 },
] as const;

/** Both halves, leaning and worn, laid into a scene; the middle of both ends (fingerboard, button) is not seen. */
function foundEdge(turnRad: number, at: Point<'scene'>): FoundEdge<'scene'> {
  const random = seededRandom(5);
  const half = (side: 'left' | 'right') =>
    stations().map((station): EdgeSpot<'scene'> => {
      const lost = LOSSES.filter((loss) => loss.side === side && station.x > 60)
        .filter((loss) => Math.abs(station.y - loss.yMm) < loss.reachMm)
        .map((loss) => loss.depthMm * Math.cos((Math.PI * (station.y - loss.yMm)) / (2 * loss.reachMm)) ** 2)
        .reduce((sum, mm) => sum + mm, 0);
      const off = NOISE_MM * seededNormal(random) - lost;
      const across = station.x + off * station.normalX;
      const y = station.y + off * station.normalY;
      const x = (side === 'right' ? across : -across) + LEAN_MM * Math.sin((Math.PI * y) / LENGTH_MM);
      const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
      return {
        ...point<'scene'>(at.x + c * x - s * y, at.y + s * x + c * y),
        section: station.section,
        alongMm: station.alongMm,
        seen: station.x > (station.y < LENGTH_MM / 2 ? BUTTON_MM : FINGERBOARD_MM),
        sigmaMm: NOISE_MM,
      };
    });
  return { left: half('left'), right: half('right') };
}

function restored(face: 'top' | 'back', turnRad = 0, at = point<'scene'>(40, 25)) {
  const start = {
    through: point<'scene'>(at.x + 0.8, at.y - 0.5),
    headingRad: Math.PI / 2 + turnRad + 0.008,
  };
  const found = restoreOutline(foundEdge(turnRad, at), start, outlineHabit('violin'), face);
  if (!found.ok) throw new Error(found.faults[0].found);
  return found.value;
}

/** How far the restored half lies from the true one, mm, at places about a millimetre apart. */
function awayMm(half: typeof HALF): readonly number[] {
  return stations()
    .filter(({ section }) => !section.endsWith('Corner'))
    .map(({ x, y, section }) => nearestOn(half[section as 'lowerBout'], point(x, y)).distanceMm);
}

test.each(['top', 'back'] as const)(
  'a worn, leaning, partly hidden edge of a %s gives the half outline it came from',
  (face) => {
    const { half, bodyLengthMm, wear, measures, asFound } = restored(face);
    const away = awayMm(half);
    expect(Math.sqrt(away.reduce((sum, mm) => sum + mm * mm, 0) / away.length)).toBeLessThan(0.1);
    expect(Math.max(...away)).toBeLessThan(0.3);
    expect(Math.abs(bodyLengthMm - LENGTH_MM)).toBeLessThan(0.15);
    const [lower, upper] = face === 'top' ? (['treble', 'bass'] as const) : (['bass', 'treble'] as const);
    expect(wear.map(({ side }) => side)).toEqual([lower, upper]);
    wear.forEach(({ side, at, depthMm }, i) => {
      expect(Math.sign(at.x)).toBe(side === 'bass' ? -1 : 1);
      expect(Math.abs(at.y - LOSSES[i].yMm)).toBeLessThan(8);
      expect(Math.abs(depthMm - LOSSES[i].depthMm)).toBeLessThan(0.2);
    });
    for (const name of ['lowerBout', 'waist', 'upperBout']) {
      const across = name === 'waist' ? Math.min : Math.max;
      const [from, to] = name === 'lowerBout' ? [36, 120] : name === 'waist' ? [160, 225] : [256, 319];
      const section = name === 'waist' ? 'cBout' : name;
      const within = stations().filter((one) => one.section === section && one.y > from && one.y < to);
      const wide = Math.abs(2 * across(...within.map(({ x }) => x)));
      const mm = measures.find((measure) => measure.name === name)?.mm ?? Number.NaN;
      const lostMm = name === 'lowerBout' ? 1.2 : name === 'upperBout' ? 0.9 : 0;
      expect(mm).toBeGreaterThan(wide - lostMm - 0.15);
      expect(mm).toBeLessThan(name === 'waist' ? wide + 0.15 : wide);
    }
    expect(asFound.bass.every(({ y, x }) => x < 1 - (y < LENGTH_MM / 2 ? BUTTON_MM : FINGERBOARD_MM))).toBe(
      true,
    );
  },
);

test.each([90, 200])(
  'a scene turned by %s degrees and shifted gives the same outline within a millionth of a millimetre',
  (turnDeg) => {
    const plain = restored('top');
    const turned = restored('top', (turnDeg * Math.PI) / 180, point(-310, 475));
    expect(Math.abs(turned.bodyLengthMm - plain.bodyLengthMm)).toBeLessThan(WELD_MM);
    for (const name of ['lowerBout', 'cBout', 'upperBout'] as const)
      plain.half[name].vertices.forEach((vertex, i) => {
        const other = turned.half[name].vertices[i];
        expect(Math.hypot(other.x - vertex.x, other.y - vertex.y)).toBeLessThan(WELD_MM);
      });
    expect(turned.wear.map(({ side }) => side)).toEqual(plain.wear.map(({ side }) => side));
  },
);

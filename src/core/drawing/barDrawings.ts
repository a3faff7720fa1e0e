import { type Point, point } from '../base/index.ts';
import { boundsOf, type Chain, chainThrough, fitArcs, heightOn, reverseChain } from '../curve/index.ts';
import { type BarShape, bevelRad, fittedBar } from '../instrument/index.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { GLUE_CAUTION } from './glueCaution.ts';
import { blockHeightMm, corners, figure, MARGIN_MM, mm, straightChain, textBlock } from './neckPiece.ts';
import { letter, nameInLines, type SetupSheet, setupPiece, tick } from './setupPiece.ts';

const BAR_CAUTION =
  'Plane and knife cut: hold the bar in a vise or against a stop, both hands behind the edge. Clamp glued work only as hard as closes the joint. Laser and router: follow the manual of the machine.';

/** mm at the usual size: a mark with its figures, the pitch of the bevel table, letters. */
const AT_MM = { tick: 3, pitch: 25, letter: 2.2, gap: 1 };

/** mm that tangent arcs may leave the inside by; straight pieces of a millimetre and a half leave it by less still. */
const ARC_FIT_MM = 0.02;

/** The templates of the bass bar: its glue face on the inside of the top, its trimmed height, and its place on the top. */
export function barDrawings(sheet: SetupSheet): readonly Drawing[] {
  const bar = fittedBar(sheet.instrument);
  return [glueFace(sheet, bar), heightTemplate(sheet, bar), placeStrip(sheet, bar)];
}

function glueFace({ name, scale, side }: SetupSheet, bar: BarShape): Drawing {
  const face = smooth(bar.places.map(({ alongMm, faceMm }) => point(alongMm, faceMm)));
  const box = boundsOf(face);
  const letterMm = AT_MM.letter * scale;
  const pitchMm = AT_MM.pitch * Math.max(1, Math.round(scale));
  const stations = stationsAlong(bar, pitchMm);
  const tickMm = AT_MM.tick * scale;
  const lowest = Math.min(...stations.map((at) => heightOn(face, at)));
  const bevelY = lowest - tickMm - AT_MM.gap - letterMm;
  const alongY = bevelY - 1.6 * letterMm;
  const roomMm = bar.lengthMm - 2 * MARGIN_MM;
  const texts = [
    `BAR · GLUE FACE · ${figure(bar.thicknessMm)} thick`,
    ...nameInLines(name, roomMm),
    `${bar.springMm > 0 ? `spring ${figure(bar.springMm)} · ` : ''}lower end to the left · this side to the ${side === 1 ? 'centre line' : 'edge'} · bevel in degrees over mm from the lower end`,
  ];
  const bridgeY = alongY - 1.6 * letterMm;
  const textY = bridgeY - MARGIN_MM;
  const bottomY = textY - blockHeightMm(texts.length, scale) - MARGIN_MM;
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [...corners([0, bottomY], [bar.lengthMm, bottomY]), ...reverseChain(face).vertices],
  };
  return setupPiece('bar-glue-face', 'Bass bar, glue face', body, {
    part: 'bar',
    caution: BAR_CAUTION,
    scored: [
      // The ends of the piece are marks themselves.
      ...stations.slice(1, -1).map((at) => tick(at, heightOn(face, at) - tickMm, heightOn(face, at))),
      ...bridgeMark(bar, heightOn(face, bar.bridgeMm), heightOn(face, bar.bridgeMm) - tickMm, stations),
    ],
    lettering: [
      ...stations.flatMap((at, index) =>
        figuresAt(bar, at, index === stations.length - 1, [bevelY, alongY], letterMm),
      ),
      letter('bridge', bar.bridgeMm, bridgeY, letterMm),
      ...textBlock(texts, { x: MARGIN_MM, y: textY }, roomMm, { scale }),
    ],
    notes: [
      `Its upper edge is the inside of the top along the middle of the bar${bar.springMm > 0 ? `, less a spring of ${mm(bar.springMm, 2)} at both ends` : ''}: ${mm(box.max.y - box.min.y)} from the lowest to the highest place. Plane the blank to it, bevel the face by the table (it falls away toward the edge of the body), then fit it to the top itself by chalk.`,
      bar.springMm > 0
        ? 'A bar with spring touches in the middle and stands off at its ends until it is pressed down; two published notes on the bar advise against it.'
        : 'Drawn without spring: two published notes on the bar advise against it.',
      GLUE_CAUTION,
    ],
  });
}

/** Bevel and distance under a mark; beside the ends they are moved inward. */
function figuresAt(
  bar: BarShape,
  at: number,
  isLast: boolean,
  [bevelY, alongY]: readonly [number, number],
  heightMm: number,
): readonly Lettering[] {
  const bevel = (bevelRad(bar, at) * 180) / Math.PI;
  const anchor = at === 0 ? 'start' : isLast ? 'end' : 'middle';
  const x = at === 0 ? at + 1 : isLast ? at - 1 : at;
  return [
    { text: `${bevel.toFixed(1)}°`, at: { x, y: bevelY }, heightMm, turnRad: 0, anchor },
    { text: at.toFixed(0), at: { x, y: alongY }, heightMm: 0.8 * heightMm, turnRad: 0, anchor },
  ];
}

/** Every pitch along the bar, and its end where the last one does not run into it. */
function stationsAlong({ lengthMm }: BarShape, pitchMm: number): readonly number[] {
  const count = Math.floor(lengthMm / pitchMm);
  const even = Array.from({ length: count + 1 }, (_, index) => index * pitchMm);
  return even.filter((at) => at === 0 || lengthMm - at > pitchMm / 2).concat(lengthMm);
}

/** The place of the bridge, as a longer mark, unless a station's is there. */
function bridgeMark(
  { bridgeMm }: BarShape,
  fromY: number,
  toY: number,
  stations: readonly number[],
): readonly Chain<'drawing'>[] {
  return stations.some((at) => Math.abs(at - bridgeMm) < NEAR_MM)
    ? []
    : [tick(bridgeMm, toY + AT_MM.gap, fromY)];
}

const NEAR_MM = 0.5;

function heightTemplate({ name, scale }: SetupSheet, bar: BarShape): Drawing {
  const foot = smooth(bar.places.map(({ alongMm, insideMm }) => point(alongMm, -insideMm)));
  const trim = smooth(
    bar.places.map(({ alongMm, insideMm, heightMm }) => point(alongMm, heightMm - insideMm)),
  );
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [...foot.vertices, ...reverseChain(trim).vertices],
  };
  const highMm = Math.max(...bar.places.map(({ heightMm }) => heightMm));
  const endMm = bar.places[0]?.heightMm ?? 0;
  const footAt = heightOn(foot, bar.bridgeMm);
  const half = bar.lengthMm * LETTERED_SHARE;
  const [leftMm, rightMm] = [bar.bridgeMm - half, bar.bridgeMm + half];
  const [floor, roof] = [
    Math.max(heightOn(foot, leftMm), heightOn(foot, rightMm), footAt) + AT_MM.gap,
    Math.min(heightOn(trim, leftMm), heightOn(trim, rightMm)) - AT_MM.gap,
  ];
  const room = half - 2 * MARGIN_MM;
  const left = [`BAR · HEIGHT ${figure(highMm)}`];
  const right = nameInLines(name, room);
  const blockScale = (lines: number): number => Math.min(1.2 * scale, (roof - floor) / blockHeightMm(lines));
  return setupPiece('bar-height', 'Bass bar, height', body, {
    part: 'bar',
    caution: BAR_CAUTION,
    scored: [
      tick(bar.bridgeMm, heightOn(trim, bar.bridgeMm) - (highMm - AT_MM.tick), heightOn(trim, bar.bridgeMm)),
    ],
    lettering: [
      ...textBlock(left, { x: bar.bridgeMm - MARGIN_MM, y: roof }, room, {
        anchor: 'end',
        scale: blockScale(left.length),
      }),
      ...textBlock(right, { x: bar.bridgeMm + MARGIN_MM, y: roof }, room, {
        scale: blockScale(right.length),
      }),
    ],
    notes: [
      `Stood on the inside of the top beside the glued bar, the mark on the bridge line: its upper edge is the trimmed bar, ${mm(highMm)} high at the bridge and ${mm(endMm)} at its ends, ${mm(bar.lengthMm)} long. The fall between them is our choice (a quarter sine to the power 1.3); makers trim by tap and weight, so leave half a millimetre.`,
      'Lower end to the left, when the lettering reads upright.',
    ],
  });
}

/** Share of the bar's length to each side of the bridge that lettering may take on the height template. */
const LETTERED_SHARE = 0.24;

function placeStrip({ name, scale, side }: SetupSheet, bar: BarShape): Drawing {
  const [lower, upper] = [bar.lowerInMm, bar.upperInMm];
  const wide = Math.max(lower, upper);
  // Laid with the neck to the right and looked at from inside, the bar stands below the centre line, or over it.
  const at = (along: number, inMm: number): readonly [number, number] => [
    along,
    side === 1 ? wide - inMm : inMm,
  ];
  const lengthMm = bar.upperEndMm - bar.lowerEndMm;
  const plain = [at(0, 0), at(0, lower), at(lengthMm, upper), at(lengthMm, 0)];
  const body = straightChain(true, side === 1 ? plain : plain.toReversed());
  const bridge = bar.bridgeMm * (lengthMm / bar.lengthMm);
  const inAt = lower + ((upper - lower) * bridge) / lengthMm;
  const roomMm = lengthMm - bridge - 4 * MARGIN_MM;
  const texts = [
    `BAR · PLACE · seen from inside, neck to the right`,
    ...nameInLines(name, roomMm).slice(0, 1),
  ];
  const least = Math.min(lower, upper);
  const textScale = Math.min(scale, (least - 2 * AT_MM.gap) / blockHeightMm(texts.length));
  const edges: readonly (readonly [string, number])[] = [
    ['centre line', side === 1 ? wide - CAPTION_MM - AT_MM.gap : AT_MM.gap],
    [
      'bar',
      side === 1 ? wide - Math.min(lower, inAt) + AT_MM.gap : Math.min(lower, inAt) - CAPTION_MM - AT_MM.gap,
    ],
  ];
  const middleY = side === 1 ? wide - least / 2 : least / 2;
  return setupPiece('bar-place', 'Bass bar, place on the top', body, {
    part: 'bar',
    caution: BAR_CAUTION,
    scored: [straightChain(false, [[...at(bridge, 0)], [...at(bridge, inAt)]] as [number, number][])],
    lettering: [
      ...edges.map(
        ([text, y]): Lettering => ({
          text,
          at: { x: MARGIN_MM, y },
          heightMm: CAPTION_MM,
          turnRad: 0,
          anchor: 'start',
        }),
      ),
      ...textBlock(
        texts,
        { x: bridge + MARGIN_MM, y: middleY + (blockHeightMm(texts.length) * textScale) / 2 },
        roomMm,
        {
          scale: textScale,
        },
      ),
    ],
    notes: [
      `Laid into the hollow of the top, one long edge on the centre line, its line on the bridge line and its lower end ${mm(bar.lowerEndMm)} above the lower end of the body: the bar stands along its other long edge, from end to end. It lies ${mm(lower)} from the centre line at its lower end and ${mm(upper)} at its upper one.`,
    ],
  });
}

/** mm. Small words along an edge. */
const CAPTION_MM = 1.8;

/** Tangent arcs through places from left to right; straight pieces where an end lets none pass. */
function smooth(places: readonly Point<'drawing'>[]): Chain<'drawing'> {
  const fitted = fitArcs(places, { toleranceMm: ARC_FIT_MM });
  return fitted.ok ? fitted.value.chain : chainThrough(places, false);
}

import { atan, cos, sin } from '../base/index.ts';
import { areaOf, boundsOf, type Chain, chainThrough, circleChain, reverseChain } from '../curve/index.ts';
import { fittedPost, type PostEnd, type PostShape } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing } from './drawing.ts';
import { blockHeightMm, figure, MARGIN_MM, mm, straightChain, textBlock } from './neckPiece.ts';
import { nameInLines, type SetupSheet, setupPiece, tick } from './setupPiece.ts';

const POST_CAUTION =
  'A knife that splits a post is sharp: cut away from the hand, on a board. The post stands only by its fit: set it without force, and take the strings down slowly and one by one.';

/** mm at the usual size: half a gauge for one direction; card round the place of the post. */
const HALF_MM = 28;
const CARD_MM = { beside: 14, before: 12, behind: 16 };

/** The templates of the sound post: length and both slopes, a wrap that is cut round, and its place by the bridge. */
export function postDrawings(sheet: SetupSheet): readonly Drawing[] {
  const post = fittedPost(sheet.instrument);
  return [endsGauge(sheet, post), wrap(sheet, post), placeCard(sheet, post)];
}

function endsGauge({ name, scale, side }: SetupSheet, post: PostShape): Drawing {
  const half = HALF_MM * Math.min(1.4, scale);
  const quarter = half / 2;
  // Left half: seen from the tail, outward to the post's own side. Right half: seen from the right, so that the neck is right.
  const acrossAt = (x: number, { outward }: PostEnd): number => side * outward * (x + quarter);
  const alongAt = (x: number, { toNeck }: PostEnd): number => toNeck * (x - quarter);
  const top = (y: number): number => post.lengthMm + y;
  const body = straightChain(true, [
    [-half, acrossAt(-half, post.back)],
    [0, acrossAt(0, post.back)],
    [0, alongAt(0, post.back)],
    [half, alongAt(half, post.back)],
    [half, top(alongAt(half, post.top))],
    [0, top(alongAt(0, post.top))],
    [0, top(acrossAt(0, post.top))],
    [-half, top(acrossAt(-half, post.top))],
  ]);
  const markMm = 5;
  const marks = [
    { x: -quarter, low: 0, high: post.lengthMm },
    { x: quarter, low: 0, high: post.lengthMm },
  ].flatMap(({ x, low, high }) => [tick(x, low, low + markMm), tick(x, high - markMm, high)]);
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = [
    `POST ${figure(post.lengthMm)} × ${figure(post.diameterMm)}`,
    ...nameInLines(name, roomMm),
    'top of the instrument above',
    `left: seen from the tail`,
    `right: from the ${side === 1 ? 'treble' : 'bass'} side`,
  ];
  const free = post.lengthMm - 2 * markMm - 2 * MARGIN_MM;
  const textScale = Math.min(scale, free / blockHeightMm(texts.length));
  const y = post.lengthMm / 2 + (blockHeightMm(texts.length) * textScale) / 2;
  return setupPiece('post-gauge', 'Sound post, length and ends', body, {
    part: 'bar',
    caution: POST_CAUTION,
    scored: marks,
    lettering: textBlock(texts, { x: -half + MARGIN_MM, y }, roomMm, { scale: textScale }),
    notes: [
      `The post held against the card, its middle on the marks: cut both ends to the edges, on the left turned as it is seen from the tail, on the right from the side. Ends slope ${slope(post.top.outward)} outward and ${slope(post.top.toNeck)} along under the top, ${slope(post.back.outward)} and ${slope(post.back.toNeck)} on the back. ${mm(post.lengthMm)} long in the middle, from the thickness maps and ribs as drawn: measure the closed body through the sound hole before the last cuts.`,
      'Grain across the grain of the top; fitted when no light shows at either end and it just stays when the strings are slack (common practice).',
    ],
  });
}

/** Places round the post at which the wrap is drawn. */
const WRAP_PLACES = 72;

function wrap({ name, scale, side }: SetupSheet, post: PostShape): Drawing {
  const radius = post.diameterMm / 2;
  const roundMm = 2 * Math.PI * radius;
  // Laid flat with its outside up, the seam at the neck; rightward it runs as seen from outside, from neck over the left side.
  const endAt = (share: number, { outward, toNeck }: PostEnd): number => {
    const turn = 2 * Math.PI * share;
    const [x, y] = [-sin(turn) * side, cos(turn)];
    return radius * (x * outward + y * toNeck);
  };
  const line = (end: PostEnd, upMm: number): Chain<'drawing'> =>
    chainThrough(
      Array.from({ length: WRAP_PLACES + 1 }, (_, index) => {
        const share = index / WRAP_PLACES;
        return { x: roundMm * share, y: upMm + endAt(share, end) };
      }),
      false,
    );
  const [foot, head] = [line(post.back, 0), line(post.top, post.lengthMm)];
  const edge: Chain<'drawing'> = {
    closed: true,
    vertices: [...foot.vertices, ...reverseChain(head).vertices],
  };
  const box = boundsOf(edge);
  const tail = roundMm / 2;
  const markMm = 6;
  return {
    name: 'post-wrap',
    title: 'Sound post, wrap',
    part: 'bar',
    lines: [
      { meaning: 'draw', chain: areaOf(edge) > 0 ? edge : reverseChain(edge) },
      { meaning: 'score', chain: tick(tail, markMm, post.lengthMm - markMm) },
    ],
    lettering: captionBelow(
      ['POST · WRAP', name, 'seam to the neck, line to the tail, top of the instrument above'],
      box.min,
      { scale: Math.min(1, scale), mostMm: CAPTION_MM },
    ),
    notes: [
      `Cut out of paper and wrapped round a post ${mm(post.diameterMm)} thick, lettering side out, its seam toward the neck: both edges are the cuts, ${mm(post.lengthMm)} apart in the middle.`,
      POST_CAUTION,
    ],
    count: 1,
    routes: ['print'],
    checks: sizeChecks(box),
  };
}

const CAPTION_MM = 70;

function placeCard({ name, scale, side, instrument }: SetupSheet, post: PostShape): Drawing {
  const { hollows, plates, design, setUp } = instrument;
  const bridgeMm = plates.top.bodyLengthMm - (design.values.stop?.value ?? Number.NaN);
  const footMm = (design.values.bridgeFootThickness?.value ?? 0) / 2;
  const outMm = setUp.feetMm / 2;
  const { x, y } = hollows.barAndPost.post.from;
  const at = { x: Math.abs(x), y: y - bridgeMm };
  const [beside, before, behind] = [CARD_MM.beside, CARD_MM.before, CARD_MM.behind].map(
    (each) => each * Math.min(1.4, scale),
  ) as [number, number, number];
  const rightMm = Math.max(outMm + beside, LEAST_MM);
  const roomMm = rightMm - 2 * MARGIN_MM;
  const texts = [
    `POST · PLACE · ${figure(post.diameterMm)} thick`,
    ...nameInLines(name, roomMm),
    'seen from outside, neck above',
    `centre line to the ${side === 1 ? 'left' : 'right'}`,
  ];
  const textY = at.y - post.diameterMm / 2 - behind / 4;
  const bottomY = textY - blockHeightMm(texts.length) - MARGIN_MM;
  const onSide = (points: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] =>
    side === 1 ? points : points.map(([px, py]) => [rightMm - px, py] as const).toReversed();
  const outline = onSide([
    [0, bottomY],
    [rightMm, bottomY],
    [rightMm, before],
    [0, before],
  ]);
  const foot = onSide([
    [outMm - setUp.footLengthMm, -footMm],
    [outMm, -footMm],
    [outMm, footMm],
    [outMm - setUp.footLengthMm, footMm],
  ]);
  const centre = side === 1 ? at : { x: rightMm - at.x, y: at.y };
  return setupPiece('post-place', 'Sound post, place', straightChain(true, outline), {
    part: 'bar',
    caution: POST_CAUTION,
    windows: [circleChain(centre, post.diameterMm / 2, true)],
    drawn: [straightChain(true, foot)],
    lettering: textBlock(texts, { x: MARGIN_MM, y: textY }, roomMm),
    notes: [
      `One edge on the centre line, the rectangle on the treble foot of the bridge: the hole is the post, ${mm(at.x)} from the centre line and ${mm(-at.y)} behind the bridge line, half a foot behind the foot. Turned over it shows the place from inside, on the top; turned over once more, on the back.`,
    ],
  });
}

const LEAST_MM = 56;

/** A slope as millimetres over ten, which a maker sees. */
function slope(value: number): string {
  return `${((atan(value) * 180) / Math.PI).toFixed(1)}°`;
}

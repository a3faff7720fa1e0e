import { cos, hypot, type Point, point, sin } from '../base/index.ts';
import { boundsOf, type Chain, headingOn, nearestOn, outlineChain, segments } from '../curve/index.ts';
import type { BodyWear, RestoredOutline, WearPlace } from '../photo/index.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { drawnLine, letteringScale, onDrawing } from './outlineDrawingsMarks.ts';

/** How many times as deep as it is wear is drawn: a millimetre is hard to see on a body. */
const EXAGGERATED = 10;
/** mm along the edge. Longer gaps in the edge as found are left open. */
const LONGEST_LINK_MM = 4;
/** mm between hatch lines. */
const HATCH_MM = 2;
/** mm at the usual size. */
const FIGURE_MM = 3.2;

const TOLD_BY = { otherHalf: 'other half', purfling: 'purfling', corner: 'arcs carried on' } as const;

/**
 * What was put back, as a picture at true size: the outline as meant, the edge as it is today, and over every worn
 * stretch the loss drawn inwards ten times as deep (at the corner ends as deep as it is), hatched, with its depth in
 * millimetres and what told it. For looking at: no tool follows a line of it.
 */
export function wearMapDrawing(restored: RestoredOutline, name: string): Drawing {
  const outline = outlineChain(restored.half);
  const scale = letteringScale(restored.bodyLengthMm);
  const box = boundsOf(outline);
  const runs = wornRuns(restored.wearMap);
  return {
    name: 'wear-map',
    title: 'Wear map',
    part: 'outline',
    lines: [
      drawnLine('draw', onDrawing(outline)),
      ...centreLines(restored.bodyLengthMm, scale).map((chain) => ({
        ...drawnLine('draw', chain),
        centreLine: true,
      })),
      ...(['bass', 'treble'] as const).flatMap((side) => asFoundLines(restored.asFound[side])),
      ...runs.flatMap((run) => hatched(run, outline)),
    ],
    lettering: [
      ...heading(name, restored, scale),
      ...restored.wear.map((wear) => figure(wear, outline, scale)),
    ],
    notes: notes(restored),
    count: 1,
    routes: ['print'],
    checks: sizeChecks(box),
  };
}

/** The centre line below and above the heading. */
function centreLines(lengthMm: number, scale: number): Chain<'drawing'>[] {
  const top = HEADING_AT * lengthMm;
  return [
    open([point(0, 0), point(0, top - HEADING_DEEP_MM * scale)]),
    open([point(0, top), point(0, lengthMm)]),
  ];
}

function open(points: readonly Point<'drawing'>[]): Chain<'drawing'> {
  return { closed: false, vertices: points.map(({ x, y }) => ({ x, y, bulge: 0 })) };
}

/** The edge as it is today, in pieces where it was seen. */
function asFoundLines(places: readonly Point<'body'>[]): DrawnLine[] {
  const pieces: Point<'drawing'>[][] = [];
  let last: Point<'body'> | undefined;
  for (const { x, y } of places) {
    if (last && hypot(x - last.x, y - last.y) <= LONGEST_LINK_MM) pieces.at(-1)?.push(point(x, y));
    else pieces.push([point(x, y)]);
    last = point(x, y);
  }
  return pieces.filter((piece) => piece.length > 1).map((piece) => drawnLine('draw', open(piece)));
}

/** Worn places that follow each other on one side. */
function wornRuns(map: readonly WearPlace[]): readonly (readonly WearPlace[])[] {
  const runs: WearPlace[][] = [];
  for (const place of map) {
    const last = runs.at(-1)?.at(-1);
    if (
      last &&
      last.side === place.side &&
      isCorner(last) === isCorner(place) &&
      place.alongMm - last.alongMm <= LONGEST_LINK_MM
    )
      runs.at(-1)?.push(place);
    else runs.push([place]);
  }
  return runs.filter((run) => run.length > 1);
}

/** A worn run: where it lies on the outline, the loss inwards tenfold as a line, and hatching between the two. */
function hatched(run: readonly WearPlace[], outline: Chain<'body'>): DrawnLine[] {
  const bars = run.map((place) => ({
    ...barOf(place, place.restoredMm, outline),
    alongMm: place.alongMm,
  }));
  const first = bars[0];
  const last = bars[bars.length - 1];
  const deep = open([first.outer, ...bars.map(({ inner }) => inner), last.outer]);
  let next = first.alongMm + HATCH_MM;
  const hatches = bars.slice(1, -1).filter(({ alongMm }) => {
    if (alongMm < next) return false;
    next = alongMm + HATCH_MM;
    return true;
  });
  return [
    drawnLine('draw', deep),
    ...hatches.map(({ outer, inner }) => drawnLine('draw', open([outer, inner]))),
  ];
}

/** Corner ends lose more than edges, and hatching would cross round a tip: they are drawn as they are. */
function isCorner({ section }: Pick<WearPlace, 'section'>): boolean {
  return section === 'lowerCorner' || section === 'upperCorner';
}

function barOf(place: Pick<WearPlace, 'section' | 'at'>, depthMm: number, outline: Chain<'body'>) {
  const foot = nearestOn(outline, place.at);
  const heading = headingOn(segments(outline)[foot.segment], foot.fraction);
  const reach = (isCorner(place) ? 1 : EXAGGERATED) * depthMm;
  const { x, y } = foot.point;
  return {
    outer: point<'drawing'>(x, y),
    // The outline runs anticlockwise: inwards is left of its travel.
    inner: point<'drawing'>(x - reach * sin(heading), y + reach * cos(heading)),
  };
}

/** The depth of a piece of wear, beyond its hatching towards the centre line. */
function figure(wear: BodyWear, outline: Chain<'body'>, scale: number): Lettering {
  const { inner } = barOf(wear, wear.depthMm, outline);
  const onBass = wear.at.x < 0;
  const text = `${wear.depthMm.toFixed(1)} (${TOLD_BY[wear.from]})`;
  const heightMm = FIGURE_MM * scale;
  const gap = heightMm;
  // The figure stays on its own side of the centre line.
  const room = Math.max(0, Math.abs(inner.x) - gap - letteringWidthMm({ text, heightMm }));
  const x = room > 0 ? Math.abs(inner.x) - gap : letteringWidthMm({ text, heightMm }) + gap;
  return {
    text,
    at: point(onBass ? -x : x, inner.y - heightMm / 2),
    heightMm,
    turnRad: 0,
    anchor: onBass ? 'start' : 'end',
  };
}

function heading(name: string, restored: RestoredOutline, scale: number): Lettering[] {
  const lines = [
    { text: 'WEAR MAP', heightMm: 6 },
    { text: name, heightMm: 4.5 },
    { text: 'hatched: wood put back, drawn ten times as deep but at corners, mm', heightMm: 3 },
    { text: `slow lean of the body: ${restored.leanMaxMm.toFixed(2)} mm at most, no wear`, heightMm: 3 },
  ];
  let y = HEADING_AT * restored.bodyLengthMm;
  return lines.map(({ text, heightMm }) => {
    const height = heightMm * scale;
    y -= 1.7 * height;
    return { text, at: point<'drawing'>(0, y), heightMm: height, turnRad: 0, anchor: 'middle' as const };
  });
}

/** Share of the body length where the heading begins: below the waist there is most room. */
const HEADING_AT = 0.36;
/** mm at the usual size that the heading reaches down. */
const HEADING_DEEP_MM = 31;

function notes({ wear, arcs, leanMaxMm }: RestoredOutline): string[] {
  const most = wear.reduce((deepest, { depthMm }) => Math.max(deepest, depthMm), 0);
  return [
    'Outline as meant, with the edge as it is today; for looking at, not for cutting.',
    wear.length === 0
      ? 'No wear of 0.2 mm or more was found.'
      : `${wear.length} ${wear.length === 1 ? 'place' : 'places'} worn, ${most.toFixed(1)} mm at the deepest.`,
    `The halves lean by ${leanMaxMm.toFixed(2)} mm at most; ${arcs.count} arcs a half.`,
  ];
}

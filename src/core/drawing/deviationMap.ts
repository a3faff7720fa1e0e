import { distanceBetween, type Point, point } from '../base/index.ts';
import { boundsOf, type Chain, chainThrough, placeChain } from '../curve/index.ts';
import { deviationComb, type MapPlace } from './deviationMapComb.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';

/** What a map of deviations shows. */
export interface DeviationMapPlan {
  readonly name: string;
  readonly title: string;
  readonly part: Drawing['part'];
  readonly expected: Chain<'body'>;
  readonly places: readonly MapPlace[];
  /** Places that carry their figure. */
  readonly figures: readonly { readonly at: Point<'body'>; readonly missMm: number }[];
  /** Lines for the foot of the page. */
  readonly says: readonly string[];
}

const PAGE = { widthMm: 210, heightMm: 297 } as const;
/** Free room for the outline, in the upper part of the page, combs included. */
const ROOM = { widthMm: 168, heightMm: 212, middleX: 105, middleY: 172 } as const;
/** The outline is drawn as one of these parts of its size, the deviations so many times theirs. */
const REDUCED = [1, 2, 2.5, 3, 4, 5, 8] as const;
const ENLARGED = [200, 100, 50, 20, 10, 5, 2, 1] as const;
/** mm on paper that the largest deviation may take. */
const LONGEST_MM = 10;
const LETTER_MM = 3;
const LINE_MM = 5.2;

/**
 * A page on which the expected edge stands reduced, and what was measured of it as a comb square to it, enlarged: out
 * of the edge where wood stands proud, into it where wood is missing. Its origin is the lower left corner of the paper.
 */
export function deviationMap(plan: DeviationMapPlan): Drawing {
  const box = boundsOf(plan.expected);
  const [width, height] = [box.max.x - box.min.x, box.max.y - box.min.y];
  const least = Math.max(width / (ROOM.widthMm - 2 * LONGEST_MM), height / (ROOM.heightMm - 2 * LONGEST_MM));
  const reduced = REDUCED.find((one) => one >= least) ?? least;
  const most = plan.places.reduce((far, { missMm }) => Math.max(far, Math.abs(missMm ?? 0)), 0);
  const enlarged = ENLARGED.find((one) => one * most <= LONGEST_MM) ?? 1;
  const shift = [
    ROOM.middleX - (box.min.x + box.max.x) / 2 / reduced,
    ROOM.middleY - (box.min.y + box.max.y) / 2 / reduced,
  ] as const;
  const onPage = ({ x, y }: Point<'body'>) =>
    point<'drawing'>(shift[0] + x / reduced, shift[1] + y / reduced);
  const edge = placeChain<'drawing', 'body'>(plan.expected, { turnRad: 0, shift, scale: 1 / reduced });
  const legend = legendLines(reduced, enlarged);
  return {
    name: plan.name,
    title: plan.title,
    part: plan.part,
    lines: [scored(edge), ...deviationComb(plan.places, onPage, enlarged).map(scored), ...legend.lines],
    lettering: [
      text(plan.title, 20, PAGE.heightMm - 14, 5),
      ...sideNames(edge),
      ...plan.figures.map((figure) => figureText(figure, plan.places, onPage, enlarged)),
      ...legend.lettering,
      ...plan.says.map((line, i) => text(line, 20, FOOT_MM - (i + 2) * LINE_MM, LETTER_MM)),
    ],
    notes: [],
    count: 1,
    routes: ['print'],
    checks: [],
  };
}

/** mm over the lower edge of the paper: where the scales stand; lines of words follow below. */
const FOOT_MM = 50;

function scored(chain: Chain<'drawing'>): DrawnLine {
  return { meaning: 'score', chain };
}

function text(
  words: string,
  x: number,
  y: number,
  heightMm: number,
  anchor: Lettering['anchor'] = 'start',
): Lettering {
  return { text: words, at: point(x, y), heightMm, turnRad: 0, anchor };
}

function sideNames(edge: Chain<'drawing'>): readonly Lettering[] {
  const { min, max } = boundsOf(edge);
  const level = (min.y + max.y) / 2;
  return [text('bass', min.x + 2, level, LETTER_MM), text('treble', max.x - 2, level, LETTER_MM, 'end')];
}

/** The figure beyond the end of its whisker, inside the edge where wood is missing. */
function figureText(
  { at, missMm }: DeviationMapPlan['figures'][number],
  places: readonly MapPlace[],
  onPage: (at: Point<'body'>) => Point<'drawing'>,
  enlarged: number,
): Lettering {
  const nearest = places.reduce((a, b) => (distanceBetween(b.at, at) < distanceBetween(a.at, at) ? b : a));
  const { x, y } = onPage(at);
  const away = enlarged * missMm + Math.sign(missMm) * (LETTER_MM / 2 + 1);
  const side = away * nearest.normal.x;
  const anchor = side > LETTER_MM / 2 ? 'start' : side < -LETTER_MM / 2 ? 'end' : 'middle';
  const words = `${missMm > 0 ? '+' : '−'}${Math.abs(missMm).toFixed(2)}`;
  return text(words, x + side, y + away * nearest.normal.y - LETTER_MM / 2, LETTER_MM, anchor);
}

/** Bars for the reduced outline and for the enlarged deviations, with their words. */
function legendLines(reduced: number, enlarged: number): Pick<Drawing, 'lines' | 'lettering'> {
  const bodyMm = 100;
  const missMm = [0.1, 0.2, 0.5, 1, 2, 5].find((one) => one * enlarged >= LONGEST_MM) ?? LONGEST_MM;
  return {
    lines: [...bar(20, FOOT_MM, bodyMm / reduced), ...bar(130, FOOT_MM, missMm * enlarged)].map(scored),
    lettering: [
      text(`${bodyMm} mm of the outline, drawn 1 : ${reduced}`, 20, FOOT_MM + 3, LETTER_MM),
      text(`${missMm} mm off, drawn ${enlarged} times`, 130, FOOT_MM + 3, LETTER_MM),
    ],
  };
}

function bar(x: number, y: number, lengthMm: number): readonly Chain<'drawing'>[] {
  const tick = (at: number) => chainThrough<'drawing'>([point(at, y - 1.5), point(at, y + 1.5)], false);
  return [chainThrough<'drawing'>([point(x, y), point(x + lengthMm, y)], false), tick(x), tick(x + lengthMm)];
}

import { atan2, Bug, cos, distanceBetween, type Point, sin } from '../../base/index.ts';
import {
  type Chain,
  chainThrough,
  headingOn,
  intersections,
  joinChains,
  type Place,
  reverseChain,
  segments,
  subChain,
} from '../../curve/index.ts';
import type { CornerTip, SectionLines } from '../outline/sectionLines.ts';

/** Which of two ribs goes over the trimmed end of the other; with neither both are cut to the middle of the corner. */
export type RibJoint = 'bouts-over' | 'waist-over' | 'mitred';

/** How two ribs end at a corner block, in plan. Treble side, body frame, mm. */
export interface CornerJoint {
  readonly which: 'lower' | 'upper';
  /** Where the ribs meet: from the tip of the block outward; none where the block reaches to the end between them. */
  readonly seam: Chain<'body'> | undefined;
  /** Width of the block that shows between the two ends; 0 where they meet on it. */
  readonly blockShowsMm: number;
  /** How both outer faces open at the corner. */
  readonly openingRad: number;
  /** Between the cut where they lie on each other and their own face: 0 for the rib that goes over the other uncut. */
  readonly bevelRad: { readonly bout: number; readonly waist: number };
  /** The end of the rib that comes up to the corner, and of the one that goes on from it, each from outer to inner face. */
  readonly arrivingEnd: Chain<'body'>;
  readonly leavingEnd: Chain<'body'>;
  /** Where their outer faces end: short of the corner where the other rib covers them wholly. */
  readonly arrivingTo: Place;
  readonly leavingFrom: Place;
}

const START: Place = { segment: 0, fraction: 0 };

/**
 * The joint of two ribs at a corner. A rib that goes over the other runs on straight, as the flat of the block on which the
 * other was trimmed does; mitred ones part at the middle of the corner's end. Where the inner faces do not meet before the
 * end, both ribs are cut off square with the block between them.
 */
export function cornerJoint(
  which: 'lower' | 'upper',
  outer: SectionLines,
  inner: SectionLines,
  joint: RibJoint,
): CornerJoint {
  const [arriving, leaving] = sectionsAt(outer, which);
  const [innerArriving, innerLeaving] = sectionsAt(inner, which);
  const [tip, blockTip] =
    which === 'lower' ? [outer.lowerCorner, inner.lowerCorner] : [outer.upperCorner, inner.upperCorner];
  const openingRad = openingOf(arriving, leaving);
  const base = {
    which,
    openingRad,
    bevelRad: bevels(joint, openingRad),
    arrivingTo: endOf(arriving),
    leavingFrom: START,
  };
  if (blockTip.kind === 'flat')
    return {
      ...base,
      seam: undefined,
      blockShowsMm: blockTip.widthMm,
      arrivingEnd: through(tip.from, blockTip.from),
      leavingEnd: through(tip.to, blockTip.to),
    };
  const over = whichGoesOver(which, joint);
  if (over === 'neither') return { ...base, ...mitred(tip, blockTip.from) };
  return {
    ...base,
    ...(over === 'arriving'
      ? arrivingOver(tip, blockTip.from, outwardAt(innerArriving, 'end'), arriving, leaving)
      : leavingOver(tip, blockTip.from, outwardAt(innerLeaving, 'start'), arriving, leaving)),
  };
}

function bevels(joint: RibJoint, openingRad: number): CornerJoint['bevelRad'] {
  if (joint === 'mitred') return { bout: openingRad / 2, waist: openingRad / 2 };
  return joint === 'bouts-over' ? { bout: 0, waist: openingRad } : { bout: openingRad, waist: 0 };
}

type Ends = Pick<CornerJoint, 'seam' | 'blockShowsMm' | 'arrivingEnd' | 'leavingEnd'> &
  Partial<Pick<CornerJoint, 'arrivingTo' | 'leavingFrom'>>;

function mitred(tip: CornerTip, at: Point<'body'>): Ends {
  const middle = { x: (tip.from.x + tip.to.x) / 2, y: (tip.from.y + tip.to.y) / 2 };
  return {
    seam: through(at, middle),
    blockShowsMm: 0,
    arrivingEnd: through(tip.from, middle, at),
    leavingEnd: through(tip.to, middle, at),
  };
}

/** The seam runs on in the inner face of the rib that arrives, over the end of the other. */
function arrivingOver(
  tip: CornerTip,
  at: Point<'body'>,
  headingRad: number,
  arriving: Chain<'body'>,
  leaving: Chain<'body'>,
): Ends {
  const ray = straightFrom(at, headingRad, reachOf(tip, at));
  const onEnd = firstHit(ray, through(tip.from, tip.to));
  if (onEnd)
    return {
      seam: through(at, onEnd.point),
      blockShowsMm: 0,
      arrivingEnd: through(tip.from, onEnd.point, at),
      leavingEnd: through(tip.to, onEnd.point, at),
    };
  const onFace = firstHit(ray, leaving);
  if (!onFace) return mitred(tip, at);
  return {
    seam: through(at, onFace.point),
    blockShowsMm: 0,
    arrivingEnd: joinChains(
      through(tip.from, tip.to),
      subChain(leaving, START, onFace.place),
      through(onFace.point, at),
    ),
    leavingEnd: through(onFace.point, at),
    arrivingTo: endOf(arriving),
    leavingFrom: onFace.place,
  };
}

/** The same with the rib that leaves going over the other. */
function leavingOver(
  tip: CornerTip,
  at: Point<'body'>,
  headingRad: number,
  arriving: Chain<'body'>,
  leaving: Chain<'body'>,
): Ends {
  const turned = arrivingOver(
    { ...tip, from: tip.to, to: tip.from },
    at,
    headingRad,
    reverseChain(leaving),
    reverseChain(arriving),
  );
  const count = segments(arriving).length;
  return {
    seam: turned.seam,
    blockShowsMm: 0,
    arrivingEnd: turned.leavingEnd,
    leavingEnd: turned.arrivingEnd,
    ...(turned.leavingFrom && {
      arrivingTo: {
        segment: count - 1 - turned.leavingFrom.segment,
        fraction: 1 - turned.leavingFrom.fraction,
      },
    }),
  };
}

function whichGoesOver(which: 'lower' | 'upper', joint: RibJoint): 'arriving' | 'leaving' | 'neither' {
  if (joint === 'mitred') return 'neither';
  const boutArrives = which === 'lower';
  return boutArrives === (joint === 'bouts-over') ? 'arriving' : 'leaving';
}

function sectionsAt({ sections }: SectionLines, which: 'lower' | 'upper'): [Chain<'body'>, Chain<'body'>] {
  return which === 'lower' ? [sections.lowerBout, sections.cBout] : [sections.cBout, sections.upperBout];
}

function openingOf(arriving: Chain<'body'>, leaving: Chain<'body'>): number {
  const turn = outwardAt(arriving, 'end') - outwardAt(leaving, 'start');
  return Math.abs(atan2(sin(turn), cos(turn)));
}

/** The heading out of the corner along a line at its corner end. */
function outwardAt(line: Chain<'body'>, end: 'start' | 'end'): number {
  const segment = segments(line).at(end === 'start' ? 0 : -1);
  if (!segment) throw new Bug('a section has no segment');
  return end === 'start' ? headingOn(segment, 0) + Math.PI : headingOn(segment, 1);
}

function reachOf(tip: CornerTip, at: Point<'body'>): number {
  return 2 * (distanceBetween(at, tip.from) + distanceBetween(at, tip.to));
}

function straightFrom(at: Point<'body'>, headingRad: number, lengthMm: number): Chain<'body'> {
  return through(at, {
    x: at.x + lengthMm * cos(headingRad),
    y: at.y + lengthMm * sin(headingRad),
  });
}

function firstHit(
  ray: Chain<'body'>,
  line: Chain<'body'>,
): { readonly point: Point<'body'>; readonly place: Place } | undefined {
  if (line.vertices.length < 2) return undefined;
  const hit = intersections(ray, line).toSorted((a, b) => a.a.fraction - b.a.fraction)[0];
  return hit && { point: hit.point, place: hit.b };
}

function through(...points: readonly Point<'body'>[]): Chain<'body'> {
  return chainThrough(points, false);
}

function endOf(line: Chain<'body'>): Place {
  return { segment: segments(line).length - 1, fraction: 1 };
}

import { accept, Bug, type Checked, type Fault, type Point, refuse } from '../../base/index.ts';
import {
  areaOf,
  type Chain,
  chainThrough,
  closeChain,
  intersections,
  joinChains,
  lengthOf,
  type Place,
  parallelChain,
  placeAlong,
  reverseChain,
  segmentLength,
  segments,
  subChain,
} from '../../curve/index.ts';
import type { RibChoice } from '../../design/index.ts';
import type { BlockParts } from '../blocks/blockParts.ts';
import type { CornerBlock } from '../blocks/cornerBlock.ts';
import type { PlanValues } from '../planValues.ts';
import { developedRib } from '../ribs/developedRib.ts';
import { ribBend } from '../ribs/ribFindings.ts';
import type { RibLines } from '../ribs/ribLines.ts';
import { endCut } from '../ribs/ribPiece.ts';
import type { Lining, LiningMortise, LiningParts } from './lining.ts';
import { liningFindings } from './liningFindings.ts';

/** mm at each end of a lining, to be trimmed to the block; common practice, as for the ribs but less. */
const ALLOWANCE_AT_END_MM = 5;

/** mm that lining strips are cut wider, to be planed level with the ribs; common practice. */
const STRIP_ALLOWANCE_MM = 1;

/** A mortise leaves this many thicknesses of wood before the corner; chosen by us. */
const WOOD_BEFORE_CORNER = 2;

/**
 * The linings: strips along the inner face of the ribs from block to block. Those of the waist run on into mortises in the
 * corner blocks; the others end at the faces of the blocks, or are let in there too.
 *
 * Faults: `linings.no-room` where a lining misses the face of a block. Findings: `linings.mortise-short`, `linings.bend`.
 */
export function liningParts(
  ribs: RibLines,
  blocks: BlockParts,
  values: Pick<PlanValues, 'liningThickness' | 'liningWidth' | 'liningLetIn'>,
  { linings = 'plain', liningsLetIn = 'waist' }: RibChoice = {},
): Checked<LiningParts> {
  const { lowerBout, cBout, upperBout } = ribs.inner.sections;
  const { lowerCorner, upperCorner } = blocks;
  const letIn = values.liningLetIn;
  const bouts = liningsLetIn === 'all' ? letIn : 0;
  const sections = [
    lay('lower', lowerBout, values, ribs, {
      start: { face: blocks.lower.recess, letInMm: 0 },
      end: { face: lowerCorner.recess, letInMm: bouts, block: lowerCorner, side: 'bout' },
    }),
    lay('waist', cBout, values, ribs, {
      start: { face: lowerCorner.recess, letInMm: letIn, block: lowerCorner, side: 'waist' },
      end: { face: upperCorner.recess, letInMm: letIn, block: upperCorner, side: 'waist' },
    }),
    lay('upper', upperBout, values, ribs, {
      start: { face: upperCorner.recess, letInMm: bouts, block: upperCorner, side: 'bout' },
      end: { face: blocks.upper.recess, letInMm: 0 },
    }),
  ];
  const faults = sections.flatMap((laid) => (laid.ok ? [] : laid.faults));
  const [lower, waist, upper] = sections.flatMap((laid) => (laid.ok ? [laid.value] : []));
  if (!lower || !waist || !upper) return refuse(...faults);
  const mortises = [lower, waist, upper].flatMap((laid) => laid.mortises);
  const parts = {
    lower: lower.lining,
    waist: waist.lining,
    upper: upper.lining,
    mortises,
    thicknessMm: values.liningThickness,
    widthMm: values.liningWidth,
    stripWidthMm: values.liningWidth + STRIP_ALLOWANCE_MM,
    choice: { linings, liningsLetIn },
  };
  return accept({ ...parts, findings: liningFindings(parts, letIn) });
}

/** One end of a lining: the block faces that it meets, and how far it goes on into a corner block. */
interface LiningEnd {
  readonly face: Chain<'body'>;
  readonly letInMm: number;
  readonly block?: CornerBlock;
  readonly side?: 'waist' | 'bout';
}

type Laid = { readonly lining: Lining; readonly mortises: readonly LiningMortise[] };

function lay(
  name: Lining['name'],
  section: Chain<'body'>,
  values: Pick<PlanValues, 'liningThickness' | 'liningWidth'>,
  { heightAtMm }: RibLines,
  ends: { readonly start: LiningEnd; readonly end: LiningEnd },
): Checked<Laid> {
  const thicknessMm = values.liningThickness;
  const free = parallelChain(section, thicknessMm);
  if (!free.ok) return free;
  const lines = { glue: section, free: free.value };
  const start = endOfLining(lines, ends.start, 'start', thicknessMm);
  const end = endOfLining(lines, ends.end, 'end', thicknessMm);
  if (!start || !end) return refuse(noRoom(name));
  const glueFace = subChain(section, start.onGlue, end.onGlue);
  const freeFace = subChain(free.value, start.onFree, end.onFree);
  const fromEnd = across(glueFace.vertices[0], freeFace.vertices[0]);
  const toEnd = across(glueFace.vertices.at(-1), freeFace.vertices.at(-1));
  const developed = developedRib(glueFace, thicknessMm, heightAtMm);
  const [from, to] = [endCut(glueFace, fromEnd, thicknessMm, -1), endCut(glueFace, toEnd, thicknessMm, 1)];
  const lengthMm = to.farthestMm - from.farthestMm;
  return accept({
    lining: {
      name,
      plan: closeChain(joinChains(glueFace, toEnd, reverseChain(freeFace), reverseChain(fromEnd))),
      glueFace,
      developed,
      bend: ribBend(glueFace, thicknessMm),
      from,
      to,
      lengthMm,
      cutMm: lengthMm + 2 * ALLOWANCE_AT_END_MM,
    },
    mortises: [start, end].flatMap(({ mortise }) =>
      mortise ? [{ ...mortise, widthMm: thicknessMm, depthMm: values.liningWidth }] : [],
    ),
  });
}

interface LaidEnd {
  readonly onGlue: Place;
  readonly onFree: Place;
  readonly mortise?: Omit<LiningMortise, 'widthMm' | 'depthMm'>;
}

/**
 * Where a lining ends: both of its faces at the block, or square across at the end of its mortise, whose reach counts from
 * where the block holds the lining at its full thickness and leaves wood before the corner.
 */
function endOfLining(
  { glue, free }: { readonly glue: Chain<'body'>; readonly free: Chain<'body'> },
  { face, letInMm, block, side }: LiningEnd,
  which: 'start' | 'end',
  thicknessMm: number,
): LaidEnd | undefined {
  const glueHit = nearestTo(glue, face, which);
  const freeHit = nearestTo(free, face, which);
  if (!glueHit || !freeHit) return undefined;
  if (letInMm === 0 || !block || !side) return { onGlue: glueHit, onFree: freeHit };
  const sign = which === 'start' ? -1 : 1;
  const faceMm = lengthTo(free, freeHit);
  const roomMm = (which === 'start' ? faceMm : lengthOf(free) - faceMm) - WOOD_BEFORE_CORNER * thicknessMm;
  const reachMm = Math.min(letInMm, roomMm);
  if (!(reachMm > 0)) return { onGlue: glueHit, onFree: freeHit };
  const onFree = placeAlong(free, faceMm + sign * reachMm);
  // The faces are parallel, arc for arc: one place of both has one segment and one fraction.
  const onGlue: Place = onFree;
  return {
    onGlue,
    onFree,
    mortise: {
      block: block.which,
      side,
      reachMm,
      ...mortisePlan(glue, free, which, { glueHit, freeHit, onGlue, onFree }),
    },
  };
}

function mortisePlan(
  glue: Chain<'body'>,
  free: Chain<'body'>,
  which: 'start' | 'end',
  { glueHit, freeHit, onGlue, onFree }: Readonly<Record<'glueHit' | 'freeHit' | 'onGlue' | 'onFree', Place>>,
): Pick<LiningMortise, 'plan' | 'cut'> {
  const along = (line: Chain<'body'>, face: Place, end: Place): Chain<'body'> =>
    which === 'end' ? subChain(line, face, end) : reverseChain(subChain(line, end, face));
  const [glued, freed] = [along(glue, glueHit, onGlue), along(free, freeHit, onFree)];
  const cut = joinChains(freed, across(freed.vertices.at(-1), glued.vertices.at(-1)));
  const round = closeChain(
    joinChains(cut, reverseChain(glued), across(glued.vertices[0], freed.vertices[0])),
  );
  return { cut, plan: areaOf(round) < 0 ? reverseChain(round) : round };
}

/** Where a line meets the faces of a block nearest to its own end. */
function nearestTo(line: Chain<'body'>, face: Chain<'body'>, which: 'start' | 'end'): Place | undefined {
  const places = intersections(line, face).map(({ a }) => a);
  return which === 'start' ? places.at(0) : places.at(-1);
}

function lengthTo(line: Chain<'body'>, { segment, fraction }: Place): number {
  const lengths = segments(line).map(segmentLength);
  return lengths.slice(0, segment).reduce((sum, mm) => sum + mm, 0) + fraction * (lengths[segment] ?? 0);
}

function across(from: Point<'body'> | undefined, to: Point<'body'> | undefined): Chain<'body'> {
  if (!from || !to) throw new Bug('a lining has no end');
  return chainThrough([from, to], false);
}

function noRoom(name: string): Fault {
  return {
    code: 'linings.no-room',
    at: 'liningThickness',
    found: `a ${name} lining that misses the face of a block`,
    need: 'linings that end on the blocks at both ends',
    remedy: 'make the linings thinner, or the block deeper',
  };
}

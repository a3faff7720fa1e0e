import { cos, hypot, type Point, point, sin } from '../../base/index.ts';
import {
  type Chain,
  carryChain,
  headingOn,
  lengthOf,
  nearestOn,
  placeAlong,
  pointAlong,
  segmentLength,
  segments,
} from '../../curve/index.ts';
import { medianOf } from '../../numeric/index.ts';
import { type ArmBend, armBend } from './armBend.ts';
import { type RunStart, smoothGap } from './smoothGap.ts';

/** A place of the merged edge, body frame, with its scatter; null scatter where nothing was seen. */
export interface RunSpot extends Point<'body'> {
  readonly sigmaMm: number | null;
}

/**
 * A place of a run: on the carried arcs, `alongMm` along them (0 at the run's own start, which lies on the centre line
 * for a bout), the outward normal there, and how far outside the smooth line through the seen places lies.
 */
export interface RunNode extends Point<'body'> {
  readonly alongMm: number;
  readonly normalX: number;
  readonly normalY: number;
  readonly gapMm: number;
  readonly sigmaMm: number;
}

/** One tangent stretch: its fitted arcs and the smooth line beside them, both carried on past the corner tips. */
export interface MeantRun {
  /** The fitted arcs, from the lower to the upper end. */
  readonly chain: Chain<'body'>;
  readonly lengthMm: number;
  /** About a millimetre apart, from `-carried` to `lengthMm + carried`. */
  readonly nodes: readonly RunNode[];
}

/** mm that arcs are carried on past a fitted tip at most. */
const CARRIED_MM = 9;
const NODE_STEP_MM = 1;

/** Which ends of a run are corner tips; the other lies on the centre line, level, or held in place too. */
export interface RunEnds {
  readonly tips: 'start' | 'end' | 'both';
  readonly centre: RunStart;
  /** How much of the run before a tip is one bend. */
  readonly armMm: number;
}

/**
 * The smooth line through the spots of one stretch, told as gaps from its fitted arcs. Before a tip it passes into the arm's one
 * bend, which is carried on past the tip.
 */
export function meantRun(chain: Chain<'body'>, spots: readonly RunSpot[], ends: RunEnds): MeantRun {
  const lengthMm = lengthOf(chain);
  const before = ends.tips === 'end' ? 0 : CARRIED_MM;
  const after = ends.tips === 'start' ? 0 : CARRIED_MM;
  const carried = carryChain(chain, before, after);
  const steps = Math.ceil((lengthMm + before + after) / NODE_STEP_MM);
  const grid = Array.from(
    { length: steps + 1 },
    (_, i) => (i / steps) * (lengthMm + before + after) - before,
  );
  const starts = startsOf(carried, before);
  const seen = spots.flatMap((spot) => {
    if (spot.sigmaMm === null) return [];
    const foot = nearestOn(carried, spot);
    const alongMm = starts[foot.segment].fromMm + foot.fraction * starts[foot.segment].lengthMm;
    return [{ alongMm, gapMm: -foot.side * foot.distanceMm, sigmaMm: spot.sigmaMm }];
  });
  const blocks = [...inBlocks(seen), ...hiddenBlocks(seen, lengthMm)];
  const backwards = ends.tips === 'start';
  const order = backwards ? -1 : 1;
  const places = [
    ...blocks.map((place, i) => ({ ...place, node: -1, order: i })),
    ...grid.map((alongMm, i) => ({ alongMm, gapMm: null, sigmaMm: 1, node: i, order: 0 })),
  ]
    .map((place) => ({ ...place, alongMm: order * place.alongMm }))
    .sort((a, b) => a.alongMm - b.alongMm || a.order - b.order);
  const smooth = smoothGap(places, ends.tips === 'both' ? 'free' : ends.centre);
  const nodes: RunNode[] = [];
  places.forEach(({ node }, i) => {
    if (node < 0) return;
    const at = grid[node] + before;
    const heading = headingAlong(carried, at);
    nodes[node] = {
      ...pointAlong(carried, at),
      alongMm: grid[node],
      normalX: sin(heading),
      normalY: -cos(heading),
      ...smooth[i],
    };
  });
  return { chain, lengthMm, nodes: withArms({ chain, lengthMm, nodes }, spots, ends) };
}

/** Share of an arm, at its inner end, over which the smooth line passes into it. */
const PASSES_OVER = 0.3;

/** The nodes of a run, those before and past its tips on the arms there. */
function withArms(
  { chain, lengthMm, nodes }: MeantRun,
  spots: readonly RunSpot[],
  { tips, armMm }: RunEnds,
): readonly RunNode[] {
  const seen = spots.flatMap(({ x, y, sigmaMm }) => (sigmaMm === null ? [] : [{ x, y, sigmaMm }]));
  const start = tips === 'end' ? undefined : armBend(chain, 'start', seen, armMm);
  const end = tips === 'start' ? undefined : armBend(chain, 'end', seen, armMm);
  const onArm = (node: RunNode, arm: ArmBend | undefined, fromTipMm: number): RunNode => {
    const share = Math.min(1, (armMm - fromTipMm) / (PASSES_OVER * armMm));
    if (arm === undefined || share <= 0) return node;
    const drawn = arm.gapAt(node, { x: node.normalX, y: node.normalY }, fromTipMm);
    return {
      ...node,
      gapMm: node.gapMm + share * (drawn.gapMm - node.gapMm),
      sigmaMm: node.sigmaMm + share * (drawn.sigmaMm - node.sigmaMm),
    };
  };
  return nodes.map((node) => onArm(onArm(node, start, node.alongMm), end, lengthMm - node.alongMm));
}

/** mm. Places this near to each other along a run are put together: they err together, and the line is smooth. */
const BLOCK_MM = 4;
/** mm. Within a block a place this far from its middle one is a slip of the tracing, not the edge: the line is smooth. */
const SLIP_MM = 0.3;
/** Fewer places than this at the end of a run go with the block before: a tip is carried out from it. */
const LEAST_IN_BLOCK = 3;

interface SeenPlace {
  readonly alongMm: number;
  readonly gapMm: number;
  readonly sigmaMm: number;
}

function inBlocks(places: readonly SeenPlace[]): readonly SeenPlace[] {
  const blocks = new Map<number, SeenPlace[]>();
  for (const place of places) {
    const block = Math.floor(place.alongMm / BLOCK_MM);
    blocks.set(block, [...(blocks.get(block) ?? []), place]);
  }
  const order = [...blocks.keys()].sort((a, b) => a - b);
  for (const [end, inward] of [
    [order[0], order[1]],
    [order.at(-1), order.at(-2)],
  ]) {
    const few = end === undefined ? undefined : blocks.get(end);
    const inner = inward === undefined ? undefined : blocks.get(inward);
    if (few === undefined || inner === undefined || few.length >= LEAST_IN_BLOCK || end === inward) continue;
    inner.push(...few);
    blocks.delete(end as number);
  }
  return [...blocks.values()].map(meanOf);
}

function meanOf(places: readonly SeenPlace[]): SeenPlace {
  const middle = medianOf(places.map(({ gapMm }) => gapMm));
  let [whole, along, gap] = [0, 0, 0];
  for (const { alongMm, gapMm, sigmaMm } of places) {
    if (Math.abs(gapMm - middle) > SLIP_MM) continue;
    const weight = 1 / (sigmaMm * sigmaMm);
    whole += weight;
    along += weight * alongMm;
    gap += weight * gapMm;
  }
  return { alongMm: along / whole, gapMm: gap / whole, sigmaMm: Math.sqrt(1 / whole) };
}

/**
 * mm, one standard deviation. How far the edge of a real body leaves its thirteen arcs: in a hidden stretch the line
 * leans on them by so much, or a loss at its end would carry it away.
 */
const LEAVES_ARCS_MM = 0.3;

/** Blocks of a run in and beside which nothing was seen, each as a place on the arcs. */
function hiddenBlocks(seen: readonly { readonly alongMm: number }[], lengthMm: number) {
  const known = new Set(seen.map(({ alongMm }) => Math.floor(alongMm / BLOCK_MM)));
  return Array.from({ length: Math.ceil(lengthMm / BLOCK_MM) }, (_, i) => i)
    .filter((i) => ![i - 1, i, i + 1].some((block) => known.has(block)))
    .map((i) => ({ alongMm: (i + 0.5) * BLOCK_MM, gapMm: 0, sigmaMm: LEAVES_ARCS_MM }));
}

function startsOf(chain: Chain<'body'>, before: number) {
  let fromMm = -before;
  return segments(chain).map((segment) => {
    const lengthMm = segmentLength(segment);
    const start = { fromMm, lengthMm };
    fromMm += lengthMm;
    return start;
  });
}

function headingAlong(chain: Chain<'body'>, lengthMm: number): number {
  const place = placeAlong(chain, lengthMm);
  return headingOn(segments(chain)[place.segment], place.fraction);
}

/** The node of a run at a length along it, between its neighbours. */
export function nodeAt({ nodes }: MeantRun, alongMm: number): RunNode {
  const first = nodes[0].alongMm;
  const step = (nodes[nodes.length - 1].alongMm - first) / (nodes.length - 1);
  const at = Math.min(nodes.length - 1, Math.max(0, (alongMm - first) / step));
  const i = Math.min(nodes.length - 2, Math.floor(at));
  const share = at - i;
  const mix = (of: (node: RunNode) => number) => (1 - share) * of(nodes[i]) + share * of(nodes[i + 1]);
  const size = hypot(
    mix((n) => n.normalX),
    mix((n) => n.normalY),
  );
  return {
    x: mix((n) => n.x),
    y: mix((n) => n.y),
    alongMm: first + at * step,
    normalX: mix((n) => n.normalX) / size,
    normalY: mix((n) => n.normalY) / size,
    gapMm: mix((n) => n.gapMm),
    sigmaMm: mix((n) => n.sigmaMm),
  };
}

/** The place of the smooth line at a node, or of the arcs alone. */
export function onLine(node: RunNode, line: 'smooth' | 'arcs'): Point<'body'> {
  const gap = line === 'smooth' ? node.gapMm : 0;
  return point(node.x + gap * node.normalX, node.y + gap * node.normalY);
}

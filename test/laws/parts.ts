/** What every piece that is cut must keep, whatever made it: each law returns its faults in words, none when kept. */
import type { Box } from '../../src/core/base/index.ts';
import {
  areaOf,
  boundsOf,
  type Chain,
  chainThrough,
  containsPoint,
  nearestOn,
  offsetChain,
  pointOn,
  sampleChain,
  segments,
  selfCrossings,
} from '../../src/core/curve/index.ts';
import type { Drawing, DrawnLine } from '../../src/core/drawing/index.ts';

type AnyFrame = 'body' | 'drawing' | 'section';

const ON_LINE_MM = 1e-6;

/** Closed, without crossings, finite, and running the asked way round. */
export function contourFaults<F extends AnyFrame>(
  chain: Chain<F>,
  way: 'anticlockwise' | 'clockwise',
): string[] {
  const faults: string[] = [];
  if (!chain.closed) faults.push('open contour');
  if (chain.vertices.some((vertex) => ![vertex.x, vertex.y, vertex.bulge].every(Number.isFinite)))
    faults.push('a coordinate that is no number');
  const area = areaOf(chain);
  if (way === 'anticlockwise' ? area <= 0 : area >= 0) faults.push(`area ${area}, not ${way}`);
  const crossings = selfCrossings(chain);
  if (crossings.length > 0) faults.push(`crosses itself at ${JSON.stringify(crossings[0]?.point)}`);
  for (const segment of segments(chain))
    if (Math.hypot(segment.end.x - segment.start.x, segment.end.y - segment.start.y) < ON_LINE_MM)
      faults.push('a segment without length');
  return faults;
}

/**
 * Places of a closed piece that are thinner than this: what is lost when it is shrunk by half of it and grown again. Sharp
 * corners come back, since both run their sides on until they meet.
 */
export function sliverFaults<F extends AnyFrame>(chain: Chain<F>, leastMm: number): string[] {
  const shrunk = offsetChain(chain, -leastMm / 2, { join: 'mitre', mitreLimit: SHARP });
  const grown = shrunk.flatMap((one) => offsetChain(one, leastMm / 2, { join: 'mitre', mitreLimit: SHARP }));
  return sampleChain(chain, SLIVER_SAMPLED_MM)
    .filter((at) => Math.min(...grown.map((one) => nearestOn(one, at).distanceMm)) > SLIVER_LOST_MM)
    .map(({ x, y }) => `thinner than ${leastMm} mm near (${x.toFixed(2)}, ${y.toFixed(2)})`);
}

/** No unit. Mitres of a piece never are sharper than this many distances; about 6 degrees. */
const SHARP = 20;
/** mm. Chord error of the places that are looked at, and what may be lost where a curve ends in a corner: its mitre is straight. */
const SLIVER_SAMPLED_MM = 0.05;
const SLIVER_LOST_MM = 0.25;

/** How far the chain is from being its own mirror image in the centre line, mm. */
export function asymmetryMm<F extends AnyFrame>(chain: Chain<F>): number {
  const mirrored = chain.vertices.map((vertex) => ({ x: -vertex.x, y: vertex.y }));
  return Math.max(
    ...mirrored.map((image) =>
      Math.min(...chain.vertices.map((vertex) => Math.hypot(vertex.x - image.x, vertex.y - image.y))),
    ),
  );
}

/** Least distance from any point of one chain to another, from dense points of the first. */
export function leastDistanceMm<F extends AnyFrame>(from: Chain<F>, to: Chain<F>): number {
  return Math.min(...sampleChain(from, 0.001).map((point) => nearestOn(to, point).distanceMm));
}

/** Everything a drawing for a tool must keep. */
export function drawingFaults(drawing: Drawing): string[] {
  const lines = (meaning: DrawnLine['meaning']) =>
    drawing.lines.filter((line) => line.meaning === meaning).map((line) => line.chain);
  const cuts = lines('cut');
  const holes = lines('cut-inside');
  const faults = [
    ...cuts.flatMap((chain) => contourFaults(chain, 'anticlockwise')),
    ...holes.flatMap((chain) => contourFaults(chain, 'clockwise')),
    ...doubledFaults(drawing.lines.filter((line) => line.meaning !== 'draw').map((line) => line.chain)),
  ];
  for (const hole of holes) {
    if (!cuts.some((cut) => sampleChain(hole, 0.01).every((point) => containsPoint(cut, point))))
      faults.push('a hole that is not inside the piece');
  }
  for (const score of lines('score')) {
    const [start, end] = [score.vertices[0], score.vertices.at(-1)];
    if (score.closed || start === undefined || end === undefined) faults.push('a scored line without ends');
    for (const segment of segments(score))
      if (cuts.length > 0 && !cuts.some((cut) => containsPoint(cut, pointOn(segment, 0.5))))
        faults.push(`a scored line outside the piece near ${JSON.stringify(segment.start)}`);
  }
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(drawing.name)) faults.push(`name ${drawing.name} is not file-safe`);
  return faults.map((fault) => `${drawing.name}: ${fault}`);
}

/** Uneven places on a segment: two lines that merely cross never share two of them. */
const PLACES = [0.0713, 0.2377, 0.4191, 0.5237, 0.6419, 0.8113, 0.9371];

/** Whether nothing of one box comes on to a line in the other. */
function apart(one: Box<AnyFrame>, other: Box<AnyFrame>): boolean {
  return (['x', 'y'] as const).some(
    (axis) => one.min[axis] > other.max[axis] + ON_LINE_MM || other.min[axis] > one.max[axis] + ON_LINE_MM,
  );
}

/** Stretches that two lines, or one line twice, both follow. */
export function doubledFaults<F extends AnyFrame>(chains: readonly Chain<F>[]): string[] {
  const faults: string[] = [];
  const boxes = chains.map((chain) => boundsOf(chain));
  chains.forEach((chain, index) => {
    const pieces = segments(chain).map((segment) => ({
      segment,
      box: boundsOf(
        chainThrough(
          PLACES.map((place) => pointOn(segment, place)),
          false,
        ),
      ),
    }));
    chains.forEach((other, otherIndex) => {
      const around = boxes[otherIndex];
      if (index === otherIndex || around === undefined) return;
      for (const { segment, box } of pieces) {
        if (apart(box, around)) continue;
        const shared = PLACES.filter(
          (place) => nearestOn(other, pointOn(segment, place)).distanceMm < ON_LINE_MM,
        );
        if (shared.length > 1) faults.push(`line ${index} runs along line ${otherIndex}`);
      }
    });
  });
  return faults;
}

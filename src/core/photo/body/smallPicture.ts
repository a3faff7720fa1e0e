import { type Point, point } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import type { BodyTrace, TraceOptions } from './bodyTrace.ts';

/** px. A picture with a shorter side is enlarged until it has one. */
const ENOUGH_SIDE_PX = 300;
/** px of the small picture. Its pixels do not tell an edge better than this. */
const LEAST_SIGMA_PX = 0.2;

/** How many times the picture must be enlarged for the search to see anything; 1 for all that are large enough. */
export function timesEnlarged({ widthPx, heightPx }: Picture): number {
  const short = Math.min(widthPx, heightPx);
  return short >= SMALL_SIDE_PX ? 1 : Math.ceil(ENOUGH_SIDE_PX / short);
}

const SMALL_SIDE_PX = 240;

/** What was told of a small picture, for the same picture enlarged. */
export function smallPicture(options: TraceOptions, times: number): TraceOptions {
  const grown = ({ x, y }: Point<'photo'>) =>
    point<'photo'>((x + 0.5) * times - 0.5, (y + 0.5) * times - 0.5);
  const lines = (list: readonly (readonly Point<'photo'>[])[]) => list.map((line) => line.map(grown));
  const { lengthPx, mmPerPixel, masked, hints, ...rest } = options;
  return {
    ...rest,
    ...(lengthPx && { lengthPx: { value: times * lengthPx.value, sigma: times * lengthPx.sigma } }),
    ...(mmPerPixel !== undefined && { mmPerPixel: mmPerPixel / times }),
    ...(masked && { masked: lines(masked) }),
    ...(hints && {
      hints: {
        ...(hints.inside && { inside: hints.inside.map(grown) }),
        ...(hints.outside && { outside: hints.outside.map(grown) }),
        ...(hints.onEdge && { onEdge: hints.onEdge.map(grown) }),
        ...(hints.insideStrokes && { insideStrokes: lines(hints.insideStrokes) }),
        ...(hints.outsideStrokes && { outsideStrokes: lines(hints.outsideStrokes) }),
        ...(hints.excluded && { excluded: lines(hints.excluded) }),
      },
    }),
  };
}

/** The trace of an enlarged picture in px of the small one, with spreads no finer than its pixels allow, and asked about. */
export function traceReduced(trace: BodyTrace, times: number, { widthPx, heightPx }: Picture): BodyTrace {
  const small = ({ x, y }: Point<'photo'>) =>
    point<'photo'>((x + 0.5) / times - 0.5, (y + 0.5) / times - 0.5);
  const { pose } = trace;
  return {
    ...trace,
    pose: {
      ...pose,
      lowerEnd: small(pose.lowerEnd),
      upperEnd: small(pose.upperEnd),
      pxPerMm: pose.pxPerMm / times,
    },
    edge: trace.edge.map((place) => ({
      ...place,
      point: small(place.point),
      sigmaPx: Math.max(LEAST_SIGMA_PX, place.sigmaPx / times),
    })),
    bodies: trace.bodies.map((body) => ({ ...body, middle: small(body.middle) })),
    verdict: 'ask',
    findings: [
      ...trace.findings,
      {
        code: 'trace.small-picture',
        at: 'photograph',
        found: `${widthPx} × ${heightPx} pixels`,
        need: 'some 2000 pixels along the body; so few show an edge to half a millimetre at best',
        remedy: 'use the original photograph, not a preview; take these widths as proportions only',
        weight: 'caution',
      },
    ],
  };
}

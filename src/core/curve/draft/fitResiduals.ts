import type { Point } from '../../base/index.ts';
import { type Nearest, nearestOnSpans } from '../nearestOn.ts';
import { segments } from '../segment.ts';
import { type Span, spanOf } from '../span.ts';
import type { OutlinePoint, OutlineStretch } from './fitStart.ts';
import { halfFromRuns, layShape } from './layShape.ts';
import {
  arcsOf,
  cornerEndPoint,
  FIT_AT,
  type HalfStretch,
  type ShapePoint,
  shapePoint,
} from './shapePoint.ts';

/** How far a point lies from the shape and how that answers to every number; `gapMm` is signed, + outside. */
export interface FitResidual extends Point<'body'> {
  readonly gapMm: number;
  readonly rows: readonly { readonly value: number; readonly row: Float64Array }[];
}

/** The nearest place of the shape to each point, on its own stretch where it names one. */
export function residualsOf(points: readonly OutlinePoint[], u: Float64Array): readonly FitResidual[] {
  const spans = spansOf(u);
  return points.map((point) => residualOf(point, u, spans));
}

type Spans = Readonly<Record<OutlineStretch, readonly Span<'body'>[]>>;
const STRETCHES = ['lowerBout', 'lowerCorner', 'cBout', 'upperCorner', 'upperBout'] as const;

function spansOf(u: Float64Array): Spans {
  const lengthMm = u[FIT_AT.lengthMm];
  const half = halfFromRuns(u, lengthMm, layShape(u, lengthMm, u[FIT_AT.lowerEndWidth]).cStart);
  const line = (start: Point<'body'> | undefined, end: Point<'body'>): readonly Span<'body'>[] =>
    start ? [spanOf({ start, end, bulge: 0 })] : [];
  return {
    lowerBout: segments(half.lowerBout).map(spanOf),
    lowerCorner: line(half.lowerBout.vertices.at(-1), half.cBout.vertices[0]),
    cBout: segments(half.cBout).map(spanOf),
    upperCorner: line(half.cBout.vertices.at(-1), half.upperBout.vertices[0]),
    upperBout: segments(half.upperBout).map(spanOf),
  };
}

function residualOf(point: OutlinePoint, u: Float64Array, spans: Spans): FitResidual {
  const { x, section } = point;
  const lowered = { x, y: point.y - u[FIT_AT.lowerEndY] };
  const stretches = section ? [section] : STRETCHES;
  let best: { stretch: OutlineStretch; foot: Omit<Nearest<'body'>, 'side'> } | undefined;
  for (const stretch of stretches) {
    const foot = nearestOnSpans(spans[stretch], lowered);
    if (!best || foot.distanceMm < best.foot.distanceMm) best = { stretch, foot };
  }
  if (!best) return { x, y: point.y, gapMm: 0, rows: [] };
  const { stretch, foot } = best;
  const place = placeOn(stretch, foot, u);
  const offX = x - place.x;
  const offY = point.y - place.y;
  const gapMm = offX * place.normalX + offY * place.normalY;
  const { gradient } = place;
  if (isTip(stretch, foot, spans)) {
    // Beyond a corner tip both coordinates pull: the tip has to come, not only the curve.
    return {
      x,
      y: point.y,
      gapMm: Math.sign(gapMm) * foot.distanceMm,
      rows: [
        { value: -offX, row: gradient.x },
        { value: -offY, row: gradient.y },
      ],
    };
  }
  const row = gradient.x.map((dx, i) => dx * place.normalX + gradient.y[i] * place.normalY);
  return { x, y: point.y, gapMm, rows: [{ value: -gapMm, row }] };
}

function placeOn(stretch: OutlineStretch, foot: Omit<Nearest<'body'>, 'side'>, u: Float64Array): ShapePoint {
  if (stretch === 'lowerCorner' || stretch === 'upperCorner')
    return cornerEndPoint(stretch, u, foot.fraction);
  if (stretch !== 'upperBout') return shapePoint(stretch, u, foot.segment, foot.fraction);
  // The upper bout is laid from the upper end, and its chain runs towards it.
  return shapePoint(stretch, u, arcsOf(stretch) - 1 - foot.segment, 1 - foot.fraction);
}

/** Whether a foot is a corner tip of one of the tangent stretches. */
function isTip(stretch: OutlineStretch, foot: Omit<Nearest<'body'>, 'side'>, spans: Spans): boolean {
  const atStart = foot.segment === 0 && foot.fraction === 0;
  const atEnd = foot.segment === spans[stretch].length - 1 && foot.fraction === 1;
  if (stretch === 'lowerBout') return atEnd;
  if (stretch === 'upperBout') return atStart;
  return (stretch as HalfStretch) === 'cBout' && (atStart || atEnd);
}

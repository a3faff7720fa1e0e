import {
  bodyHalfWidth,
  type FairNet,
  type FairSpline,
  fairSpline,
  type Loft,
  loftAt,
  loftRow,
  type MeasuredSection,
  netAt,
  scatteredSpline,
  splineValue,
} from '../../surface/index.ts';
import { type CorrectionFrame, fairCorrection } from './fairCorrection.ts';
import { type FoldedHeight, type WholeSection, wholeLongReading, wholeSections } from './wholeSections.ts';

/** A loft with the correction that makes it fair. */
export interface FairLoft {
  readonly loft: Loft;
  readonly correction: FairNet;
}

/** Spans of the curve that lifts the long arch, from channel end to channel end; of a section's shape; of its share along the body. */
const SPANS = { lift: 48, across: 14, along: 24 } as const;

/** Share of the body length, 20 mm on a violin: a section or station this near to a measured one adds nothing that the heights do not draw themselves. */
const APART_SHARE = 20 / 355;

/**
 * A loft that has the shape of whole measured sections, each carried along the body to its neighbours, and of a whole measured long
 * arch: what a section is beside cycloid and fullness stands in the sections between too, in proportion to rise and half width, and beyond the
 * outermost as far as the ends. A station without a section keeps the shape of its numbers. The same loft where nothing whole was
 * measured, or where the numbers come as near as the heights are known.
 *
 * Method: docs/methods/arching.md, step 6.
 */
export function carriedSections(
  frame: CorrectionFrame,
  before: FairLoft,
  heights: readonly FoldedHeight[],
  sigmaMm: number,
): FairLoft {
  const lifted = withLift(frame, before, heights, sigmaMm);
  return withSections(frame, lifted, heights, sigmaMm);
}

function gapsOf({ loft, correction }: FairLoft, heights: readonly FoldedHeight[]) {
  return heights.map(({ x, y, zMm }) => ({
    x,
    y,
    mm: zMm - loftAt(loft, x, y).zMm - netAt(correction, x, y).zMm,
  }));
}

function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}

/** The long arch lifted to a whole reading along the centre line. */
function withLift(
  frame: CorrectionFrame,
  before: FairLoft,
  heights: readonly FoldedHeight[],
  sigmaMm: number,
): FairLoft {
  const { startMm, endMm } = before.loft.longArch;
  const gaps = gapsOf(before, wholeLongReading(heights, frame.bodyLengthMm, { startMm, endMm }));
  if (gaps.length === 0 || rms(gaps.map(({ mm }) => mm)) <= sigmaMm) return before;
  const lift = scatteredSpline(
    {
      from: startMm,
      to: endMm,
      spans: SPANS.lift,
      values: [startMm, endMm].map((at) => ({ at, value: 0 })),
      slopes: [startMm, endMm].map((at) => ({ at, slope: 0 })),
      near: gaps.map(({ y, mm }) => ({ at: y, value: mm, weight: 1 })),
    },
    sigmaMm,
  );
  return lift ? made(frame, { ...before.loft, measured: { lift, sections: [] } }) : before;
}

function withSections(
  frame: CorrectionFrame,
  before: FairLoft,
  heights: readonly FoldedHeight[],
  sigmaMm: number,
): FairLoft {
  const { loft } = before;
  const apartMm = APART_SHARE * frame.bodyLengthMm;
  const whole = apart(
    wholeSections(heights, frame.bodyLengthMm, (y) => bodyHalfWidth(loft, y)),
    apartMm,
  );
  const shapes = whole.map((section) => shapeOfSection(before, section, sigmaMm));
  if (shapes.every((shape) => shape === null)) return before;
  const { startMm: from, endMm: to } = loft.longArch;
  const others = frame.stations.filter(({ yMm }) => whole.every((one) => Math.abs(one.yMm - yMm) > apartMm));
  const knots = [...whole, ...others].map(({ yMm }) => yMm);
  const sections = shapes.flatMap((across, index): readonly MeasuredSection[] => {
    const along = across && throughKnots(from, to, knots, (_, knot) => (knot === index ? 1 : 0));
    return across && along ? [{ across, along }] : [];
  });
  const lift = loft.measured?.lift ?? { from, to, coefficients: [0, 0, 0, 0] };
  return made(frame, { ...loft, fullness: keptToEnds(loft, whole, knots), measured: { lift, sections } });
}

/** Of sections from the lower end up the first, and each that is so far from the last one taken. */
function apart(sections: readonly WholeSection[], mm: number): readonly WholeSection[] {
  return sections.reduce<readonly WholeSection[]>((taken, section) => {
    const last = taken.at(-1);
    return last && section.yMm - last.yMm < mm ? taken : [...taken, section];
  }, []);
}

/** Fullness as it is at every knot; it holds its course to an end whose outermost place was measured, where it else fades out. */
function keptToEnds(loft: Loft, whole: readonly WholeSection[], knots: readonly number[]): FairSpline {
  const { startMm: from, endMm: to } = loft.longArch;
  const isWhole = (y: number): boolean => whole.some(({ yMm }) => yMm === y);
  const faded = { from: !isWhole(Math.min(...knots)), to: !isWhole(Math.max(...knots)) };
  return throughKnots(from, to, knots, (y) => splineValue(loft.fullness, y), faded) ?? loft.fullness;
}

/**
 * A curve along the body that has a value at each knot and runs out level at both ends, fading out to 0 or carried on a little. Its ends are held:
 * only level there, a curve swings far out beyond its last knots where a corner stands apart from its neighbours.
 */
function throughKnots(
  from: number,
  to: number,
  knots: readonly number[],
  valueAt: (y: number, index: number) => number,
  faded = { from: false, to: false },
): FairSpline | null {
  const values = knots
    .map((at, index) => ({ at, value: valueAt(at, index) }))
    .toSorted((a, b) => a.at - b.at);
  const spline = fairSpline(
    {
      from,
      to,
      spans: SPANS.along,
      values: [
        { at: from, value: faded.from ? 0 : carriedOn(values, from, to - from) },
        ...values,
        { at: to, value: faded.to ? 0 : carriedOn(values.toReversed(), to, to - from) },
      ],
      slopes: [from, to].map((at) => ({ at, slope: 0 })),
      stiffness: 1,
    },
    'stations',
  );
  return spline.ok ? spline.value : null;
}

interface Knot {
  readonly at: number;
  readonly value: number;
}

/** Share of what the outermost knot differs from one well inside it that is carried on toward the end (ours; known domes were met best by a half or more). */
const CARRIED_ON = 0.5;

/** Share of the channel's length from the outermost knot that another must lie inside it to show a course: past the corner. */
const COURSE_SHARE = 0.2;

/** What knots, from an end on, come to at that end. */
function carriedOn([outer, ...others]: readonly Knot[], end: number, lengthMm: number): number {
  if (!outer) return 0;
  const inner = others.find(({ at }) => Math.abs(at - outer.at) > COURSE_SHARE * lengthMm);
  if (!inner) return outer.value;
  return outer.value + (CARRIED_ON * (outer.value - inner.value) * (end - outer.at)) / (outer.at - inner.at);
}

/** What a section is beside its numbers, a share of the rise; null where the numbers come as near as it is known. */
function shapeOfSection(before: FairLoft, section: WholeSection, sigmaMm: number): FairSpline | null {
  const { widthMm, riseMm } = loftRow(before.loft, section.yMm);
  const gaps = gapsOf(before, section.heights).filter(({ x }) => x < widthMm);
  if (!(riseMm > 0) || rms(gaps.map(({ mm }) => mm)) <= sigmaMm) return null;
  return scatteredSpline(
    {
      from: 0,
      to: 1,
      spans: SPANS.across,
      values: [{ at: 1, value: 0 }],
      slopes: [
        { at: 0, slope: 0 },
        { at: 1, slope: 0 },
      ],
      near: gaps.map(({ x, mm }) => ({ at: x / widthMm, value: mm / riseMm, weight: 1 })),
    },
    sigmaMm / riseMm,
  );
}

function made(frame: CorrectionFrame, loft: Loft): FairLoft {
  return { loft, correction: fairCorrection(frame, loft) };
}

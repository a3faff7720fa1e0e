import { type FairSpline, splineBend, splineSlope, splineValue } from './fairSpline.ts';

/**
 * What measured sections and a measured long arch have beyond the numbers of a loft. Shares of the half width run from 0 on the centre
 * line to 1 in the channel, where every shape is 0 and level.
 */
export interface MeasuredShape {
  /** mm that the long arch is lifted by, over y. */
  readonly lift: FairSpline;
  readonly sections: readonly MeasuredSection[];
}

/** One section: its shape, a share of the rise over the share of the half width, and how much of it each y has. */
export interface MeasuredSection {
  readonly across: FairSpline;
  readonly along: FairSpline;
}

/** The shape that sections have together at one y, and how it changes along the body. */
export interface BlendedShape {
  readonly shape: FairSpline;
  readonly change: FairSpline;
  readonly bend: FairSpline;
}

/** All sections blended at one y; null where there are none. */
export function blendedAt(sections: readonly MeasuredSection[], yMm: number): BlendedShape | null {
  const shape = blended(sections, ({ along }) => splineValue(along, yMm));
  return (
    shape && {
      shape,
      change: blended(sections, ({ along }) => splineSlope(along, yMm)) ?? shape,
      bend: blended(sections, ({ along }) => splineBend(along, yMm)) ?? shape,
    }
  );
}

/** Only the shape of {@link blendedAt}. */
export function shapeAt(sections: readonly MeasuredSection[], yMm: number): FairSpline | null {
  return blended(sections, ({ along }) => splineValue(along, yMm));
}

function blended(
  sections: readonly MeasuredSection[],
  share: (section: MeasuredSection) => number,
): FairSpline | null {
  const [first] = sections;
  if (!first) return null;
  const coefficients = first.across.coefficients.map(() => 0);
  for (const section of sections) {
    const weight = share(section);
    section.across.coefficients.forEach((value, at) => {
      coefficients[at] = (coefficients[at] as number) + weight * value;
    });
  }
  return { ...first.across, coefficients };
}

/** A shape at a share of the half width below 1, with its derivatives. */
export function shapeOf(shape: FairSpline, u: number) {
  return { value: splineValue(shape, u), byU: splineSlope(shape, u), byUU: splineBend(shape, u) };
}

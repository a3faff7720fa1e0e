import { type Cell, ours, recalled } from './size.ts';

type Cells = Readonly<Record<string, Cell>>;

/**
 * mm. Length of hole at which the shape below was fitted to twelve holes of six instruments on photographs; lengths here are
 * in its millimetres and go with the length of the hole.
 */
const FITTED_AT_MM = 75;

/** One end of a hole, all of it turned to be the upper one. */
export interface HoleEndShape {
  /** From the inner nick to the end of the hole, along the body, as a share of its length. */
  readonly reach: number;
  /** From the inner nick along the body to the middle of the eye, as a share of the length. */
  readonly eye: number;
  /** Radius of the round between stem and hook, as a share of the length. */
  readonly shoulder: number;
  /** Where the shoulder goes over into the hook, and the hook into the eye, as directions out of their middles. */
  readonly hookFromDeg: number;
  readonly eyeFromDeg: number;
  /** How far along the hook the tip of the wing lies, and how far its edge turns there from the hook's direction. */
  readonly tipDeg: number;
  readonly taperDeg: number;
  /** Opening at the tip, over that of the upper end. */
  readonly tipGap: number;
  /** Share of both arcs of the wing's edge: tangent at the tip over tangent at the stem. */
  readonly wingShare: number;
  /** Where the end of the wing meets the eye, as a direction out of its middle. */
  readonly wingAtEyeDeg: number;
  /** Beyond the level of the inner nick, away from this end: where the edge that runs to this end turns over. */
  readonly turnsOver: number;
}

/** The shape of a hole beyond what a maker measures. */
export interface HoleShapeHabit {
  readonly upper: HoleEndShape;
  readonly lower: HoleEndShape;
  /** Upper eye to lower eye and to the middle of the stem, across the body, as shares of the length. */
  readonly eyesAcross: number;
  readonly stemAcross: number;
  /** Lean of the stem toward the centre line, and how far its outer edge leans beyond its inner one. */
  readonly slantDeg: number;
  readonly edgesDeg: number;
  /** Outer nick above the inner one, and width and depth of a nick, as shares of the length. */
  readonly outerNick: number;
  readonly nickWidth: number;
  readonly nickDepth: number;
}

const share = (mm: number): number => mm / FITTED_AT_MM;

/** The fitted shape; all families share it, as no viola and no cello was measured. Nicks: from memory. */
export const HOLE_SHAPE: HoleShapeHabit = {
  upper: {
    reach: share(39.4),
    eye: share(30.3),
    shoulder: share(30.6),
    hookFromDeg: 37.7,
    eyeFromDeg: 184,
    tipDeg: 53,
    taperDeg: -38,
    tipGap: 1,
    wingShare: 0.73,
    wingAtEyeDeg: 75,
    turnsOver: share(3.5),
  },
  lower: {
    reach: share(35.6),
    eye: share(23.3),
    shoulder: share(41.4),
    hookFromDeg: 32.7,
    eyeFromDeg: 183,
    tipDeg: 58,
    taperDeg: -31.5,
    tipGap: 1.4,
    wingShare: 0.84,
    wingAtEyeDeg: 72,
    turnsOver: share(9.1),
  },
  eyesAcross: share(63 - 24.45),
  stemAcross: share(41.7 - 24.45),
  slantDeg: 1.7,
  edgesDeg: 1,
  outerNick: share(3.2),
  nickWidth: share(2.2),
  nickDepth: share(1.2),
};

/** mm at a length of 75: what a maker measures on the fitted shape. */
const FITTED_MM = {
  upperEyeDiameter: 6.9,
  lowerEyeDiameter: 10.2,
  /** At the nicks; 6.9 between the places where its edges turn over. */
  holeStemWidth: 6.65,
  holeTipGap: 1,
} as const;

const MEASURED = 'middle of twelve holes of six old instruments, measured on photographs';
const ENLARGED = 'the violin’s hole, enlarged; none of this kind was measured, weak';

function shapeOf(lengthMm: number, why: string): Cells {
  const cells = Object.entries(FITTED_MM).map(([name, mm]) => [
    name,
    ours(Math.round((mm * lengthMm * 20) / FITTED_AT_MM) / 20, why),
  ]);
  return { ...Object.fromEntries(cells), nickAboveStop: recalled(0, 'the inner nicks mark the stop') };
}

/** Of the printed length between the ends of the wings: the length along the centre line, as measured on four instruments. */
const ALONG = 73 / 75;

/** Where a table sets the holes: between the upper eyes, and from the lower eye to the edge. */
interface HolePlace {
  readonly apart: Cell;
  readonly toEdge: Cell;
}

/** A hole of the length that a table prints between the ends of the wings, rounded to half a millimetre. */
function printedHole(printedMm: number, { apart, toEdge }: HolePlace, kind: 'violin' | 'other'): Cells {
  const lengthMm = Math.round(printedMm * ALONG * 2) / 2;
  return {
    holeLength: ours(
      lengthMm,
      `${printedMm} is printed between the ends of the wings; 3 % less along the centre line, as measured on four violins`,
    ),
    upperEyesApart: apart,
    lowerEyeToEdge: toEdge,
    ...shapeOf(lengthMm, kind === 'violin' ? MEASURED : ENLARGED),
  };
}

/** A violin's holes, from the length that the published table prints for its size. */
export function violinHoles(printedMm: number, place: HolePlace): Cells {
  return printedHole(printedMm, place, 'violin');
}

/** A viola's holes, likewise. */
export function violaHoles(printedMm: number, place: HolePlace): Cells {
  return printedHole(printedMm, place, 'other');
}

/** The full-size cello's holes; all from memory or enlarged from the violin's. */
export const CELLO_HOLES: Cells = {
  holeLength: recalled(133, '132 to 140; weak'),
  upperEyesApart: recalled(96, '92 to 100; weak'),
  lowerEyeToEdge: recalled(23, '22 to 26; weak'),
  ...shapeOf(133, ENLARGED),
};

import { accept, Bug, type Checked, cos, hypot, norm, type Point, point, sin } from '../../base/index.ts';
import { fitHalfOutline, type HalfOutline, type OutlineHabit } from '../../curve/index.ts';
import { isCornerEnd, type OutlineSection } from '../body/templateStations.ts';
import { ARC_TOLERANCE_MM, type ArcKind, arcsOfRuns } from './meantArcs.ts';
import { type CornerKnown, type MeantCorner, meantCorner, RUBBED_MM } from './meantCorner.ts';
import { type MeantRun, meantRun, nodeAt, type RunSpot } from './meantRun.ts';
import { beyondEndMm, type SeenEnd, seenEnd } from './seenEnd.ts';

/** A merged place: on the side of x ≥ 0, y along the axis; weight and scatter null where nothing was seen. */
export interface LineSpot extends Point<'body'> {
  readonly section: OutlineSection;
  readonly alongMm: number;
  readonly weight: number;
  readonly sigmaMm: number | null;
  readonly sharedSigmaMm: number;
}

/** Where the thirteen arcs of the habit leave the edge by more than they should: heights, and the most. */
export interface ArcMisfit {
  readonly section: OutlineSection;
  readonly fromMm: number;
  readonly toMm: number;
  /** + the edge lies outside. */
  readonly mm: number;
}

/** A half outline as meant, its lower end at (0, 0), and how surely it stands. */
export interface MeantLine {
  readonly half: HalfOutline;
  readonly kind: ArcKind;
  readonly misfits: readonly ArcMisfit[];
  readonly bodyLengthMm: number;
  readonly lowerEndMm: number;
  readonly corners: { readonly lower?: MeantCorner; readonly upper?: MeantCorner };
  /** Half interval (k = 2) of the line at each spot. */
  readonly plusMinusMm: readonly number[];
}

/** What a line is to keep to. */
export interface LineOptions {
  readonly cornerEndMm?: { readonly upper?: number; readonly lower?: number };
  /** Both ends are given: the spots' y counts from the lower one. */
  readonly bodyLengthMm?: number;
  /** Whether a rough line will do where the arcs of a corner cross. */
  readonly isRough?: boolean;
}

/** mm. Beyond this the thirteen arcs miss the edge, and arcs as needed are taken. */
const MISFIT_MM = 0.15;
/** mm along the edge from a corner end: what wear rounds off. */
const ROUNDED_MM = 1.2;
/** mm inside a seen corner end, and how far round it, where places belong to the end and not to the arms. */
const AT_END_MM = { inside: 0.8, reach: 12 };
/** mm that a corner end which is not seen is taken to have lost: places beyond are not the arms'. */
const UNSEEN_MM = 1;
/** Share of the body length before a corner tip that is one bend: a corner's last arc is about 20 mm long on a violin. */
const ARM_SHARE = 0.05;
/** Of the places between the corners the arcs are fitted to each second one: neighbours err together. */
const EVERY = 2;
/** Weight of places at corner ends in the fit: they lead the tips, they are not to bend the arcs. */
const CORNER_WEIGHT = 0.3;
/** mm on a body of the usual length. How far the widths of real corner ends stray (measured on eleven violins). */
const END_SPREAD_MM = { lower: 0.6, upper: 1.1 };
const RAD = Math.PI / 180;

/** The half outline behind merged places. Faults: those of the fit. */
export function meantLine(
  spots: readonly LineSpot[],
  habit: OutlineHabit,
  options: LineOptions = {},
): Checked<MeantLine> {
  const corners = spots.filter(({ section }) => isCornerEnd(section)).map(({ alongMm }) => alongMm);
  const rounded = (spot: LineSpot) =>
    isCornerEnd(spot.section) || corners.some((at) => Math.abs(at - spot.alongMm) < ROUNDED_MM);
  const fitted = fitHalfOutline(
    spots
      .filter((spot, i) => i % EVERY === 0 || rounded(spot))
      .map((spot) => ({
        ...point<'body'>(spot.x, spot.y),
        weight: spot.weight * (rounded(spot) ? CORNER_WEIGHT : 1),
        section: spot.section,
      })),
    habit,
    {
      ...(options.bodyLengthMm !== undefined && { bodyLengthMm: options.bodyLengthMm }),
      ...(options.isRough && { isRough: true }),
    },
  );
  if (!fitted.ok) return fitted;
  const { half, bodyLengthMm, lowerEndMm } = fitted.value;
  const lowered = spots.map((spot) => ({ ...spot, y: spot.y - lowerEndMm }));
  const scale = bodyLengthMm / habit.usualSizes.bodyLengthMm;
  const known = {
    lower: cornerKnown('lower', habit, lowered, scale, options),
    upper: cornerKnown('upper', habit, lowered, scale, options),
  };
  const ends = [
    seenEnd(known.lower) ?? unseenEnd(known.lower, half.lowerBout.vertices.at(-1), half.cBout.vertices[0]),
    seenEnd(known.upper) ?? unseenEnd(known.upper, half.upperBout.vertices[0], half.cBout.vertices.at(-1)),
  ];
  const atEnd = (spot: LineSpot) =>
    ends.some(
      (end) =>
        hypot(spot.x - end.through.x, spot.y - end.through.y) < AT_END_MM.reach &&
        beyondEndMm(end, spot) > -AT_END_MM.inside,
    );
  const centre = options.bodyLengthMm === undefined ? 'level' : 'pinned';
  const inRun = (section: OutlineSection): readonly RunSpot[] =>
    lowered.filter((spot) => spot.section === section && !rounded(spot) && !atEnd(spot));
  const armMm = ARM_SHARE * bodyLengthMm;
  const runs = {
    lowerBout: meantRun(half.lowerBout, inRun('lowerBout'), { tips: 'end', centre, armMm }),
    cBout: meantRun(half.cBout, inRun('cBout'), { tips: 'both', centre: 'free', armMm }),
    upperBout: meantRun(half.upperBout, inRun('upperBout'), { tips: 'start', centre, armMm }),
  };
  const misfits = (['lowerBout', 'cBout', 'upperBout'] as const).flatMap((section) =>
    misfitsOf(section, runs[section]),
  );
  const arcsSigma = arcsSigmaMm(lowered);
  const kind: ArcKind = misfits.length > 0 || armsLeaveArcs(runs, armMm) ? 'asNeeded' : 'thirteen';
  const drawn = arcsOfRuns(runs, kind, (line) => ({
    lower: meantCorner(
      { run: runs.lowerBout, at: 'end', line },
      { run: runs.cBout, at: 'start', line },
      known.lower,
    ),
    upper: meantCorner(
      { run: runs.upperBout, at: 'start', line },
      { run: runs.cBout, at: 'end', line },
      known.upper,
    ),
  }));
  return accept({
    half: drawn.half,
    kind: drawn.kind,
    misfits,
    bodyLengthMm: drawn.half.upperBout.vertices.at(-1)?.y ?? bodyLengthMm,
    lowerEndMm: lowerEndMm + drawn.lowerEndMm,
    corners: drawn.corners,
    plusMinusMm: lowered.map((spot) =>
      norm([plusMinusOf(spot, runs, drawn), 2 * arcsSigma, 2 * RUBBED_MM, 2 * LINE_MISSES_MM]),
    ),
  });
}

/** Where a corner end that is not seen is taken to stand: a little inside the tips of the fitted arcs. */
function unseenEnd(
  { headingRad }: CornerKnown,
  boutTip: Point<'body'> | undefined,
  waistTip: Point<'body'> | undefined,
): SeenEnd {
  if (boutTip === undefined || waistTip === undefined) throw new Bug('an arm without a place');
  const out = Math.sign(sin(headingRad)) * UNSEEN_MM;
  return {
    headingRad,
    through: {
      x: (boutTip.x + waistTip.x) / 2 - out * sin(headingRad),
      y: (boutTip.y + waistTip.y) / 2 + out * cos(headingRad),
    },
  };
}

/** Whether an arm leaves the thirteen arcs by more than arcs as needed would: at its tip that counts double. */
function armsLeaveArcs(runs: Readonly<Record<'lowerBout' | 'cBout' | 'upperBout', MeantRun>>, armMm: number) {
  const { lowerBout, cBout, upperBout } = runs;
  const leaves = ({ nodes, lengthMm }: MeantRun, at: 'start' | 'end') =>
    nodes.some(({ alongMm, gapMm }) => {
      const fromTipMm = at === 'start' ? alongMm : lengthMm - alongMm;
      return fromTipMm >= 0 && fromTipMm < armMm && Math.abs(gapMm) > ARC_TOLERANCE_MM;
    });
  return (
    leaves(lowerBout, 'end') || leaves(cBout, 'start') || leaves(cBout, 'end') || leaves(upperBout, 'start')
  );
}

function cornerKnown(
  which: 'lower' | 'upper',
  habit: OutlineHabit,
  spots: readonly LineSpot[],
  scale: number,
  { cornerEndMm }: LineOptions,
): CornerKnown {
  const isLower = which === 'lower';
  const usual = isLower ? habit.lowerCornerEndDeg : habit.upperCornerEndDeg;
  const end = spots.filter(({ section, sigmaMm }) => section === `${which}Corner` && sigmaMm !== null);
  const sigma = end.reduce((sum, { sigmaMm }) => sum + (sigmaMm ?? 0), 0) / Math.max(1, end.length);
  const given = cornerEndMm?.[which];
  return {
    // Told upwards along the body; from the bout's tip to the waist's the upper one runs down.
    headingRad: (usual.value + (isLower ? 0 : 180)) * RAD,
    headingSpreadRad: usual.spread * RAD,
    usualWidthMm: scale * (isLower ? habit.lowerCornerEndMm : habit.upperCornerEndMm),
    usualSpreadMm: scale * END_SPREAD_MM[which],
    ...(given === undefined ? {} : { givenWidthMm: given }),
    end,
    endSigmaMm: sigma,
  };
}

/** Stretches of a run, its corner tips left out, where the smooth line leaves the arcs too far. */
function misfitsOf(section: OutlineSection, { nodes, lengthMm }: MeantRun): readonly ArcMisfit[] {
  const found: { fromMm: number; toMm: number; mm: number; last: number }[] = [];
  const first = section === 'lowerBout' ? 0 : ROUNDED_MM;
  const end = section === 'upperBout' ? lengthMm : lengthMm - ROUNDED_MM;
  nodes.forEach(({ alongMm, gapMm, y }, i) => {
    if (alongMm < first || alongMm > end || Math.abs(gapMm) <= MISFIT_MM) return;
    const before = found.at(-1);
    if (before?.last === i - 1 && before.mm * gapMm > 0) {
      before.fromMm = Math.min(before.fromMm, y);
      before.toMm = Math.max(before.toMm, y);
      before.last = i;
      if (Math.abs(gapMm) > Math.abs(before.mm)) before.mm = gapMm;
    } else found.push({ fromMm: y, toMm: y, mm: gapMm, last: i });
  });
  return found.map(({ fromMm, toMm, mm }) => ({ section, fromMm, toMm, mm }));
}

/**
 * mm, one standard deviation. What a smooth line and few arcs miss of an edge whose bend changes fast, as round a
 * corner's hollow (from simulated photographs of bodies that are not made of arcs, seeds 1 to 40, and since arms are one bend from
 * made bodies).
 */
const LINE_MISSES_MM = 0.025;

/** What the scatter of all places leaves open in the fitted arcs, on average over the outline. */
function arcsSigmaMm(spots: readonly LineSpot[]): number {
  const seen = spots.flatMap(({ sigmaMm }) => (sigmaMm === null ? [] : [sigmaMm * sigmaMm]));
  return Math.sqrt((FIT_NUMBERS * seen.reduce((sum, square) => sum + square, 0)) / seen.length ** 2);
}

/** Numbers that shape thirteen arcs, two corner ends and the ends of the body. */
const FIT_NUMBERS = 31;

function plusMinusOf(
  spot: LineSpot,
  runs: Readonly<Record<'lowerBout' | 'cBout' | 'upperBout', MeantRun>>,
  { kind, corners, fitMm }: ReturnType<typeof arcsOfRuns>,
): number {
  const { section, sharedSigmaMm } = spot;
  if (section === 'lowerCorner') return corners.lower?.plusMinusMm ?? UNKNOWN_CORNER_MM;
  if (section === 'upperCorner') return corners.upper?.plusMinusMm ?? UNKNOWN_CORNER_MM;
  const run = runs[section];
  const away = ({ x, y }: Point<'body'>) => (x - spot.x) ** 2 + (y - spot.y) ** 2;
  const nearest = run.nodes.reduce((best, node) => (away(node) < away(best) ? node : best));
  const { gapMm, sigmaMm, normalY } = nodeAt(run, nearest.alongMm);
  // The line is told from its own lower end: where that is unsure, all heights are.
  const originMm = normalY * nodeAt(runs.lowerBout, 0).sigmaMm;
  return 2 * norm([sigmaMm, sharedSigmaMm, originMm, kind === 'thirteen' ? gapMm : fitMm]);
}

/** mm, k = 2. A corner whose end could not be placed stands where the arcs of the fit left it. */
const UNKNOWN_CORNER_MM = 2;

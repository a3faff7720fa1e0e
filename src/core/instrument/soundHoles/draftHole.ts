import {
  accept,
  type Checked,
  cos,
  type Fault,
  hypot,
  type Point,
  point,
  refuse,
  sin,
} from '../../base/index.ts';
import { areaOf, type Chain, lengthOf, nearestOn, selfCrossings } from '../../curve/index.ts';
import { HOLE_SHAPE, type HoleEndShape, type HoleShapeHabit } from '../../knowledge/index.ts';
import { type HoleEnd, type HoleEndSizes, type HoleEndTrouble, holeEnd } from './holeEnd.ts';
import { type Nick, nickAt } from './nick.ts';

/** What every hole is drawn from, mm; x counts from the centre line, y from the inner nick. */
interface EyesAndTips {
  readonly lengthMm: number;
  readonly upperEyesApartMm: number;
  readonly upperEyeMm: number;
  readonly lowerEyeMm: number;
  readonly tipGapMm: number;
}

/** What a maker gives of a treble hole, mm. */
export interface HoleSizes extends EyesAndTips {
  /** From the inner nick to the nearest place of the edge across the stem. */
  readonly stemMm: number;
}

/** The same as the construction takes it. */
export interface DrawnSizes extends EyesAndTips {
  /** Between the places where both edges of the stem turn over, square to it: a little more than its width at the nicks. */
  readonly turnsApartMm: number;
}

/** An eye of a hole. */
export interface Eye {
  readonly centre: Point<'section'>;
  readonly radiusMm: number;
}

/** One end's openings and joints, mm, in the place where the hole lies. */
export interface DraftedEnd {
  readonly eye: Eye;
  /** Corner of the wing's end on the eye, and its tip. */
  readonly eyeCorner: Point<'section'>;
  readonly tip: Point<'section'>;
  readonly stemRadiusMm: number;
  readonly hookRadiusMm: number;
  readonly wingEndMm: number;
  /** Opening from the corner at the eye to the edge across, and from the tip. */
  readonly passageMm: number;
  readonly tipGapMm: number;
}

/** A treble hole in its own frame: x from the centre line, y from the inner nick toward the neck, mm. */
export interface DraftedHole {
  /** Closed, anticlockwise, twelve arcs and two lines, without nicks. */
  readonly plain: Chain<'section'>;
  /** The same with its nicks. */
  readonly chain: Chain<'section'>;
  readonly upper: DraftedEnd;
  readonly lower: DraftedEnd;
  readonly innerNick: Nick;
  readonly outerNick: Nick;
  /** The place of the stem's outer edge nearest to the inner nick, and how far that is. */
  readonly acrossStem: Point<'section'>;
  readonly stemMm: number;
  /** Of the opening without its nicks. */
  readonly areaMm2: number;
  readonly perimeterMm: number;
  readonly eyesApartMm: number;
}

const RAD = Math.PI / 180;

/** rad. Where a shape leaves the stem no arc, the hook starts earlier or later by this at a time, so far at most. */
const HOOK_STEP_RAD = RAD / 2;
const HOOK_STEPS = 60;
/** No unit. The stem's edge is flatter than the shoulder by this at least, or the stem would look broken there. */
const FLATTER = 1.5;

/** mm. The stem is drawn as wide as asked for within this. */
const STEM_MET_MM = 0.000_001;
/** Rounds of false position; three are usual. */
const STEM_ROUNDS = 12;

/**
 * A hole from what a maker measures and the shape that goes with it: the places where the edges of the stem turn over are set so
 * far apart that it is as wide at its nicks as asked for.
 *
 * Faults: `soundHoles.hook`, `soundHoles.crosses-itself` as in {@link drawHole}.
 */
export function draftHole(
  { stemMm, ...rest }: HoleSizes,
  shape: HoleShapeHabit = HOLE_SHAPE,
): Checked<DraftedHole> {
  const drawn = (turnsApartMm: number): Checked<DraftedHole> => drawHole({ ...rest, turnsApartMm }, shape);
  let [apartMm, hole, slope] = [stemMm, drawn(stemMm), 1];
  for (let round = 0; round < STEM_ROUNDS && hole.ok; round++) {
    const missMm = stemMm - hole.value.stemMm;
    if (Math.abs(missMm) < STEM_MET_MM) break;
    const nextMm = apartMm + missMm / slope;
    const next = drawn(nextMm);
    if (next.ok) slope = (next.value.stemMm - hole.value.stemMm) / (nextMm - apartMm);
    [apartMm, hole] = [nextMm, next];
  }
  return hole;
}

/**
 * A hole by its construction. Where an end leaves its stem no arc, the start of its hook is turned as little as will do.
 *
 * Faults: `soundHoles.hook` (an eye that fills its hook, or a stem that already curves away), `soundHoles.crosses-itself`.
 */
export function drawHole(sizes: DrawnSizes, shape: HoleShapeHabit = HOLE_SHAPE): Checked<DraftedHole> {
  const lengthMm = sizes.lengthMm;
  const upperEye = sizes.upperEyesApartMm / 2 + sizes.upperEyeMm / 2;
  const lowerEye = upperEye + shape.eyesAcross * lengthMm;
  const stem = point<'section'>(upperEye + shape.stemAcross * lengthMm, 0);
  const alongRad = Math.PI / 2 + shape.slantDeg * RAD;
  const outwardRad = shape.slantDeg * RAD;
  const edgePlace = (across: number, up: number): Point<'section'> =>
    point(
      stem.x + across * cos(outwardRad) + up * cos(alongRad),
      stem.y + across * sin(outwardRad) + up * sin(alongRad),
    );
  const outerTurn = edgePlace(sizes.turnsApartMm / 2, -shape.upper.turnsOver * lengthMm);
  const innerTurn = edgePlace(-sizes.turnsApartMm / 2, shape.lower.turnsOver * lengthMm);
  const outer = { at: outerTurn, headingRad: alongRad + (shape.edgesDeg * RAD) / 2 };
  const inner = { at: innerTurn, headingRad: alongRad - (shape.edgesDeg * RAD) / 2 };
  const turned = (turn: typeof outer): typeof outer => ({ ...turn, at: point(-turn.at.x, -turn.at.y) });
  const nickMm = { width: shape.nickWidth * lengthMm, depth: shape.nickDepth * lengthMm };
  const upper = settledEnd(sizes, shape.upper, shape.outerNick * lengthMm + nickMm.width, {
    eye: point(upperEye, shape.upper.eye * lengthMm),
    eyeRadiusMm: sizes.upperEyeMm / 2,
    outer,
    inner,
  });
  const lower = settledEnd(sizes, shape.lower, nickMm.width, {
    eye: point(-lowerEye, shape.lower.eye * lengthMm),
    eyeRadiusMm: sizes.lowerEyeMm / 2,
    outer: turned(inner),
    inner: turned(outer),
  });
  if (typeof upper === 'string' || typeof lower === 'string')
    return refuse(...troubles(sizes, { upper, lower }));
  const half = upsideDown(lower.chain);
  const plain: Chain<'section'> = {
    closed: true,
    vertices: [...upper.chain.vertices.slice(0, -1), ...half.vertices.slice(0, -1)],
  };
  if (selfCrossings(plain).length > 0) return refuse(crossesItself());
  const outerNick = nickAt(plain, 0, upper, shape.outerNick * lengthMm, nickMm, 1);
  const innerNick = nickAt(plain, upper.chain.vertices.length - 1, lower, 0, nickMm, -1);
  if (!outerNick || !innerNick) return refuse(...troubles(sizes, { upper: 'stem', lower: 'stem' }));
  const across = nearestOn(outerEdge(plain), innerNick.nick.foot);
  return accept({
    plain,
    acrossStem: across.point,
    stemMm: across.distanceMm,
    chain: {
      closed: true,
      vertices: [
        ...outerNick.vertices,
        ...upper.chain.vertices.slice(1, -1),
        ...innerNick.vertices,
        ...half.vertices.slice(1, -1),
      ],
    },
    upper: draftedEnd(upper, point(upperEye, shape.upper.eye * lengthMm), sizes.upperEyeMm, plain, 1),
    lower: draftedEnd(lower, point(lowerEye, -shape.lower.eye * lengthMm), sizes.lowerEyeMm, plain, -1),
    innerNick: innerNick.nick,
    outerNick: outerNick.nick,
    areaMm2: areaOf(plain),
    perimeterMm: lengthOf(plain),
    eyesApartMm: hypot(lowerEye - upperEye, (shape.upper.eye + shape.lower.eye) * lengthMm),
  });
}

/** The edge of the stem away from the centre line: the lower wing's two arcs and the one that runs to the upper hook. */
function outerEdge({ vertices }: Chain<'section'>): Chain<'section'> {
  const [first, second] = [vertices[0], vertices[1]];
  return {
    closed: false,
    vertices: [...vertices.slice(-2), ...(first && second ? [first, { ...second, bulge: 0 }] : [])],
  };
}

type Placed = Pick<HoleEndSizes, 'eye' | 'eyeRadiusMm' | 'outer' | 'inner'>;

/**
 * The end as its shape has it, or with the start of the hook turned as little as leaves the stem an arc that reaches beyond its
 * nick.
 */
function settledEnd(
  sizes: DrawnSizes,
  end: HoleEndShape,
  nickMm: number,
  placed: Placed,
): HoleEnd | HoleEndTrouble {
  const leastStemMm = FLATTER * end.shoulder * sizes.lengthMm;
  const isSound = (tried: HoleEnd | HoleEndTrouble): boolean =>
    typeof tried !== 'string' &&
    tried.stemRadiusMm > leastStemMm &&
    (tried.chain.vertices[1]?.y ?? Number.NaN) > nickMm;
  const drafted = (turnRad: number): HoleEnd | HoleEndTrouble =>
    holeEnd({
      ...placed,
      topMm: end.reach * sizes.lengthMm,
      shoulderRadiusMm: end.shoulder * sizes.lengthMm,
      hookFromRad: end.hookFromDeg * RAD + turnRad,
      eyeFromRad: end.eyeFromDeg * RAD,
      // The tip keeps its place on the hook.
      tipRad: end.tipDeg * RAD - turnRad,
      taperRad: end.taperDeg * RAD,
      tipGapMm: end.tipGap * sizes.tipGapMm,
      wingShare: end.wingShare,
      wingAtEyeRad: end.wingAtEyeDeg * RAD,
    });
  const first = drafted(0);
  if (first === 'eye' || first === 'hook' || isSound(first)) return first;
  for (let step = 1; step <= HOOK_STEPS; step++)
    for (const way of [-1, 1]) {
      const tried = drafted(way * step * HOOK_STEP_RAD);
      if (isSound(tried)) return tried;
    }
  return 'stem';
}

/** The same line after half a turn about the inner nick. */
function upsideDown({ closed, vertices }: Chain<'section'>): Chain<'section'> {
  return { closed, vertices: vertices.map(({ x, y, bulge }) => ({ x: -x, y: -y, bulge })) };
}

function draftedEnd(
  end: HoleEnd,
  centre: Point<'section'>,
  eyeMm: number,
  plain: Chain<'section'>,
  way: 1 | -1,
): DraftedEnd {
  const place = (at: Point<'section'>): Point<'section'> => point(way * at.x, way * at.y);
  // Across from the wing lie the stem's edge, the shoulder and the hook of the same end.
  const first = way === 1 ? 0 : END_SEGMENTS;
  const across: Chain<'section'> = {
    closed: false,
    vertices: plain.vertices.slice(first, first + 4).map((v, at) => (at === 3 ? { ...v, bulge: 0 } : v)),
  };
  const [eyeCorner, tip] = [place(end.eyeCorner), place(end.tip)];
  return {
    eye: { centre, radiusMm: eyeMm / 2 },
    eyeCorner,
    tip,
    stemRadiusMm: end.stemRadiusMm,
    hookRadiusMm: end.hookRadiusMm,
    wingEndMm: end.wingEndMm,
    passageMm: nearestOn(across, eyeCorner).distanceMm,
    tipGapMm: nearestOn(across, tip).distanceMm,
  };
}

/** Arcs and lines of one end: stem, shoulder, hook, eye, wing end, two of the wing's edge. */
const END_SEGMENTS = 7;

function troubles(
  { upperEyeMm, lowerEyeMm, lengthMm }: DrawnSizes,
  ends: { readonly upper: HoleEnd | HoleEndTrouble; readonly lower: HoleEnd | HoleEndTrouble },
): readonly Fault[] {
  return (['upper', 'lower'] as const).flatMap((which): readonly Fault[] => {
    const trouble = ends[which];
    if (typeof trouble !== 'string') return [];
    const eyeMm = which === 'upper' ? upperEyeMm : lowerEyeMm;
    if (trouble === 'eye' || trouble === 'hook')
      return [
        {
          code: 'soundHoles.hook',
          at: which === 'upper' ? 'upperEyeDiameter' : 'lowerEyeDiameter',
          found: `an eye of ${eyeMm} mm in the ${which} end of a hole ${lengthMm} mm long`,
          need: 'an eye that leaves a hook round it',
          remedy: 'make the eye smaller, or the hole longer',
        },
      ];
    return [
      {
        code: 'soundHoles.hook',
        at: 'holeStemWidth, holeLength',
        found: `a stem whose edge has no room for the ${which} hook`,
        need: 'eyes to both sides of the stem',
        remedy: 'check the width of the stem against the length of the hole and its eyes',
      },
    ];
  });
}

function crossesItself(): Fault {
  return {
    code: 'soundHoles.crosses-itself',
    at: 'holeLength',
    found: 'a sound hole whose line crosses itself',
    need: 'one opening',
    remedy: 'check its length, both eyes, the stem and the opening at the tips of the wings',
  };
}

import {
  accept,
  atan2,
  type Checked,
  cos,
  type Fault,
  type Point,
  point,
  refuse,
  sin,
} from '../../base/index.ts';
import { biarc, bulgeOfSweep, type Chain, joinChains, reverseChain, type Vertex } from '../../curve/index.ts';
import type { ProfileSizes } from './profileSizes.ts';
import { arcStart, QUARTERS_TO_THROAT, type Volute, type VoluteArc, volute } from './volute.ts';

/** The side view of a head as tangent arcs and lines; its only corners are the tip of the chin and the nut. */
export interface HeadProfile {
  readonly sizes: ProfileSizes;
  readonly volute: Volute;
  /** From the tip of the chin up the back, over the top, round the scroll and on along the spiral to the eye: one fair line. */
  readonly spine: Chain<'head'>;
  /** Segments of the spine before the spiral's quarter circle that starts at the top. */
  readonly segmentsToTop: number;
  readonly chinTip: Point<'head'>;
  /** From the back of the neck to the tip of the chin. */
  readonly underside: Chain<'head'>;
  /** From the end of the throat down the front of the pegbox to the nut. */
  readonly front: Chain<'head'>;
  readonly throat: {
    readonly centre: Point<'head'>;
    readonly radiusMm: number;
    /** Where its round touches the spiral: so far along the quarter circle that starts at the bottom, as a share. */
    readonly share: number;
    /** Round from the scroll to the front of the pegbox. */
    readonly chain: Chain<'head'>;
  };
  /** From the back of the neck round the head to the nut, as the silhouette shows it; anticlockwise about the wood. */
  readonly outline: Chain<'head'>;
  readonly backRadiusMm: number;
  readonly frontRadiusMm: number;
}

/** No unit. How far the second tangent of the curve under the chin reaches over the first; drawn so by two old heads. */
const UNDERSIDE_RATIO = 2;

const QUARTER = Math.PI / 2;

/**
 * The side view that meets the given length, height, depth, eye and turns.
 *
 * Faults, in the trade's words: those of {@link volute}; `head.back`, `head.hollow`, `head.front`, `head.throat`, `head.chin`.
 */
export function headProfile(sizes: ProfileSizes): Checked<HeadProfile> {
  const spiral = volute(sizes);
  if (!spiral.ok) return spiral;
  const back = backOf(sizes, spiral.value);
  const front = frontOf(sizes, spiral.value);
  const under = undersideOf(sizes);
  if (!back.ok || !front.ok || !under.ok)
    return refuse(...[back, front, under].flatMap((part) => (part.ok ? [] : part.faults)));
  const { arcs } = spiral.value;
  const spine = joinChains(back.value.chain, arcsChain(arcs.slice(1)));
  const bottom = arcs[QUARTERS_TO_THROAT] as VoluteArc;
  const toThroat = joinChains(
    back.value.chain,
    arcsChain(arcs.slice(1, QUARTERS_TO_THROAT)),
    partOf(bottom, front.value.share),
  );
  const { throatChain, frontChain, ...throat } = front.value;
  return accept({
    sizes,
    volute: spiral.value,
    spine,
    segmentsToTop: back.value.chain.vertices.length - 1,
    chinTip: chinTip(sizes),
    underside: under.value,
    front: frontChain,
    throat: {
      centre: throat.centre,
      radiusMm: sizes.throatRadiusMm,
      share: throat.share,
      chain: throatChain,
    },
    outline: joinChains(under.value, toThroat, throatChain, frontChain),
    backRadiusMm: back.value.radiusMm,
    frontRadiusMm: throat.frontRadiusMm,
  });
}

function chinTip({ chinBehindMm, topMm, lengthMm }: ProfileSizes): Point<'head'> {
  return point(chinBehindMm, topMm - lengthMm);
}

/** Quarter circles one after the other as a chain. */
export function arcsChain(arcs: readonly VoluteArc[]): Chain<'head'> {
  const vertices: Vertex<'head'>[] = arcs.map((arc) => ({ ...arcStart(arc), bulge: bulgeOfSweep(QUARTER) }));
  const last = arcs.at(-1);
  if (last) vertices.push({ ...arcStart({ ...last, fromRad: last.fromRad + QUARTER }), bulge: 0 });
  return { closed: false, vertices };
}

/** The first part of a quarter circle. */
function partOf(arc: VoluteArc, share: number): Chain<'head'> {
  return {
    closed: false,
    vertices: [
      { ...arcStart(arc), bulge: bulgeOfSweep(share * QUARTER) },
      { ...polar(arc.centre, arc.radiusMm, arc.fromRad + share * QUARTER), bulge: 0 },
    ],
  };
}

/** From the tip of the chin: the hollow, the straight of the pegbox, the round of the back, the spiral to the top. */
function backOf(
  sizes: ProfileSizes,
  { arcs }: Volute,
): Checked<{ readonly chain: Chain<'head'>; readonly radiusMm: number }> {
  const { depthMm, leaveRad, leanRad, hollowRadiusMm } = sizes;
  const [outer] = arcs as [VoluteArc];
  const leave = polar(outer.centre, outer.radiusMm, leaveRad);
  const radiusMm = (depthMm - leave.x) / (1 - cos(leaveRad));
  if (!(radiusMm > 0)) return refuse(backFault(sizes, leave.x));
  const centre = polar(leave, -radiusMm, leaveRad);
  const straightFrom = polar(centre, radiusMm, -leanRad);
  const tip = chinTip(sizes);
  const [alongX, alongY] = [-sin(leanRad), -cos(leanRad)];
  const [reachX, reachY] = [tip.x - straightFrom.x, tip.y - straightFrom.y];
  const along = reachX * alongX + reachY * alongY;
  const across = reachY * alongX - reachX * alongY;
  const short = Math.sqrt(hollowRadiusMm ** 2 - (across - hollowRadiusMm) ** 2);
  const straightMm = along - short;
  if (!(straightMm > 0)) return refuse(hollowFault(sizes, across));
  const hollowFrom = point<'head'>(
    straightFrom.x + straightMm * alongX,
    straightFrom.y + straightMm * alongY,
  );
  const hollowSweep = 2 * atan2(across, short);
  const vertices: Vertex<'head'>[] = [
    { ...tip, bulge: bulgeOfSweep(-hollowSweep) },
    { ...hollowFrom, bulge: 0 },
    { ...straightFrom, bulge: bulgeOfSweep(leanRad + leaveRad) },
    { ...leave, bulge: bulgeOfSweep(QUARTER - leaveRad) },
    { ...arcStart({ ...outer, fromRad: QUARTER }), bulge: 0 },
  ];
  return accept({ chain: { closed: false, vertices }, radiusMm });
}

/** The front of the pegbox: a long arc from the nut, a straight, the round of the throat. */
function frontOf(
  sizes: ProfileSizes,
  { arcs }: Volute,
): Checked<{
  readonly frontChain: Chain<'head'>;
  readonly throatChain: Chain<'head'>;
  readonly centre: Point<'head'>;
  readonly share: number;
  readonly frontRadiusMm: number;
}> {
  const { frontRad, throatGapMm: gapMm, throatRadiusMm: roundMm } = sizes;
  const { centre: middle, radiusMm: turnMm } = arcs[QUARTERS_TO_THROAT] as VoluteArc;
  const [sine, cosine] = [sin(frontRad), cos(frontRad)];
  const frontRadiusMm = (middle.y * sine - middle.x * cosine - turnMm - gapMm) / (1 - cosine);
  if (!(frontRadiusMm > 0)) return refuse(frontFault(sizes));
  if (!(2 * roundMm >= gapMm)) return refuse(throatFault(sizes));
  const arcEnd = point<'head'>(frontRadiusMm * (1 - cosine), frontRadiusMm * sine);
  const alongMm = (middle.x - arcEnd.x) * sine + (middle.y - arcEnd.y) * cosine;
  const beyondMm = Math.sqrt((turnMm + roundMm) ** 2 - (turnMm + gapMm - roundMm) ** 2);
  const lineMm = alongMm + beyondMm;
  if (!(lineMm > 0)) return refuse(frontFault(sizes));
  const lineEnd = point<'head'>(arcEnd.x + lineMm * sine, arcEnd.y + lineMm * cosine);
  const centre = point<'head'>(lineEnd.x - roundMm * cosine, lineEnd.y + roundMm * sine);
  const towardRad = atan2(centre.y - middle.y, centre.x - middle.x);
  // From the bottom of the turn, which is a quarter turn before the back.
  const share = (towardRad + QUARTER) / QUARTER;
  if (!(share > 0 && share < 1)) return refuse(throatFault(sizes));
  const touch = polar(middle, turnMm, towardRad);
  const lineSideRad = atan2(-sine, cosine);
  const fromRad = towardRad + Math.PI;
  const sweep = -((((fromRad - lineSideRad) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI));
  const round: Vertex<'head'>[] = [
    { ...touch, bulge: bulgeOfSweep(sweep) },
    { ...lineEnd, bulge: 0 },
  ];
  const front: Vertex<'head'>[] = [
    { ...lineEnd, bulge: 0 },
    { ...arcEnd, bulge: bulgeOfSweep(frontRad) },
    { ...point<'head'>(0, 0), bulge: 0 },
  ];
  return accept({
    frontChain: { closed: false, vertices: front },
    throatChain: { closed: false, vertices: round },
    centre,
    share,
    frontRadiusMm,
  });
}

function undersideOf(sizes: ProfileSizes): Checked<Chain<'head'>> {
  const tip = chinTip(sizes);
  const neck = point<'head'>(sizes.neckBehindMm, -sizes.chinReachMm);
  if (!(neck.x < tip.x && neck.y < tip.y)) return refuse(chinFault(sizes, tip));
  const down = biarc(tip, Math.PI + sizes.chinRad, neck, -QUARTER, 1 / UNDERSIDE_RATIO);
  return accept(reverseChain(down));
}

function polar(centre: Point<'head'>, radiusMm: number, rad: number): Point<'head'> {
  return point(centre.x + radiusMm * cos(rad), centre.y + radiusMm * sin(rad));
}

const mm = (value: number): string => `${Number(value.toFixed(1))} mm`;

function backFault({ depthMm }: ProfileSizes, leaveMm: number): Fault {
  return {
    code: 'head.back',
    at: 'headDepth',
    found: `a back ${mm(depthMm)} behind the gluing face, where the spiral leaves at ${mm(leaveMm)}`,
    need: 'a back farther behind than the place where it leaves the spiral',
    remedy: 'check headDepth, scrollHeight, scrollFront and backLeaveAngle',
  };
}

function hollowFault({ hollowRadiusMm, chinBehindMm }: ProfileSizes, acrossMm: number): Fault {
  return {
    code: 'head.hollow',
    at: 'backHollow',
    found: `a hollow of ${mm(hollowRadiusMm)} and a chin ${mm(chinBehindMm)} behind the gluing face, ${mm(Math.abs(acrossMm))} ${acrossMm > 0 ? 'behind' : 'before'} the straight back carried on`,
    need: 'a straight back that runs through a hollow into the tip of the chin',
    remedy: 'raise backHollow or backLeanAngle, or check chinBehind and headLength',
  };
}

function frontFault({ frontRad, scrollHeightMm, topMm }: ProfileSizes): Fault {
  return {
    code: 'head.front',
    at: 'pegboxFrontAngle',
    found: `a front edge turning ${((frontRad * 180) / Math.PI).toFixed(1)}° back under a scroll ${mm(scrollHeightMm)} high whose top is ${mm(topMm)} from the nut`,
    need: 'a front edge that passes under the scroll in one long round',
    remedy: 'change pegboxFrontAngle, or check headTop, scrollHeight and scrollFront',
  };
}

function throatFault({ throatGapMm, throatRadiusMm }: ProfileSizes): Fault {
  return {
    code: 'head.throat',
    at: 'throatRadius',
    found: `a throat ${mm(throatGapMm)} wide ending in a round of ${mm(throatRadiusMm)}`,
    need: 'a round at least half as large as the throat is wide, ending under the outer turn',
    remedy: 'raise throatRadius or lower throatGap',
  };
}

function chinFault({ neckBehindMm, chinReachMm }: ProfileSizes, tip: Point<'head'>): Fault {
  return {
    code: 'head.chin',
    at: 'chinReach',
    found: `a chin whose tip lies ${mm(-tip.y)} below the nut and ${mm(tip.x)} behind the gluing face, and a neck ${mm(neckBehindMm)} thick at ${mm(chinReachMm)}`,
    need: 'a chin that stands out behind the back of the neck, and above where it runs into it',
    remedy: 'check chinBehind, headLength, headTop and chinReach',
  };
}

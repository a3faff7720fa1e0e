import { accept, asin, Bug, type Checked, type Point, point, power, refuse, tan } from '../base/index.ts';
import type { Chain, Vertex } from '../curve/index.ts';
import {
  type CurtateCycloid,
  curtateCycloid,
  cycloidBend,
  cycloidHeight,
  cycloidSlope,
} from './curtateCycloid.ts';
import { type ArcPiece, arcPieces, longArchFault as fault } from './longArchArcs.ts';

/** What the arch along the centre line is made of. All are level where they meet the channel. */
export type LongArchForm =
  /** One circle, brought level at both ends by fillets. A fillet of 0 leaves the plain circle, which is not level. */
  | { readonly kind: 'circle'; readonly filletMm: number }
  /** A flatter circle in the middle, to `platformMm` each side of the crest, then one that falls faster, then fillets. */
  | {
      readonly kind: 'two-circles';
      readonly filletMm: number;
      readonly platformMm: number;
      readonly platformRadiusMm: number;
    }
  /** Level of itself, much lower over the bouts. */
  | { readonly kind: 'cycloid' };

/** The arch along the centre line: y from channel end to channel end, heights above the channel, level at the crest. */
export interface LongArch {
  readonly form: LongArchForm;
  readonly startMm: number;
  readonly endMm: number;
  /** Where it is highest. */
  readonly crestMm: number;
  readonly riseMm: number;
  /** From the crest down to the lower channel end. */
  readonly below: HalfArch;
  /** From the crest up to the upper channel end. */
  readonly above: HalfArch;
}

/** One side of a long arch, t counted from the crest. */
type HalfArch =
  | { readonly kind: 'arcs'; readonly half: readonly ArcPiece[] }
  | { readonly kind: 'cycloid'; readonly cycloid: CurtateCycloid };

/** Radius of the circle through both ends of a chord and a crest above its middle: (c² / 4 + s²) / 2s. */
export function chordCircleRadius(chordMm: number, riseMm: number): number {
  return ((chordMm * chordMm) / 4 + riseMm * riseMm) / (2 * riseMm);
}

/**
 * The long arch between two channel ends, with its rise, in the form asked for; the crest in the middle unless given. With
 * another crest it is two halves of unequal reach that are level where they meet: there only the curvature steps.
 *
 * Arcs stay arcs: each joint is tangent, crest and ends are met exactly.
 * Faults: `arch.chord`, `arch.crest` (not between the channel ends), `arch.rise`, `arch.fillet` (no circle is left between the fillets), `arch.platform`
 * (the flatter circle cannot be joined), `arch.loop`.
 */
export function longArch(
  startMm: number,
  endMm: number,
  riseMm: number,
  form: LongArchForm,
  at = 'long arch',
  crestMm = (startMm + endMm) / 2,
): Checked<LongArch> {
  if (!(endMm > startMm))
    return fault(
      at,
      'arch.chord',
      `channel ends at ${startMm} and ${endMm} mm`,
      'the second above the first',
    );
  if (!(crestMm > startMm && crestMm < endMm))
    return refuse({
      code: 'arch.crest',
      at,
      found: `a crest ${crestMm} mm above the lower end`,
      need: `a place between the ends of the channel, ${startMm.toFixed(1)} and ${endMm.toFixed(1)} mm`,
      remedy: 'move the crest into the body, or leave it out for the middle',
    });
  const below = halfArch(crestMm - startMm, riseMm, form, at);
  if (!below.ok) return below;
  const above = halfArch(endMm - crestMm, riseMm, form, at);
  if (!above.ok) return above;
  return accept({ form, startMm, endMm, crestMm, riseMm, below: below.value, above: above.value });
}

function halfArch(reachMm: number, riseMm: number, form: LongArchForm, at: string): Checked<HalfArch> {
  if (!(riseMm > 0 && riseMm < reachMm))
    return fault(
      at,
      'arch.rise',
      `a rise of ${riseMm} mm over ${reachMm} mm from the crest to the channel`,
      'a rise above 0 and below that length',
    );
  if (form.kind === 'cycloid') {
    const cycloid = curtateCycloid(2 * reachMm, riseMm, at);
    return cycloid.ok ? accept({ kind: 'cycloid', cycloid: cycloid.value }) : cycloid;
  }
  const platform =
    form.kind === 'circle'
      ? { toMm: 0, radiusMm: riseMm }
      : { toMm: form.platformMm, radiusMm: form.platformRadiusMm };
  const pieces = arcPieces(reachMm, riseMm, form.filletMm, platform, at);
  return pieces.ok ? accept({ kind: 'arcs', half: pieces.value }) : pieces;
}

/** Height of the long arch above the channel at y, mm; 0 beyond its ends. */
export function longArchHeight(arch: LongArch, yMm: number): number {
  if (!(yMm > arch.startMm && yMm < arch.endMm)) return 0;
  const half = halfAt(arch, yMm);
  const t = Math.abs(yMm - arch.crestMm);
  if (half.kind === 'cycloid') return cycloidHeight(half.cycloid, t);
  const piece = pieceAt(half.half, t);
  const across = Math.sqrt(piece.radiusMm ** 2 - (t - piece.centre.x) ** 2);
  return piece.hollow ? piece.centre.y - across : piece.centre.y + across;
}

/** Slope dz/dy of the long arch at y; positive toward the crest from the lower end, 0 beyond its ends. */
export function longArchSlope(arch: LongArch, yMm: number): number {
  if (!(yMm > arch.startMm && yMm < arch.endMm) || yMm === arch.crestMm) return 0;
  const half = halfAt(arch, yMm);
  const side = Math.sign(yMm - arch.crestMm);
  const t = Math.abs(yMm - arch.crestMm);
  if (half.kind === 'cycloid') return side * cycloidSlope(half.cycloid, t);
  const piece = pieceAt(half.half, t);
  const along = t - piece.centre.x;
  const fall = along / Math.sqrt(piece.radiusMm ** 2 - along ** 2);
  return side * (piece.hollow ? fall : -fall);
}

/** Second derivative d²z/dy² of the long arch at y, 1/mm; at a joint that of the piece toward the crest, 0 beyond its ends. */
export function longArchBend(arch: LongArch, yMm: number): number {
  if (!(yMm > arch.startMm && yMm < arch.endMm)) return 0;
  const half = halfAt(arch, yMm);
  const t = Math.abs(yMm - arch.crestMm);
  if (half.kind === 'cycloid') return cycloidBend(half.cycloid, t);
  const piece = pieceAt(half.half, t);
  const bend = piece.radiusMm ** 2 / power(piece.radiusMm ** 2 - (t - piece.centre.x) ** 2, 1.5);
  return piece.hollow ? bend : -bend;
}

function halfAt(arch: LongArch, yMm: number): HalfArch {
  return yMm < arch.crestMm ? arch.below : arch.above;
}

/** The radii of the long arch from crest to lower channel end, mm, hollow ones negative; none for a cycloid. */
export function longArchRadii(arch: LongArch): readonly number[] {
  if (arch.below.kind === 'cycloid') return [];
  return arch.below.half.map((piece) => (piece.hollow ? -piece.radiusMm : piece.radiusMm));
}

/** Places where the curvature of the long arch steps: joints of its arcs, and a crest off the middle; from the lower end up. */
export function longArchJoints(arch: LongArch): readonly number[] {
  const joints = (half: HalfArch): readonly number[] =>
    half.kind === 'arcs' ? half.half.slice(0, -1).map(({ toMm }) => toMm) : [];
  const below = joints(arch.below).map((t) => arch.crestMm - t);
  const above = joints(arch.above).map((t) => arch.crestMm + t);
  return [...below.toReversed(), ...(isEven(arch) ? [] : [arch.crestMm]), ...above];
}

/**
 * The long arch as exact arcs, from the lower channel end to the upper, heights above the channel, section
 * frame (y, z), the arc over a crest in the middle written once; null for a cycloid, which is made of no arcs.
 */
export function longArchChain(arch: LongArch): Chain<'section'> | null {
  if (arch.below.kind === 'cycloid' || arch.above.kind === 'cycloid') return null;
  const lower = sideVertices(arch.below.half, arch.crestMm, -1);
  const upper = sideVertices(arch.above.half, arch.crestMm, 1);
  if (isEven(arch)) {
    const crest = tan((2 * sweepTo(arch.below.half, 0)) / 4) * -1;
    return { closed: false, vertices: [...withLastBulge(lower, crest), ...upper] };
  }
  const bulge = (half: readonly ArcPiece[]) => -tan(sweepTo(half, 0) / 4);
  const top = { x: arch.crestMm, y: arch.riseMm, bulge: bulge(arch.above.half) };
  return { closed: false, vertices: [...withLastBulge(lower, bulge(arch.below.half)), top, ...upper] };
}

function isEven(arch: LongArch): boolean {
  return arch.crestMm === (arch.startMm + arch.endMm) / 2;
}

/** Ends of the arcs of one side, from the lower end of the body up, each with the bulge of the arc that follows it. */
function sideVertices(
  half: readonly ArcPiece[],
  crestMm: number,
  side: -1 | 1,
): readonly Vertex<'section'>[] {
  const vertices = half.map((piece, index): Vertex<'section'> => {
    const at = pointOnPiece(piece, piece.toMm);
    // Going up from the lower end the arc that follows is the one toward the crest; beyond the crest the next one out.
    const follows = side < 0 ? index : index + 1;
    const arc = half[follows];
    const bulge = arc && follows > 0 ? tan(sweepTo(half, follows) / 4) * (arc.hollow ? 1 : -1) : 0;
    return { x: crestMm + side * at.x, y: at.y, bulge };
  });
  return side < 0 ? vertices.reverse() : vertices;
}

function withLastBulge(vertices: readonly Vertex<'section'>[], bulge: number): readonly Vertex<'section'>[] {
  return vertices.map((vertex, index) => (index === vertices.length - 1 ? { ...vertex, bulge } : vertex));
}

/** How far an arc of a half turns; the first one from the crest. */
function sweepTo(half: readonly ArcPiece[], index: number): number {
  const piece = half[index];
  if (!piece) throw new Bug('a long arch without arcs');
  return turnOf(piece, piece.toMm) - turnOf(piece, half[index - 1]?.toMm ?? 0);
}

function pieceAt(half: readonly ArcPiece[], t: number): ArcPiece {
  const piece = half.find((candidate) => t <= candidate.toMm) ?? half.at(-1);
  if (!piece) throw new Bug('a long arch without arcs');
  return piece;
}

function pointOnPiece(piece: ArcPiece, t: number): Point<'section'> {
  const across = Math.sqrt(Math.max(0, piece.radiusMm ** 2 - (t - piece.centre.x) ** 2));
  return point(t, piece.hollow ? piece.centre.y - across : piece.centre.y + across);
}

/** Angle on the arc from its level place, counted with t. */
function turnOf(piece: ArcPiece, t: number): number {
  return asin(Math.max(-1, Math.min(1, (t - piece.centre.x) / piece.radiusMm)));
}

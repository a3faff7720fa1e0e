import { accept, Bug, type Checked, type Fault, type Point, point, refuse } from '../base/index.ts';
import type { Chain, Vertex } from '../curve/index.ts';
import { type CurtateCycloid, curtateCycloid, cycloidHeight, cycloidSlope } from './curtateCycloid.ts';

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

/** One arc of the half from the crest outwards; `hollow` ones have their centre above. t is the distance from the crest. */
interface ArcPiece {
  readonly toMm: number;
  readonly centre: Point<'section'>;
  readonly radiusMm: number;
  readonly hollow: boolean;
}

/** The arch along the centre line: y from channel end to channel end, heights above the channel, crest in the middle. */
export interface LongArch {
  readonly form: LongArchForm;
  readonly startMm: number;
  readonly endMm: number;
  readonly riseMm: number;
  readonly shape:
    | { readonly kind: 'arcs'; readonly half: readonly ArcPiece[] }
    | { readonly kind: 'cycloid'; readonly cycloid: CurtateCycloid };
}

/** Radius of the circle through both ends of a chord and a crest above its middle: (c² / 4 + s²) / 2s. */
export function chordCircleRadius(chordMm: number, riseMm: number): number {
  return ((chordMm * chordMm) / 4 + riseMm * riseMm) / (2 * riseMm);
}

/**
 * The long arch between two channel ends, with its rise, in the form asked for.
 *
 * Arcs stay arcs: each joint is tangent, crest and ends are met exactly.
 * Faults: `arch.chord`, `arch.rise`, `arch.fillet` (no circle is left between the fillets), `arch.platform`
 * (the flatter circle cannot be joined), `arch.loop`.
 */
export function longArch(
  startMm: number,
  endMm: number,
  riseMm: number,
  form: LongArchForm,
  at = 'long arch',
): Checked<LongArch> {
  const half = (endMm - startMm) / 2;
  if (!(half > 0))
    return fault(
      at,
      'arch.chord',
      `channel ends at ${startMm} and ${endMm} mm`,
      'the second above the first',
    );
  if (!(riseMm > 0 && riseMm < half))
    return fault(
      at,
      'arch.rise',
      `a rise of ${riseMm} mm over ${2 * half} mm`,
      'a rise above 0 and below half the length',
    );
  const frame = { form, startMm, endMm, riseMm };
  if (form.kind === 'cycloid') {
    const cycloid = curtateCycloid(2 * half, riseMm, at);
    return cycloid.ok ? accept({ ...frame, shape: { kind: 'cycloid', cycloid: cycloid.value } }) : cycloid;
  }
  const platform =
    form.kind === 'circle'
      ? { toMm: 0, radiusMm: riseMm }
      : { toMm: form.platformMm, radiusMm: form.platformRadiusMm };
  const pieces = arcPieces(half, riseMm, form.filletMm, platform, at);
  return pieces.ok ? accept({ ...frame, shape: { kind: 'arcs', half: pieces.value } }) : pieces;
}

/** Height of the long arch above the channel at y, mm; 0 beyond its ends. */
export function longArchHeight(arch: LongArch, yMm: number): number {
  const t = Math.abs(yMm - middleOf(arch));
  if (t >= (arch.endMm - arch.startMm) / 2) return 0;
  if (arch.shape.kind === 'cycloid') return cycloidHeight(arch.shape.cycloid, t);
  const piece = pieceAt(arch.shape.half, t);
  const across = Math.sqrt(piece.radiusMm ** 2 - (t - piece.centre.x) ** 2);
  return piece.hollow ? piece.centre.y - across : piece.centre.y + across;
}

/** Slope dz/dy of the long arch at y; positive toward the crest from the lower end, 0 beyond its ends. */
export function longArchSlope(arch: LongArch, yMm: number): number {
  const fromCrest = yMm - middleOf(arch);
  const t = Math.abs(fromCrest);
  if (t >= (arch.endMm - arch.startMm) / 2 || t === 0) return 0;
  const side = Math.sign(fromCrest);
  if (arch.shape.kind === 'cycloid') return side * cycloidSlope(arch.shape.cycloid, t);
  const piece = pieceAt(arch.shape.half, t);
  const along = t - piece.centre.x;
  const fall = along / Math.sqrt(piece.radiusMm ** 2 - along ** 2);
  return side * (piece.hollow ? fall : -fall);
}

/** The radii of the long arch from crest to channel, mm, hollow ones negative; none for a cycloid. */
export function longArchRadii(arch: LongArch): readonly number[] {
  if (arch.shape.kind === 'cycloid') return [];
  return arch.shape.half.map((piece) => (piece.hollow ? -piece.radiusMm : piece.radiusMm));
}

/**
 * The long arch as exact arcs, from the lower channel end to the upper, heights above the channel, section
 * frame (y, z), the arc over the crest written once; null for a cycloid, which is made of no arcs.
 */
export function longArchChain(arch: LongArch): Chain<'section'> | null {
  if (arch.shape.kind === 'cycloid') return null;
  const middle = middleOf(arch);
  const half = arch.shape.half;
  const ends = half.map((piece) => pointOnPiece(piece, piece.toMm));
  const bulges = half.map((piece, index) => {
    const sweep = turnOf(piece, piece.toMm) - turnOf(piece, half[index - 1]?.toMm ?? -piece.toMm);
    return Math.tan(sweep / 4) * (piece.hollow ? 1 : -1);
  });
  const left = ends.map((at, index): Vertex<'section'> => {
    return { x: middle - at.x, y: at.y, bulge: bulges[index] ?? 0 };
  });
  const right = ends.map((at, index): Vertex<'section'> => {
    return { x: middle + at.x, y: at.y, bulge: bulges[index + 1] ?? 0 };
  });
  return { closed: false, vertices: [...left.reverse(), ...right] };
}

function middleOf(arch: LongArch): number {
  return (arch.startMm + arch.endMm) / 2;
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
  return Math.asin(Math.max(-1, Math.min(1, (t - piece.centre.x) / piece.radiusMm)));
}

/**
 * Platform circle (when there is one), falling circle, fillet. With J the joint, n the unit normal there and
 * P from the fillet's centre to J, |P − R n| = R + r gives R = (|P|² − r²) / 2(P·n + r).
 */
function arcPieces(
  half: number,
  rise: number,
  fillet: number,
  platform: { readonly toMm: number; readonly radiusMm: number },
  at: string,
): Checked<readonly ArcPiece[]> {
  if (!(fillet >= 0))
    return fault(at, 'arch.fillet', `an end fillet of ${fillet} mm`, 'a radius of 0 mm or more');
  if (!(platform.toMm >= 0 && platform.toMm < half && platform.radiusMm > platform.toMm))
    return fault(
      at,
      'arch.platform',
      `a flatter circle of radius ${platform.radiusMm} mm to ${platform.toMm} mm each side`,
      'a radius greater than its reach, and a reach inside the arch',
    );
  const sine = platform.toMm / platform.radiusMm;
  const cosine = Math.sqrt(1 - sine * sine);
  const jointZ = rise - platform.radiusMm * (1 - cosine);
  const px = platform.toMm - half;
  const pz = jointZ - fillet;
  const radius = (px * px + pz * pz - fillet * fillet) / (2 * (px * sine + pz * cosine + fillet));
  if (!(radius > fillet && radius > rise))
    return fault(
      at,
      platform.toMm > 0 ? 'arch.platform' : 'arch.fillet',
      `no falling circle between crest and an end fillet of ${fillet} mm`,
      'room for a circle between them',
    );
  const centre = point<'section'>(platform.toMm - radius * sine, jointZ - radius * cosine);
  const end = centre.x + ((half - centre.x) * radius) / (radius + fillet);
  if (!(end > platform.toMm))
    return fault(at, 'arch.platform', 'a platform that reaches into the end fillet', 'a shorter platform');
  const pieces: ArcPiece[] = [{ toMm: end, centre, radiusMm: radius, hollow: false }];
  if (platform.toMm > 0)
    pieces.unshift({
      toMm: platform.toMm,
      centre: point(0, rise - platform.radiusMm),
      radiusMm: platform.radiusMm,
      hollow: false,
    });
  if (fillet > 0) pieces.push({ toMm: half, centre: point(half, fillet), radiusMm: fillet, hollow: true });
  return accept(pieces);
}

function fault(
  at: string,
  code: string,
  found: string,
  need: string,
): { ok: false; faults: readonly Fault[] } {
  return refuse({
    code,
    at,
    found,
    need,
    remedy: 'change the end fillet, the arch height or the form of the long arch',
  });
}

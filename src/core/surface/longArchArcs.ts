import { accept, type Checked, type Fault, type Point, point, refuse } from '../base/index.ts';

/** One arc of the half from the crest outwards; `hollow` ones have their centre above. t is the distance from the crest. */
export interface ArcPiece {
  readonly toMm: number;
  readonly centre: Point<'section'>;
  readonly radiusMm: number;
  readonly hollow: boolean;
}

/**
 * Platform circle (when there is one), falling circle, fillet. With J the joint, n the unit normal there and
 * P from the fillet's centre to J, |P − R n| = R + r gives R = (|P|² − r²) / 2(P·n + r).
 */
export function arcPieces(
  half: number,
  rise: number,
  fillet: number,
  platform: { readonly toMm: number; readonly radiusMm: number },
  at: string,
): Checked<readonly ArcPiece[]> {
  if (!(fillet >= 0))
    return longArchFault(at, 'arch.fillet', `an end fillet of ${fillet} mm`, 'a radius of 0 mm or more');
  if (!(platform.toMm >= 0 && platform.toMm < half && platform.radiusMm > platform.toMm))
    return longArchFault(
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
    return longArchFault(
      at,
      platform.toMm > 0 ? 'arch.platform' : 'arch.fillet',
      platform.toMm > 0
        ? `a flatter circle of radius ${platform.radiusMm} mm to ${platform.toMm} mm each side, from which no circle leads down to the channel`
        : `no falling circle between crest and an end fillet of ${fillet} mm`,
      'room for a circle that falls faster between crest and channel',
    );
  const centre = point<'section'>(platform.toMm - radius * sine, jointZ - radius * cosine);
  const end = centre.x + ((half - centre.x) * radius) / (radius + fillet);
  if (!(end > platform.toMm))
    return longArchFault(
      at,
      'arch.platform',
      'a platform that reaches into the end fillet',
      'a shorter platform',
    );
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

/** A fault of a long arch, refused. */
export function longArchFault(
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

import { accept, acos, type Checked, cos, hypot, power, refuse, sin } from '../base/index.ts';
import { rollAngle } from './rollAngle.ts';

/**
 * An arch across a plate: the path of a point inside a rolling circle, from channel to channel.
 *
 * Section frame, millimetres: x from the crest, height above the channel's lowest points.
 * x = a·ψ + b·sin ψ, z = b·(1 + cos ψ), ψ from −π to π; a = width / 2π, b = rise / 2.
 */
export interface CurtateCycloid {
  readonly widthMm: number;
  readonly riseMm: number;
  /** a, the radius of the rolling circle. */
  readonly rollingRadiusMm: number;
  /** b, the distance of the tracing point from its centre. */
  readonly tracingRadiusMm: number;
  /** Infinite when the rise is 0. */
  readonly crestRadiusMm: number;
  readonly channelRadiusMm: number;
  readonly areaMm2: number;
  /** The place on the treble side where the arch is steepest; there it turns from hollow to full. */
  readonly steepest: { readonly xMm: number; readonly heightMm: number; readonly slope: number };
}

/**
 * The curtate cycloid of a width between channel lows and a rise above them.
 *
 * Faults: `arch.width` (not above 0), `arch.rise` (below 0 or not a number), `arch.loop` (the rise is so
 * great for the width that the curve would loop: rise ≥ width / π).
 */
export function curtateCycloid(widthMm: number, riseMm: number, at = 'arch'): Checked<CurtateCycloid> {
  if (!(widthMm > 0 && Number.isFinite(widthMm)))
    return refuse({
      code: 'arch.width',
      at,
      found: `a width of ${widthMm} mm from channel to channel`,
      need: 'a width above 0 mm',
      remedy: 'bring the channel nearer to the edge, or check the width of the body',
    });
  if (!(riseMm >= 0 && Number.isFinite(riseMm)))
    return refuse({
      code: 'arch.rise',
      at,
      found: `a rise of ${riseMm} mm above the channel`,
      need: 'a rise of 0 mm or more',
      remedy: 'raise the arch, or make the channel deeper',
    });
  const a = widthMm / (2 * Math.PI);
  const b = riseMm / 2;
  if (b >= a)
    return refuse({
      code: 'arch.loop',
      at,
      found: `a rise of ${riseMm.toFixed(2)} mm over ${widthMm.toFixed(2)} mm from channel to channel, at which a cycloid loops`,
      need: `a rise below ${(2 * a).toFixed(2)} mm, which is the width divided by π`,
      remedy: 'lower the arch, or give this place a wider channel-to-channel width',
    });
  const steepPsi = acos(-b / a);
  return accept({
    widthMm,
    riseMm,
    rollingRadiusMm: a,
    tracingRadiusMm: b,
    crestRadiusMm: (a + b) ** 2 / b,
    channelRadiusMm: (a - b) ** 2 / b,
    areaMm2: b * widthMm + Math.PI * b * b,
    steepest: {
      xMm: a * steepPsi + b * sin(steepPsi),
      heightMm: b * (1 - b / a),
      slope: -b / Math.sqrt(a * a - b * b),
    },
  });
}

/** Height above the channel at x from the crest, mm; 0 beyond the channel. */
export function cycloidHeight(cycloid: CurtateCycloid, xMm: number): number {
  const psi = psiAt(cycloid, xMm);
  return cycloid.tracingRadiusMm * (1 + cos(psi));
}

/** Slope dz/dx at x from the crest; negative on the treble side, 0 beyond the channel. */
export function cycloidSlope(cycloid: CurtateCycloid, xMm: number): number {
  const { rollingRadiusMm: a, tracingRadiusMm: b } = cycloid;
  const psi = psiAt(cycloid, xMm);
  return (-b * sin(psi)) / (a + b * cos(psi)) || 0;
}

/** Second derivative d²z/dx² at x from the crest, 1/mm; 0 beyond the channel. */
export function cycloidBend(cycloid: CurtateCycloid, xMm: number): number {
  if (2 * Math.abs(xMm) > cycloid.widthMm) return 0;
  const { rollingRadiusMm: a, tracingRadiusMm: b } = cycloid;
  const cosine = cos(psiAt(cycloid, xMm));
  return (-b * (a * cosine + b)) / power(a + b * cosine, 3);
}

/** Signed curvature at x from the crest, 1/mm: negative where the arch is full, positive where it is hollow. */
export function cycloidCurvature(cycloid: CurtateCycloid, xMm: number): number {
  const { rollingRadiusMm: a, tracingRadiusMm: b } = cycloid;
  const psi = psiAt(cycloid, xMm);
  const speed = hypot(a + b * cos(psi), b * sin(psi));
  return (-b * (a * cos(psi) + b)) / power(speed, 3);
}

/** ψ at x; odd in x, so that both sides of the arch are the same to the last bit. */
function psiAt(cycloid: CurtateCycloid, xMm: number): number {
  const { rollingRadiusMm: a, tracingRadiusMm: b } = cycloid;
  const psi = rollAngle(Math.abs(xMm) / a, b / a);
  return xMm < 0 ? -psi : psi;
}

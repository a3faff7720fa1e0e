import { Bug, cos, SETTLED, sin } from '../base/index.ts';

/** Newton steps inside a bracket that halves at worst; a double has no more than this many halvings in it. */
const MOST_STEPS = 80;

/**
 * The angle ψ, from 0 to π, through which the rolling circle of a curtate cycloid has turned:
 * ψ + q·sin ψ = t, for t from 0 to π and 0 ≤ q < 1.
 *
 * The left side rises from 0 to π without turning back, so there is one answer, and Newton's step is taken
 * only while it stays inside the bracket: it cannot run away.
 */
export function rollAngle(target: number, ratio: number): number {
  if (!(ratio >= 0 && ratio < 1)) throw new Bug(`roll angle asked for a looped cycloid, ratio ${ratio}`);
  if (target <= 0) return 0;
  if (target >= Math.PI) return Math.PI;
  let low = 0;
  let high = Math.PI;
  let psi = target / (1 + ratio);
  for (let step = 0; step < MOST_STEPS; step++) {
    const miss = psi + ratio * sin(psi) - target;
    if (miss > 0) high = psi;
    else low = psi;
    const newton = psi - miss / (1 + ratio * cos(psi));
    // Before the bracket is asked: rounding may put the answer itself a hair outside it.
    if (Math.abs(newton - psi) <= SETTLED * Math.PI) return newton;
    psi = newton > low && newton < high ? newton : (low + high) / 2;
  }
  throw new Bug(`roll angle did not settle for ${target}, ratio ${ratio}`);
}

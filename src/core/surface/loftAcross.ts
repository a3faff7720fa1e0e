import { cos, sin } from '../base/index.ts';
import { withFullness } from './fullness.ts';
import { type LoftRow, loftHeight } from './loft.ts';
import { rollAngle } from './rollAngle.ts';

/** rad. Steps of the rolling angle up to this are turned by a short series, exact to a double's last digits. */
const SHORT_RAD = 0.15;

/** rad. A guess nearer than this is settled by one step of the third order. */
const NEAR_RAD = 1 / 20_000;

/**
 * Heights of a loft's row at even steps from the centre line, into an array: those of {@link loftHeight} to better than a millionth of
 * a thousandth of a millimetre, each found from its neighbour in one step.
 *
 * Method: the angle of the cycloid runs on by its own differential equation to the second order, is settled by Halley's step, and sine and cosine
 * are turned along with it.
 */
export function loftAcross(row: LoftRow, stepMm: number, into: Float64Array): void {
  const { widthMm, riseMm, fullness, loopRatio: q, beyond } = row;
  const steps = widthMm > 0 && riseMm > 0 && !beyond ? Math.min(into.length, Math.ceil(widthMm / stepMm)) : 0;
  const turnRad = (Math.PI * stepMm) / widthMm;
  let psi = 0;
  let sine = 0;
  let cosine = 1;
  for (let at = 0; at < steps; at++) {
    if (at > 0) {
      const rate = 1 / (1 + q * cosine);
      const guess = turnRad * rate * (1 + (turnRad * q * sine * rate * rate) / 2);
      const target = at * turnRad;
      const turned = guess < SHORT_RAD ? shortSine(guess) : sin(guess);
      const stayed = guess < SHORT_RAD ? shortCosine(guess) : cos(guess);
      const sineThere = sine * stayed + cosine * turned;
      const cosineThere = cosine * stayed - sine * turned;
      const slope = 1 + q * cosineThere;
      const miss = psi + guess + q * sineThere - target;
      const rest = -miss / (slope + (miss * q * sineThere) / (2 * slope));
      if (Math.abs(rest) > NEAR_RAD) {
        psi = rollAngle(target, q);
        sine = sin(psi);
        cosine = cos(psi);
      } else {
        psi += guess + rest;
        const restSine = rest * (1 - (rest * rest) / 6);
        const restCosine = 1 - (rest * rest) / 2;
        sine = sineThere * restCosine + cosineThere * restSine;
        cosine = cosineThere * restCosine - sineThere * restSine;
      }
    }
    into[at] = riseMm * withFullness((1 + cosine) / 2, fullness);
  }
  for (let at = steps; at < into.length; at++) into[at] = loftHeight(row, at * stepMm);
}

function shortSine(turn: number): number {
  const square = turn * turn;
  return turn * (1 - (square / 6) * (1 - (square / 20) * (1 - (square / 42) * (1 - square / 72))));
}

function shortCosine(turn: number): number {
  const square = turn * turn;
  return 1 - (square / 2) * (1 - (square / 12) * (1 - (square / 30) * (1 - square / 56)));
}

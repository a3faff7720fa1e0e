import { hypot } from '../../base/index.ts';

/** Where published rules set the eyes, from the length of the body. Middles of eyes, mm. */
export interface DividerRule {
  readonly pinsApartMm: number;
  /** Upper end of the body to the line of the lower eyes, and each of them from the centre line. */
  readonly lowerFromTopMm: number;
  readonly lowerXMm: number;
  /** Lower eye to upper eye, straight. */
  readonly eyesApartMm: number;
  /** Upper end to the upper eyes, which the distance between them decides; null where the compass does not reach. */
  readonly upperFromTopMm: number | null;
  /** Lower end of the body to the golden mean between both golden means of its length. */
  readonly goldenMm: number;
}

/**
 * No unit. The rule counts from the pins that locate the plates, which its source does not place; here 4 mm of 355 inside either
 * end, where the purfling runs. Chosen by us.
 */
const PIN_SHARE = 4 / 355;

/**
 * No unit. From the tailpiece end: the golden mean between 0.382 and 0.618 of the length. T. Zethelius, magazine article, no year;
 * which place of the holes stands there was not read.
 */
const GOLDEN_SHARE = (() => {
  const golden = (Math.sqrt(5) - 1) / 2;
  return 1 - golden + golden * (2 * golden - 1);
})();

/**
 * The rule of A. T. King (2004): a third of the distance of the pins is AB; the lower eyes lie AB (1 + √3/2) below the upper pin
 * and AB/2 from the centre line; the upper eyes on the arc of radius √((AB/2)² + (AB √3/8)²) about them.
 */
export function dividerRule(bodyLengthMm: number, upperEyeXMm: number): DividerRule {
  const pinMm = PIN_SHARE * bodyLengthMm;
  const pinsApartMm = bodyLengthMm - 2 * pinMm;
  const third = pinsApartMm / 3;
  const lowerFromTopMm = pinMm + third * (1 + Math.sqrt(3) / 2);
  const lowerXMm = third / 2;
  const eyesApartMm = hypot(third / 2, (third * Math.sqrt(3)) / 8);
  const square = eyesApartMm ** 2 - (lowerXMm - upperEyeXMm) ** 2;
  return {
    pinsApartMm,
    lowerFromTopMm,
    lowerXMm,
    eyesApartMm,
    goldenMm: GOLDEN_SHARE * bodyLengthMm,
    upperFromTopMm: square > 0 ? lowerFromTopMm - Math.sqrt(square) : null,
  };
}

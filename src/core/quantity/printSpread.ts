/** A number that is known no better than this says nothing by more decimals (chosen by us; in mm it is finer than any gauge). */
const MOST_DECIMALS = 4;

/**
 * The decimals that a number is good for which is known to `plusMinus`, and that its ± is told with: one figure of the ±, or two where it
 * begins with a one, which alone would be rounded by up to a third.
 */
export function spreadDecimals(plusMinus: number): number {
  const [figures, tens] = plusMinus.toExponential(1).split('e');
  const decimals = (figures?.startsWith('1') ? 1 : 0) - Number(tens);
  return Math.min(MOST_DECIMALS, Math.max(0, decimals));
}

/** A number with its ±, both to the decimal that it is good for: 355.5 ± 0.4. */
export function printSpread(value: number, plusMinus: number): string {
  const decimals = spreadDecimals(plusMinus);
  return `${value.toFixed(decimals)} ± ${plusMinus.toFixed(decimals)}`;
}

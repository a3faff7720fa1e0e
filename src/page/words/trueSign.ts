/** A number as it was printed, with the sign that it needs: nothing has none, and a hyphen is no minus. */
export function trueSign(printed: string): string {
  return printed.replace(/^-(?=[0.,]*$)/, '').replace(/^-/, '−');
}

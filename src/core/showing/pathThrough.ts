/** The `d` of an SVG path through points x, y, x, y …, y turned down from `topMm`. */
export function pathThrough(xyMm: Float64Array, closed: boolean, topMm: number): string {
  const points: string[] = [];
  for (let at = 0; at + 1 < xyMm.length; at += 2)
    points.push(`${(xyMm[at] as number).toFixed(2)} ${(topMm - (xyMm[at + 1] as number)).toFixed(2)}`);
  return `M${points.join('L')}${closed ? 'Z' : ''}`;
}

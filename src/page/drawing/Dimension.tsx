/** px: length and half breadth of an arrowhead. */
const HEAD = 9;
const HALF = 1.7;

/** A dimension line with two arrowheads; its number breaks the line on a halo of the ground. */
export function Dimension({
  from,
  to,
  text,
  tone = '',
  share = 0.5,
  isUpright = false,
  isBig = false,
}: {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly text: string;
  readonly tone?: string;
  /** Where on the line the number stands. */
  readonly share?: number;
  /** The number reads upwards along the line. */
  readonly isUpright?: boolean;
  readonly isBig?: boolean;
}) {
  const [x, y] = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
  return (
    <g class={`dimension ${tone}`}>
      <path class="dimension-line" d={`M${from.join(' ')}L${to.join(' ')}`} />
      <path class="arrow" d={arrow(from, to)} />
      <path class="arrow" d={arrow(to, from)} />
      <text
        class={isBig ? 'big' : ''}
        x={x}
        y={y}
        dy="0.34em"
        text-anchor="middle"
        transform={isUpright ? `rotate(-90 ${x} ${y})` : undefined}
      >
        {text}
      </text>
    </g>
  );
}

function arrow(tip: readonly [number, number], away: readonly [number, number]): string {
  const far = Math.hypot(away[0] - tip[0], away[1] - tip[1]) || 1;
  const [ux, uy] = [(away[0] - tip[0]) / far, (away[1] - tip[1]) / far];
  const [bx, by] = [tip[0] + HEAD * ux, tip[1] + HEAD * uy];
  return `M${tip[0]} ${tip[1]}L${bx - HALF * uy} ${by + HALF * ux}L${bx + HALF * uy} ${by - HALF * ux}Z`;
}

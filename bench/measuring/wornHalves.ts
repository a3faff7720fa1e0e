/** A place of one half, as an edge is found. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly section: 'lowerBout';
  readonly alongMm: number;
  readonly seen: true;
  readonly sigmaMm: number;
}

/** A waisted body with a known axis: 356 mm long, upright but for a small turn, worn in three places. */
export interface WornBody {
  readonly edge: { readonly left: readonly Place[]; readonly right: readonly Place[] };
  readonly start: {
    readonly through: { readonly x: number; readonly y: number };
    readonly headingRad: number;
  };
  /** How far a line stands to the right of the true axis at 178 mm under and over the middle. */
  readonly offMm: (line: {
    readonly through: { readonly x: number; readonly y: number };
    readonly headingRad: number;
  }) => readonly [number, number];
}

const LENGTH_MM = 356;
const FINE = 3000;
const NOISE_MM = 0.02;
const DEEPEST_MM = 1.5;

/** One body a seed; `spots` places on both halves together. */
export function wornBody(seed: number, spots: number): WornBody {
  const random = randomOf(seed);
  const fine = Array.from({ length: FINE + 1 }, (_, i) => {
    const angle = Math.PI * (0.002 + (0.996 * i) / FINE);
    const y = (LENGTH_MM * (1 - Math.cos(angle))) / 2;
    const turn = (Math.PI * y) / LENGTH_MM;
    return { x: Math.sin(angle) ** 0.8 * (80 + 12 * Math.cos(turn) + 22 * Math.cos(2 * turn - 0.25)), y };
  });
  const along = [0];
  for (let i = 1; i <= FINE; i++)
    along.push(along[i - 1] + Math.hypot(fine[i].x - fine[i - 1].x, fine[i].y - fine[i - 1].y));
  const whole = along[FINE];
  const losses = Array.from({ length: 3 }, () => ({
    isRight: random() < 0.5,
    at: whole * random(),
    reach: 8 + 22 * random(),
    depth: DEEPEST_MM * (0.4 + 0.6 * random()),
  }));
  const headingRad = Math.PI / 2 + 0.2 * (random() - 0.5);
  const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
  const half = (isRight: boolean): Place[] => {
    let i = 0;
    return Array.from({ length: spots / 2 }, (_, n) => {
      const target = (whole * (n + 0.5)) / (spots / 2);
      while (along[i + 1] < target) i++;
      const [from, to] = [fine[i], fine[i + 1]];
      const size = Math.hypot(to.x - from.x, to.y - from.y);
      const lost = losses
        .filter((loss) => loss.isRight === isRight && Math.abs(loss.at - target) < loss.reach)
        .reduce((sum, loss) => sum + loss.depth * (1 - ((target - loss.at) / loss.reach) ** 2), 0);
      const off = NOISE_MM * normalOf(random) - lost;
      const x = (isRight ? 1 : -1) * (from.x + (off * (to.y - from.y)) / size);
      const y = from.y - (off * (to.x - from.x)) / size - LENGTH_MM / 2;
      const at = { x: s * x + c * y, y: s * y - c * x };
      return { ...at, section: 'lowerBout', alongMm: target, seen: true, sigmaMm: NOISE_MM };
    });
  };
  return {
    edge: { left: half(false), right: half(true) },
    start: {
      through: { x: (-c * LENGTH_MM) / 2 + 0.8, y: (-s * LENGTH_MM) / 2 },
      headingRad: headingRad + 0.005,
    },
    offMm: ({ through, headingRad: heading }) => {
      const off = (height: number) =>
        -((height * c - through.x) * Math.sin(heading) - (height * s - through.y) * Math.cos(heading));
      return [off(-LENGTH_MM / 2), off(LENGTH_MM / 2)];
    },
  };
}

/** Numbers in (0, 1), the same for a seed at every run. */
function randomOf(seed: number): () => number {
  let state = seed * 7919;
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return (state + 1) / 2_147_483_649;
  };
}

function normalOf(random: () => number): number {
  return Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
}

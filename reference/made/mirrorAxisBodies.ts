// Bodies with a known mirror axis, made from sums of waves: nothing of the code under test shapes them.

export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly section: 'lowerBout' | 'cBout' | 'upperBout';
  readonly alongMm: number;
  readonly seen: boolean;
  readonly sigmaMm: number;
}

export interface MadeBody {
  readonly edge: { readonly left: readonly Spot[]; readonly right: readonly Spot[] };
  /** The true axis: a point half way up the body and its heading. */
  readonly axis: { readonly x: number; readonly y: number; readonly headingRad: number };
  readonly start: { readonly through: { x: number; y: number }; readonly headingRad: number };
}

export interface Making {
  readonly seed: number;
  /** Worn spots on either half, and the deepest that one may be, mm. */
  readonly worn: number;
  readonly deepestMm: number;
  readonly noiseMm: number;
  /** Root mean square of the slow difference of the halves, mm. */
  readonly slowMm: number;
  /** Whether the slow difference has a share in it that moving or turning the axis would explain as well. */
  readonly slowMayLean: boolean;
  readonly spots: number;
}

const LENGTH_MM = 356;
const FINE = 1600;

/** Waisted half outline: a sum of waves with ends rounded like a root, x against the share t of the height. */
function halfPlace(t: number, shape: readonly number[]): { x: number; y: number } {
  const angle = Math.PI * t;
  // y runs as a cosine, so that the ends are round.
  const y = (LENGTH_MM * (1 - Math.cos(angle))) / 2;
  const u = y / LENGTH_MM;
  const waist =
    86 +
    shape[0] +
    (13 + shape[1]) * Math.cos(Math.PI * u) +
    (24 + shape[2]) * Math.cos(2 * Math.PI * u - 0.25);
  return { x: Math.sin(angle) ** 0.8 * waist * 0.93, y };
}

export function randomOf(seed: number): () => number {
  let a = (seed * 2654435761) >>> 0;
  return () => {
    // xorshift, run a few times so that neighbouring seeds part.
    for (let i = 0; i < 3; i++) {
      a ^= a << 13;
      a >>>= 0;
      a ^= a >>> 17;
      a ^= a << 5;
      a >>>= 0;
    }
    return (a + 0.5) / 4294967296;
  };
}

export function normalOf(random: () => number): number {
  return Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
}

export function makeBody(making: Making): MadeBody {
  const random = randomOf(making.seed + 1);
  for (let i = 0; i < 5; i++) random();
  const shape = [3, 3, 3].map((size) => size * (2 * random() - 1));
  const fine = Array.from({ length: FINE + 1 }, (_, i) => halfPlace(0.002 + (0.996 * i) / FINE, shape));
  const along = [0];
  for (let i = 1; i <= FINE; i++)
    along.push(along[i - 1] + Math.hypot(fine[i].x - fine[i - 1].x, fine[i].y - fine[i - 1].y));
  const whole = along[FINE];
  const waves = [1, 2, 3].map(() => ({ size: normalOf(random), phase: 2 * Math.PI * random() }));
  const slowScale = making.slowMm / Math.sqrt(waves.reduce((sum, { size }) => sum + (size * size) / 2, 0));
  const slowWaves = (s: number) =>
    waves.reduce(
      (sum, { size, phase }, k) =>
        sum + slowScale * size * Math.sin((2 * Math.PI * (k + 1) * s) / whole / 1.5 + phase),
      0,
    );
  const lean = making.slowMayLean ? () => 0 : leanShare(fine, along, slowWaves);
  const slowAt = (s: number) => slowWaves(s) - lean(s);
  const losses = Array.from({ length: making.worn }, () => ({
    right: random() < 0.5,
    at: whole * (0.04 + 0.92 * random()),
    reach: 8 + 22 * random(),
    depth: making.deepestMm * (0.4 + 0.6 * random()),
  }));
  const headingRad = Math.PI / 2 + 0.3 * (random() - 0.5);
  const middle = { x: 200 + 60 * random(), y: 250 + 60 * random() };
  const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
  const count = making.spots / 2;
  const half = (right: boolean): Spot[] => {
    let i = 0;
    return Array.from({ length: count }, (_, n) => {
      const target = (whole * (n + 0.5)) / count;
      while (along[i + 1] < target) i++;
      const share = (target - along[i]) / (along[i + 1] - along[i]);
      const [dx, dy] = [fine[i + 1].x - fine[i].x, fine[i + 1].y - fine[i].y];
      const size = Math.hypot(dx, dy);
      const lost = losses
        .filter((loss) => loss.right === right && Math.abs(loss.at - target) < loss.reach)
        .reduce((sum, loss) => sum + loss.depth * (1 - ((target - loss.at) / loss.reach) ** 2), 0);
      const off = making.noiseMm * normalOf(random) - lost + ((right ? 1 : -1) * slowAt(target)) / 2;
      const x = (right ? 1 : -1) * (fine[i].x + share * dx + (off * dy) / size);
      const y = fine[i].y + share * dy - (off * dx) / size - LENGTH_MM / 2;
      return {
        x: middle.x + s * x + c * y,
        y: middle.y - c * x + s * y,
        section: target < 0.4 * whole ? 'lowerBout' : target < 0.6 * whole ? 'cBout' : 'upperBout',
        alongMm: target,
        seen: true,
        sigmaMm: making.noiseMm,
      };
    });
  };
  const leaning = headingRad + 0.012 * (random() - 0.5);
  const off = 2 * (random() - 0.5);
  return {
    edge: { left: half(false), right: half(true) },
    axis: { ...middle, headingRad },
    start: {
      through: { x: middle.x - (c * LENGTH_MM) / 2 + off, y: middle.y - (s * LENGTH_MM) / 2 },
      headingRad: leaning,
    },
  };
}

/** How far a found axis stands to the right of the true one, at a height over the middle of the body, mm. */
export function axisOffMm(
  body: MadeBody,
  found: { readonly through: { readonly x: number; readonly y: number }; readonly headingRad: number },
  heightMm: number,
): number {
  const { x, y, headingRad } = body.axis;
  const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
  // Where the true axis passes that height, against the found line.
  const dx = x + heightMm * c - found.through.x;
  const dy = y + heightMm * s - found.through.y;
  return -(dx * Math.sin(found.headingRad) - dy * Math.cos(found.headingRad));
}

/** Mirror axis by plain least squares over the same spots: every spot counts alike. */
export function plainAxis(body: MadeBody): { through: { x: number; y: number }; headingRad: number } {
  const { left, right } = body.edge;
  let through = { ...body.start.through };
  let headingRad = body.start.headingRad;
  for (let round = 0; round < 30; round++) {
    const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
    const upright = (spots: readonly Spot[]) =>
      spots.map((p) => [
        s * (p.x - through.x) - c * (p.y - through.y),
        c * (p.x - through.x) + s * (p.y - through.y),
      ]);
    const [ls, rs] = [upright(left), upright(right)];
    let [naa, nab, nbb, ga, gb] = [0, 0, 0, 0, 0];
    ls.forEach(([lx, ly], i) => {
      const [x, y] = [-lx, ly];
      let [best, gap, nx, ny] = [Infinity, 0, 0, 0];
      for (let j = Math.max(0, i - 20); j < Math.min(rs.length - 1, i + 20); j++) {
        const [dx, dy] = [rs[j + 1][0] - rs[j][0], rs[j + 1][1] - rs[j][1]];
        const size = Math.hypot(dx, dy);
        const share = Math.min(1, Math.max(0, ((x - rs[j][0]) * dx + (y - rs[j][1]) * dy) / (size * size)));
        const away = Math.hypot(x - rs[j][0] - share * dx, y - rs[j][1] - share * dy);
        if (away >= best) continue;
        best = away;
        [nx, ny] = [dy / size, -dx / size];
        gap = (x - rs[j][0]) * nx + (y - rs[j][1]) * ny;
      }
      const [a, b] = [2 * nx, 2 * (nx * y - ny * x)];
      naa += a * a;
      nab += a * b;
      nbb += b * b;
      ga += a * gap;
      gb += b * gap;
    });
    const determinant = naa * nbb - nab * nab;
    const across = -(nbb * ga - nab * gb) / determinant;
    const turn = -(naa * gb - nab * ga) / determinant;
    through = { x: through.x + s * across, y: through.y - c * across };
    headingRad -= turn;
  }
  return { through, headingRad };
}

/** The share of a slow difference that a moved and turned axis would explain, by plain least squares. */
function leanShare(
  fine: readonly { readonly x: number; readonly y: number }[],
  along: readonly number[],
  slow: (s: number) => number,
): (s: number) => number {
  const rows = fine.slice(1).map((at, i) => {
    const step = along[i + 1] - along[i];
    const [nx, ny] = [(at.y - fine[i].y) / step, (fine[i].x - at.x) / step];
    return { step, a: 2 * nx, b: 2 * (nx * (at.y - LENGTH_MM / 2) - ny * at.x), slow: slow(along[i + 1]) };
  });
  const sum = (of: (row: (typeof rows)[number]) => number) =>
    rows.reduce((all, row) => all + row.step * of(row), 0);
  const [aa, ab, bb] = [sum((r) => r.a * r.a), sum((r) => r.a * r.b), sum((r) => r.b * r.b)];
  const [ga, gb] = [sum((r) => r.a * r.slow), sum((r) => r.b * r.slow)];
  const move = (bb * ga - ab * gb) / (aa * bb - ab * ab);
  const turn = (aa * gb - ab * ga) / (aa * bb - ab * ab);
  let i = 0;
  return (s) => {
    while (i > 0 && along[i] > s) i--;
    while (i < rows.length - 1 && along[i + 1] < s) i++;
    return move * rows[i].a + turn * rows[i].b;
  };
}

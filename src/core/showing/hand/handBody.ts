import { distanceBetween } from '../../base/index.ts';
import { type Chain, sampleChain } from '../../curve/index.ts';
import { type Instrument, type Plate, plateField } from '../../instrument/index.ts';

/** What a place of the body is made of, for who colours it. */
export const HAND_STUFF = { nothing: 0, wood: 1, hole: 2, purfling: 3 } as const;

/** A net of triangles in space: body frame, millimetres, z up from the gluing face of the top, right-handed. */
export interface HandNet {
  readonly kind: 'outside' | 'under' | 'wall';
  readonly plate: Plate | 'ribs';
  readonly xyzMm: Float32Array;
  readonly triangles: Uint32Array;
}

/** What is on the outside of a plate, place by place from its lower end up; the middle column is the centre line. */
export interface HandMarks {
  readonly columns: number;
  readonly rows: number;
  readonly stepMm: number;
  /** One of {@link HAND_STUFF} a place. */
  readonly stuff: Uint8Array;
}

/** The closed body without neck and fittings. */
export interface HandBody {
  readonly lengthMm: number;
  readonly widthMm: number;
  /** Of the ribs at the middle: the body turns about the middle of itself. */
  readonly ribMm: number;
  readonly nets: readonly HandNet[];
  readonly marks: Readonly<Record<Plate, HandMarks>>;
}

/** Steps over the length of the body: between places of a net, and of its marks. */
const NET_STEPS = 130;
const MARK_STEPS = 720;
/** mm that a wall's chords leave its line on an instrument of usual length. */
const WALL_MM = 0.05;

/** The body of an instrument as it would lie in the hand: both plates with their finished edges, and the ribs between them. */
export function handBody(instrument: Instrument): HandBody {
  const { plan, plates } = instrument;
  const length = plan.outline.bodyLengthMm;
  const ribTop = instrument.design.values.ribHeightNeck?.value ?? 0;
  const ribTail = instrument.design.values.ribHeightTail?.value ?? 0;
  const ribAt = (y: number): number => ribTail + ((ribTop - ribTail) * y) / length;
  const outline = sampleChain(plan.outline.chain, WALL_MM);
  const ribs = sampleChain(plan.ribs.outer.chain, WALL_MM);
  const nets = (['top', 'back'] as const).flatMap((plate): HandNet[] => {
    const field = plateField(plates[plate], 'finished', length / NET_STEPS);
    const edgeMm = plates[plate].numbers.edgeHeightMm;
    const face = (y: number, height: number): number => (plate === 'top' ? height : -ribAt(y) - height);
    const outside = gridNet(field, (z, y) => face(y, Number.isNaN(z) ? edgeMm : z), plate === 'top');
    const under = gridNet(field, (_, y) => face(y, 0), plate === 'back');
    return [
      { kind: 'outside', plate, ...outside },
      { kind: 'under', plate, ...under },
      {
        kind: 'wall',
        plate,
        ...wallNet(
          outline,
          (y) => face(y, plate === 'top' ? 0 : edgeMm),
          (y) => face(y, plate === 'top' ? edgeMm : 0),
        ),
      },
    ];
  });
  const walls: HandNet = {
    kind: 'wall',
    plate: 'ribs',
    ...wallNet(
      ribs,
      (y) => -ribAt(y),
      () => 0,
    ),
  };
  const lines = [plan.purfling.outer.chain, plan.purfling.inner.chain];
  const marks = (holes: readonly Chain<'body'>[]): HandMarks =>
    marksOf(plan.outline.chain, lines, holes, length);
  return {
    lengthMm: length,
    widthMm: plan.outline.lowerBout.widthMm,
    ribMm: ribAt(length / 2),
    nets: [...nets, walls],
    marks: { top: marks([instrument.soundHoles.treble, instrument.soundHoles.bass]), back: marks([]) },
  };
}

type Net = Pick<HandNet, 'xyzMm' | 'triangles'>;

/** Every cell of a grid that touches the plate, as two triangles that face up where `facesUp`. */
function gridNet(
  field: ReturnType<typeof plateField>,
  zAt: (heightMm: number, yMm: number) => number,
  facesUp: boolean,
): Net {
  const { columns, rows, stepMm, fromXMm, fromYMm, zMm } = field;
  const xyzMm = new Float32Array(3 * columns * rows);
  for (let at = 0; at < columns * rows; at++) {
    const y = fromYMm + Math.floor(at / columns) * stepMm;
    xyzMm[3 * at] = fromXMm + (at % columns) * stepMm;
    xyzMm[3 * at + 1] = y;
    xyzMm[3 * at + 2] = zAt(zMm[at] as number, y);
  }
  const triangles: number[] = [];
  for (let row = 0; row + 1 < rows; row++)
    for (let column = 0; column + 1 < columns; column++) {
      const [a, b] = [row * columns + column, row * columns + column + 1];
      const [c, d] = [a + columns, b + columns];
      if ([a, b, c, d].every((place) => Number.isNaN(zMm[place]))) continue;
      if (facesUp) triangles.push(a, b, d, a, d, c);
      else triangles.push(a, d, b, a, c, d);
    }
  return { xyzMm, triangles: Uint32Array.from(triangles) };
}

/** A band that stands on a line that runs anticlockwise, its outside facing out. */
function wallNet(
  line: readonly { readonly x: number; readonly y: number }[],
  lowAt: (yMm: number) => number,
  highAt: (yMm: number) => number,
): Net {
  const count = line.length;
  const xyzMm = new Float32Array(6 * count);
  const triangles = new Uint32Array(6 * count);
  for (const [at, { x, y }] of line.entries()) {
    xyzMm.set([x, y, lowAt(y), x, y, highAt(y)], 6 * at);
    const next = (at + 1) % count;
    triangles.set([2 * at, 2 * next, 2 * next + 1, 2 * at, 2 * next + 1, 2 * at + 1], 6 * at);
  }
  return { xyzMm, triangles };
}

function marksOf(
  outline: Chain<'body'>,
  lines: readonly Chain<'body'>[],
  holes: readonly Chain<'body'>[],
  length: number,
): HandMarks {
  const stepMm = length / MARK_STEPS;
  const edge = sampleChain(outline, WALL_MM);
  const half = Math.ceil(Math.max(...edge.map(({ x }) => x)) / stepMm);
  const columns = 2 * half + 1;
  const rows = MARK_STEPS + 1;
  const stuff = new Uint8Array(columns * rows);
  filled(
    edge,
    (row, column) => {
      stuff[row * columns + column] = HAND_STUFF.wood;
    },
    { stepMm, half, rows },
  );
  for (const line of lines)
    for (const { x, y } of sampleDensely(line, stepMm)) {
      const at = Math.round(y / stepMm) * columns + half + Math.round(x / stepMm);
      if (stuff[at] === HAND_STUFF.wood) stuff[at] = HAND_STUFF.purfling;
    }
  for (const hole of holes)
    filled(
      sampleChain(hole, WALL_MM),
      (row, column) => {
        stuff[row * columns + column] = HAND_STUFF.hole;
      },
      { stepMm, half, rows },
    );
  return { columns, rows, stepMm, stuff };
}

/** Every place of a grid inside a closed line, row by row between its crossings. */
function filled(
  line: readonly { readonly x: number; readonly y: number }[],
  put: (row: number, column: number) => void,
  { stepMm, half, rows }: { readonly stepMm: number; readonly half: number; readonly rows: number },
): void {
  for (let row = 0; row < rows; row++) {
    const y = row * stepMm;
    const crossings: number[] = [];
    for (let at = 0; at < line.length; at++) {
      const [a, b] = [line[at], line[(at + 1) % line.length]];
      if (a === undefined || b === undefined || a.y > y === b.y > y) continue;
      crossings.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
    }
    crossings.sort((a, b) => a - b);
    for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
      const to = Math.floor((crossings[pair + 1] as number) / stepMm);
      for (let column = Math.ceil((crossings[pair] as number) / stepMm); column <= to; column++)
        if (Math.abs(column) <= half) put(row, half + column);
    }
  }
}

function* sampleDensely(line: Chain<'body'>, stepMm: number): Generator<{ x: number; y: number }> {
  const points = sampleChain(line, WALL_MM);
  for (const [index, a] of points.entries()) {
    const b = points[(index + 1) % points.length];
    if (b === undefined || (!line.closed && index + 1 === points.length)) continue;
    const steps = Math.max(1, Math.ceil((2 * distanceBetween(a, b)) / stepMm));
    for (let step = 0; step < steps; step++)
      yield { x: a.x + ((b.x - a.x) * step) / steps, y: a.y + ((b.y - a.y) * step) / steps };
  }
}

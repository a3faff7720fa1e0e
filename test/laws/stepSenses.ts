/**
 * Whether the faces of a solid in a STEP file all look out of it, read from the text alone: a kernel mends a face that is turned
 * the wrong way without a word, the program that mills it may not.
 */

type Place = readonly [number, number, number];
type Entities = ReadonlyMap<string, string>;

interface Run {
  readonly edge: string;
  readonly forward: boolean;
  readonly places: readonly Place[];
}

/**
 * Edges that are not run along once each way, faces whose sense is not that of their edges (which turn anticlockwise as seen
 * from outside), and a shell that is inside out. Empty for a sound solid.
 */
export function stepSenseFaults(step: string): readonly string[] {
  const entities: Entities = new Map(
    [...step.matchAll(/^(#\d+)=(.*);$/gm)].map(([, name, text]) => [name as string, text as string]),
  );
  const shell = [...entities.values()].find((text) => text.startsWith('CLOSED_SHELL')) ?? '';
  const faces = refs(shell).map((name) => ({ name, ...faceOf(entities, name) }));
  const ways = new Map<string, string>();
  for (const { edge, forward } of faces.flatMap(({ runs }) => runs))
    ways.set(edge, `${ways.get(edge) ?? ''}${forward ? '+' : '-'}`);
  const edges = [...ways].flatMap(([edge, found]) =>
    found === '+-' || found === '-+' ? [] : [`edge ${edge} is run along ${found}`],
  );
  const turned = faces.flatMap(({ name, runs, surface, sense }) => {
    const looks = lookingAlong(
      entities,
      surface,
      runs.flatMap(({ places }) => places),
    );
    const along = dot(areaWithin(runs), looks) * (sense ? 1 : -1);
    return along > 0 ? [] : [`face ${name} looks against its edges`];
  });
  // The lowest face is level and looks down.
  const heights = faces.map(({ runs }) =>
    runs.flatMap(({ places }) => places.map(([, , z]) => z)).reduce((a, b) => Math.max(a, b), -Infinity),
  );
  const lowest = faces[heights.indexOf(Math.min(...heights))];
  const isInsideOut = !lowest || areaWithin(lowest.runs)[2] >= 0;
  return [...edges, ...turned, ...(isInsideOut ? ['the shell is inside out'] : [])];
}

function refs(text: string): readonly string[] {
  return text.match(/#\d+/g) ?? [];
}

function textOf(entities: Entities, name: string | undefined): string {
  const text = name === undefined ? undefined : entities.get(name);
  if (text === undefined) throw new Error(`no entity ${name}`);
  return text;
}

function placeOf(entities: Entities, name: string | undefined): Place {
  const numbers = /\(([-\d.,E]+)\)\)$/.exec(textOf(entities, name))?.[1]?.split(',').map(Number) ?? [];
  return [numbers[0] ?? 0, numbers[1] ?? 0, numbers[2] ?? 0];
}

function faceOf(entities: Entities, name: string) {
  const text = textOf(entities, name);
  const names = refs(text);
  const runs = names.slice(0, -1).flatMap((bound) => {
    const loop = textOf(entities, refs(textOf(entities, bound))[0]);
    return refs(loop).map((one): Run => {
      const oriented = textOf(entities, one);
      const [edge] = refs(oriented) as [string];
      const forward = oriented.endsWith('.T.)');
      const places = edgePlaces(entities, edge);
      return { edge, forward, places: forward ? places : places.toReversed() };
    });
  });
  return { runs, surface: names.at(-1) as string, sense: text.endsWith('.T.)') };
}

/** Places along an edge from its first vertex to its second: of a spline those of its net. */
function edgePlaces(entities: Entities, edge: string): readonly Place[] {
  const text = textOf(entities, edge);
  const [from, to, curve] = refs(text);
  const [start, end] = [from, to].map((one) => placeOf(entities, refs(textOf(entities, one))[0])) as [
    Place,
    Place,
  ];
  const shape = textOf(entities, curve);
  const isAlong = text.endsWith('.T.)');
  if (shape.startsWith('LINE')) return [start, end];
  if (shape.startsWith('B_SPLINE')) {
    const net = refs(shape).map((one) => placeOf(entities, one));
    return isAlong ? net : net.toReversed();
  }
  const { at, axis, across } = axesOf(entities, refs(shape)[0]);
  const beside = cross(axis, across);
  const angle = (place: Place): number =>
    Math.atan2(dot(less(place, at), beside), dot(less(place, at), across));
  const turn = angle(end) - angle(start);
  const sweep = isAlong ? (turn > 0 ? turn : turn + 2 * Math.PI) : turn < 0 ? turn : turn - 2 * Math.PI;
  const radius = Math.hypot(...less(start, at));
  return Array.from({ length: ARC_PLACES + 1 }, (_, step) => {
    const rad = angle(start) + (sweep * step) / ARC_PLACES;
    return [0, 1, 2].map(
      (k) =>
        (at[k] as number) +
        radius * (Math.cos(rad) * (across[k] as number) + Math.sin(rad) * (beside[k] as number)),
    ) as unknown as Place;
  });
}

const ARC_PLACES = 24;

function axesOf(entities: Entities, name: string | undefined) {
  const [at, axis, across] = refs(textOf(entities, name)).map((one) => placeOf(entities, one));
  return { at, axis, across } as { at: Place; axis: Place; across: Place };
}

/** Twice the area inside the edges as a vector: it points where they turn anticlockwise. */
function areaWithin(runs: readonly Run[]): Place {
  let sum: Place = [0, 0, 0];
  for (const { places } of runs)
    for (let at = 1; at < places.length; at++)
      sum = plus(sum, cross(places[at - 1] as Place, places[at] as Place));
  return sum;
}

/** Where a surface looks, taken over places on the edges of a face. */
function lookingAlong(entities: Entities, surface: string, places: readonly Place[]): Place {
  const text = textOf(entities, surface);
  if (text.startsWith('B_SPLINE')) return netArea(entities, text);
  const { at, axis } = axesOf(entities, refs(text)[0]);
  if (text.startsWith('PLANE')) return axis;
  const major = text.startsWith('TOROIDAL') ? Number(/,([-\d.]+),[-\d.]+\)$/.exec(text)?.[1]) : 0;
  return places.reduce<Place>(
    (sum, place) => {
      const from = less(place, at);
      const along = dot(from, axis);
      const radial = less(from, times(axis, along));
      const ring = times(radial, major / (Math.hypot(...radial) || 1));
      const out = text.startsWith('TOROIDAL') ? less(from, ring) : radial;
      return plus(sum, times(out, 1 / (Math.hypot(...out) || 1)));
    },
    [0, 0, 0],
  );
}

/** Twice the area of a spline's net as a vector, from the round of its border: first u, then v. */
function netArea(entities: Entities, text: string): Place {
  const columns = [...text.slice(0, text.indexOf(')),')).matchAll(/\(([#\d,]+)/g)].map(([, names]) =>
    (names as string).split(',').map((one) => placeOf(entities, one)),
  );
  const [first, last] = [columns[0] as Place[], columns.at(-1) as Place[]];
  const round = [
    ...columns.map((column) => column[0] as Place),
    ...last,
    ...columns.map((column) => column.at(-1) as Place).toReversed(),
    ...first.toReversed(),
  ];
  return areaWithin([{ edge: '', forward: true, places: [...round, round[0] as Place] }]);
}

const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const less = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Place, b: Place): Place => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const times = (a: Place, by: number): Place => [a[0] * by, a[1] * by, a[2] * by];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

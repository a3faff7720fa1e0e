/**
 * Title: Open CASCADE Technology 7.6, through Gmsh 4.8 (C. Geuzaine, J.-F. Remacle and others); year: 2021.
 * Claim: the STEP of a form, block, sound hole or groove is read as one solid of as many plane and cylindrical faces as it has sides and caps, in
 * millimetres, its volume the exact area times its height to a part in a hundred million. The STEP of an arched plate is read as
 * one solid of its walls, its two level faces and one smooth surface; volume, box and heights are those of the plate. The STEP of
 * a finished outside is read as one solid too, and places of every face lie on the plate; so is that of a plate finished outside
 * and hollowed, with places of the inside as far from the gluing face as the plate's. Its volume, summed by the kernel itself to a
 * thousandth, is that of the plate to 0.1 %.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { point, seededRandom } from '../src/core/base/index.ts';
import {
  arcOf,
  areaOf,
  boundsOf,
  type Chain,
  chainThrough,
  circleChain,
  containsPoint,
  mirrorChain,
  nearestOn,
  offsetChain,
  segments,
} from '../src/core/curve/index.ts';
import { draftDesign } from '../src/core/design/index.ts';
import { writeEdgedStep, writePlateStep, writeStep } from '../src/core/files/index.ts';
import {
  deriveInstrument,
  type HollowPlate,
  type Instrument,
  insideHeight,
  levelLines,
  type PlateArch,
  plateHeight,
  weighed,
} from '../src/core/instrument/index.ts';
import { chosen } from '../src/core/quantity/index.ts';
import {
  archedShape,
  type Board,
  edgedShape,
  hollowedShape,
  INSIDE_MM,
  SURFACE_MM,
  underRound,
} from '../src/core/solid/index.ts';
import { integrateInside } from '../src/core/surface/index.ts';
import { stepSenseFaults } from '../test/laws/stepSenses.ts';

const READ = `
import gmsh, json, sys
gmsh.initialize(); gmsh.option.setNumber('General.Terminal', 0)
parts = gmsh.model.occ.importShapes(sys.argv[1]); gmsh.model.occ.synchronize()
solids = [part for part in parts if part[0] == 3]
kinds = [gmsh.model.getType(2, tag) for _, tag in gmsh.model.getEntities(2)]
print(json.dumps({'solids': len(solids), 'volume': sum(gmsh.model.occ.getMass(*s) for s in solids),
  'planes': kinds.count('Plane'), 'cylinders': kinds.count('Cylinder'), 'faces': len(kinds),
  'splines': kinds.count('BSpline surface'),
  'box': gmsh.model.occ.getBoundingBox(*solids[0]) if solids else []}))
`;
interface Read {
  readonly solids: number;
  readonly volume: number;
  readonly planes: number;
  readonly cylinders: number;
  readonly splines: number;
  readonly faces: number;
  readonly box: readonly number[];
}

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'garland-step-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

function python<T>(program: string, step: string, input = ''): T {
  expect(stepSenseFaults(step)).toEqual([]);
  const path = join(folder, 'part.step');
  writeFileSync(path, step);
  return JSON.parse(
    execFileSync('/usr/bin/python3', ['-c', program, path], { encoding: 'utf8', input }),
  ) as T;
}

function isAsDrawn(board: Board): void {
  const found = python<Read>(READ, writeStep("a board, named 'so'", board));
  const lines = [board.outer, ...board.holes];
  const sides = lines.flatMap((line) => segments(line));
  const arcs = sides.filter((side) => arcOf(side) !== null).length;
  const areaMm2 =
    Math.abs(areaOf(board.outer)) - board.holes.reduce((sum, hole) => sum + Math.abs(areaOf(hole)), 0);
  expect(found.solids).toBe(1);
  expect(found.cylinders).toBe(arcs);
  expect(found.planes).toBe(sides.length - arcs + 2);
  expect(Math.abs(found.volume / (areaMm2 * (board.toZMm - board.fromZMm)) - 1)).toBeLessThan(1e-8);
  const { min, max } = boundsOf(board.outer);
  const box = [min.x, min.y, board.fromZMm, max.x, max.y, board.toZMm];
  for (const [index, value] of box.entries())
    expect(Math.abs((found.box[index] ?? 0) - value)).toBeLessThan(0.01);
}

const square: Chain<'body'> = {
  closed: true,
  vertices: [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
  ].map(([x, y]) => ({ ...point<'body'>(x ?? 0, y ?? 0), bulge: 0 })),
};

test('a plate with a round hole, drawn either way round', () => {
  const hole = circleChain(point<'body'>(20, 12), 6);
  isAsDrawn({ outer: square, holes: [hole], fromZMm: 0, toZMm: 12.7 });
  isAsDrawn({
    outer: mirrorChain(square),
    holes: [circleChain(point<'body'>(-20, 12), 6, true)],
    fromZMm: -2,
    toZMm: 3,
  });
});

const LENGTHS = { violin: 355, viola: 406, cello: 755 } as const;
type Family = keyof typeof LENGTHS;
const FAMILIES: readonly Family[] = ['violin', 'viola', 'cello'];

function instrumentOf(family: Family): Instrument {
  const bodyLength = { value: LENGTHS[family], unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family, name: family, values: { bodyLength } });
  const instrument = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
  if (!instrument.ok) throw new Error('refused');
  return instrument.value;
}

test.each(FAMILIES)(
  'form, blocks, sound hole and groove of the purfling of a %s',
  (family) => {
    const { plan, soundHoles } = instrumentOf(family);
    const { form, blocks, purfling } = plan;
    isAsDrawn({ outer: soundHoles.bass, holes: [], fromZMm: -2, toZMm: 17 });
    isAsDrawn({ outer: purfling.outer.chain, holes: [purfling.inner.chain], fromZMm: 2.2, toZMm: 4 });
    const holes = [...form.clampHoles, ...form.pins].map(({ centre, radiusMm }) =>
      circleChain(point<'body'>(centre.x, centre.y), radiusMm, true),
    );
    isAsDrawn({ outer: form.outline, holes, fromZMm: 0, toZMm: form.thicknessMm });
    for (const { outline } of blocks.parts) isAsDrawn({ outer: outline, holes: [], fromZMm: 0, toZMm: 30 });
  },
  60_000,
);

const HEIGHTS = `
import gmsh, json, sys
gmsh.initialize(); gmsh.option.setNumber('General.Terminal', 0)
gmsh.model.occ.importShapes(sys.argv[1]); gmsh.model.occ.synchronize()
arch = [tag for _, tag in gmsh.model.getEntities(2) if gmsh.model.getType(2, tag) == 'BSpline surface'][0]
print(json.dumps([list(gmsh.model.getValue(2, arch, place)) for place in json.load(sys.stdin)]))
`;

/** Random places of a plate that stand on its arch, x and y. */
function placesOnArch(plate: PlateArch, outline: Chain<'body'>, count: number): readonly [number, number][] {
  const random = seededRandom(11);
  const { min, max } = boundsOf(outline);
  const places: [number, number][] = [];
  while (places.length < count) {
    const [x, y] = [min.x + random() * (max.x - min.x), min.y + random() * (max.y - min.y)];
    if (!containsPoint(outline, point<'body'>(x, y))) continue;
    if (plateHeight(plate, x, y, 'arched') > plate.numbers.edgeHeightMm) places.push([x, y]);
  }
  return places;
}

function volumeOf(plate: PlateArch, outline: Chain<'body'>): number {
  let volumeMm3 = 0;
  const add = (x: number, y: number, areaMm2: number): void => {
    volumeMm3 += areaMm2 * plateHeight(plate, x, y, 'arched');
  };
  const [crease] = levelLines(plate, [plate.numbers.edgeHeightMm]);
  const treble = crease?.vertices ?? [];
  const bass = treble.slice(1, -1).toReversed();
  const round = [...treble, ...bass.map(({ x, y }) => point<'body'>(-x, y))];
  integrateInside([outline], plate.bodyLengthMm / 22, add, [chainThrough(round, true)]);
  return volumeMm3;
}

test.each(FAMILIES.flatMap((family) => (['back', 'top'] as const).map((plate) => [family, plate] as const)))(
  'the arched plate of a %s: %s',
  (family, plate) => {
    const { plates, plan } = instrumentOf(family);
    const outline = plan.outline.chain;
    const shape = archedShape(plates[plate], outline);
    if (!shape.ok) throw new Error(shape.faults.map(({ code }) => code).join());
    expect(shape.value.offMm).toBeLessThan(SURFACE_MM);
    const step = writePlateStep(plate, shape.value);
    const found = python<Read>(READ, step);
    const arcs = segments(outline).filter((side) => arcOf(side) !== null).length;
    expect(found).toMatchObject({ solids: 1, splines: 1, cylinders: arcs });
    expect(found.planes).toBe(segments(outline).length - arcs + 2);
    expect(Math.abs(found.volume / volumeOf(plates[plate], outline) - 1)).toBeLessThan(2e-4);
    const { min, max } = boundsOf(outline);
    const crestMm = plates[plate].archHeightMm;
    for (const [index, value] of [min.x, min.y, 0, max.x, max.y, crestMm].entries())
      expect(Math.abs((found.box[index] ?? 0) - value), `side ${index} of its box`).toBeLessThan(0.03);
    const places = placesOnArch(plates[plate], outline, 200);
    const read = python<readonly (readonly number[])[]>(HEIGHTS, step, JSON.stringify(places));
    for (const [index, [x, y]] of places.entries()) {
      const [readX = 0, readY = 0, readZ = 0] = read[index] ?? [];
      expect(Math.hypot(readX - x, readY - y)).toBeLessThan(1e-6);
      const off = Math.abs(readZ - plateHeight(plates[plate], x, y, 'arched'));
      expect(off, `${x}, ${y}`).toBeLessThan(SURFACE_MM);
    }
  },
  60_000,
);

const FACES = `
import gmsh, json, random, sys
gmsh.initialize(); gmsh.option.setNumber('General.Terminal', 0)
parts = gmsh.model.occ.importShapes(sys.argv[1]); gmsh.model.occ.synchronize()
random.seed(3); faces = []
for _, tag in gmsh.model.getEntities(2):
    kind = gmsh.model.getType(2, tag); low, high = gmsh.model.getParametrizationBounds(2, tag); places = []
    for _ in range(60):
        at = [random.uniform(a, b) for a, b in zip(low, high)]
        if gmsh.model.isInside(2, tag, at): places.append(list(gmsh.model.getValue(2, tag, at)))
    faces.append({'kind': kind, 'places': places})
print(json.dumps({'solids': len([part for part in parts if part[0] == 3]), 'volume': sum(gmsh.model.occ.getMass(*part) for part in parts), 'faces': faces}))
`;
interface ReadFaces {
  readonly solids: number;
  readonly volume: number;
  readonly faces: readonly {
    readonly kind: string;
    readonly places: readonly (readonly [number, number, number])[];
  }[];
}

/** How far a place stands off the finished outside, the walls below it and the gluing face. */
function offFinished(plate: PlateArch, outline: Chain<'body'>, [x, y, z]: readonly number[]): number {
  const at = point<'body'>(x ?? 0, y ?? 0);
  const { crestInsetMm: radius, edgeHeightMm } = plate.numbers;
  const { distanceMm } = nearestOn(outline, at);
  const aboveWall = (z ?? 0) - (edgeHeightMm - radius);
  if (Math.abs(z ?? 0) < 1e-6) return 0;
  if (aboveWall <= 0) return distanceMm;
  if (distanceMm < radius) return Math.abs(Math.hypot(radius - distanceMm, aboveWall) - radius);
  return Math.abs((z ?? 0) - plateHeight(plate, at.x, at.y, 'finished'));
}

test.each(FAMILIES.flatMap((family) => (['back', 'top'] as const).map((plate) => [family, plate] as const)))(
  'the finished outside of a %s: %s',
  (family, plate) => {
    const { plates, plan } = instrumentOf(family);
    const outline = plan.outline.chain;
    const arch = plates[plate];
    const shape = edgedShape(arch, outline);
    if (!shape.ok) throw new Error(shape.faults.map(({ code }) => code).join());
    const found = python<ReadFaces>(FACES, writeEdgedStep(plate, shape.value));
    expect(found.solids).toBe(1);
    const sides = segments(outline).length;
    const arcs = segments(outline).filter((side) => arcOf(side) !== null).length;
    const count = (kind: string): number => found.faces.filter((face) => face.kind === kind).length;
    expect([count('Torus'), count('Cylinder'), count('Plane'), count('BSpline surface')]).toEqual([
      arcs,
      sides,
      sides - arcs + 1,
      9,
    ]);
    let volumeMm3 = 0;
    const add = (x: number, y: number, areaMm2: number): void => {
      volumeMm3 += areaMm2 * plateHeight(arch, x, y, 'finished');
    };
    const crest = offsetChain(outline, -arch.numbers.crestInsetMm, { join: 'mitre' });
    integrateInside([outline], arch.bodyLengthMm / 66, add, crest);
    expect(Math.abs(found.volume / volumeMm3 - 1)).toBeLessThan(5e-4);
    for (const { kind, places } of found.faces) {
      expect(places.length, kind).toBeGreaterThan(10);
      for (const place of places)
        expect(offFinished(arch, outline, place), `${kind} at ${place}`).toBeLessThan(SURFACE_MM);
    }
  },
  60_000,
);

/**
 * Gmsh asks the kernel for a volume from few places a face; this asks the kernel's own library to go on until it has it to a
 * thousandth. Its classes are laid out in rooms that are larger than they need.
 */
const CLOSE_VOLUME = `
import ctypes, json, os, sys
libraries = {name: ctypes.CDLL('libTK%s.so.7' % name) for name in ('G3d', 'TopAlgo', 'XSBase', 'STEP')}
place, number, room = ctypes.c_void_p, ctypes.c_double, ctypes.create_string_buffer
def call(library, name, result, kinds, *values):
    function = getattr(libraries[library], name)
    function.restype, function.argtypes = result, kinds
    return function(*values)
reader, shape, progress, sums = room(8192), room(1024), room(1024), room(1024)
call('STEP', '_ZN18STEPControl_ReaderC1Ev', None, [place], reader)
call('XSBase', '_ZN16XSControl_Reader8ReadFileEPKc', ctypes.c_int, [place, ctypes.c_char_p], reader, sys.argv[1].encode())
call('XSBase', '_ZN16XSControl_Reader13TransferRootsERK21Message_ProgressRange', ctypes.c_int, [place, place], reader, progress)
call('XSBase', '_ZNK16XSControl_Reader8OneShapeEv', place, [place, place], shape, reader)
call('G3d', '_ZN12GProp_GPropsC1Ev', None, [place], sums)
call('TopAlgo', '_ZN9BRepGProp16VolumePropertiesERK12TopoDS_ShapeR12GProp_GPropsdbb', number,
  [place, place, number, ctypes.c_bool, ctypes.c_bool], shape, sums, 1e-3, False, False)
print(json.dumps(call('G3d', '_ZNK12GProp_GProps4MassEv', number, [place], sums)), flush=True)
os._exit(0)
`;

test.each([
  ['violin', 'top'],
  ['cello', 'back'],
] as const)(
  'summed closely, the volume of the hollowed plate of a %s: %s',
  (family, plate) => {
    const instrument = weighed(instrumentOf(family));
    if (!instrument.ok) throw new Error('refused');
    const { hollows, plan, box } = instrument.value;
    const [edged, hollowed] = [
      edgedShape(hollows[plate].arch, plan.outline.chain),
      hollowedShape(hollows[plate]),
    ];
    if (!edged.ok || !hollowed.ok) throw new Error('no surfaces');
    const volumeMm3 = python<number>(CLOSE_VOLUME, writeEdgedStep(plate, edged.value, hollowed.value));
    expect(Math.abs(volumeMm3 / box[plate].wood.volumeMm3 - 1)).toBeLessThan(1e-3);
  },
  60_000,
);

test('a face that is turned is seen', () => {
  const board: Board = { outer: square, holes: [], fromZMm: 0, toZMm: 3 };
  const step = writeStep('board', board);
  expect(stepSenseFaults(step)).toEqual([]);
  const faces = [...step.matchAll(/ADVANCED_FACE\(.*\.([TF])\.\);/g)];
  expect(faces).toHaveLength(6);
  for (const [text, sense] of faces) {
    const turned = text.replace(/\.[TF]\.\);$/, sense === 'T' ? '.F.);' : '.T.);');
    expect(stepSenseFaults(step.replace(text, turned))).toHaveLength(1);
  }
  const { arch } = instrumentOf('violin').hollows.back;
  const edged = edgedShape(arch, instrumentOf('violin').plan.outline.chain);
  if (!edged.ok) throw new Error('no surfaces');
  const plate = writeEdgedStep('back', edged.value);
  for (const face of ['TOROIDAL_SURFACE', 'CYLINDRICAL_SURFACE', 'B_SPLINE_SURFACE_WITH_KNOTS', 'PLANE']) {
    const [, surface] = new RegExp(`^(#\\d+)=${face}`, 'm').exec(plate) ?? [];
    const [text = '', sense] = new RegExp(`ADVANCED_FACE\\(.*,${surface},\\.([TF])\\.\\);`).exec(plate) ?? [];
    const turned = text.replace(/\.[TF]\.\);$/, sense === 'T' ? '.F.);' : '.T.);');
    expect(turned).not.toBe(text);
    expect(stepSenseFaults(plate.replace(text, turned)), face).toHaveLength(1);
  }
});

/** How far a place of a hollowed plate's skin stands off its inside; infinite where that is the gluing face. */
function offInside(plate: HollowPlate, [x, y, z]: readonly number[]): number {
  const at = point<'body'>(x ?? 0, y ?? 0);
  return containsPoint(plate.line, at)
    ? Math.abs((z ?? 0) - insideHeight(plate, at.x, at.y))
    : Number.POSITIVE_INFINITY;
}

test.each(FAMILIES.flatMap((family) => (['back', 'top'] as const).map((plate) => [family, plate] as const)))(
  'the hollowed plate of a %s: %s',
  (family, plate) => {
    const instrument = weighed(instrumentOf(family));
    if (!instrument.ok) throw new Error('refused');
    const { hollows, plan, box } = instrument.value;
    const outline = plan.outline.chain;
    const hollow = hollows[plate];
    const [edged, hollowed] = [edgedShape(hollow.arch, outline), hollowedShape(hollow)];
    if (!edged.ok || !hollowed.ok) throw new Error('no surfaces');
    const found = python<ReadFaces>(FACES, writeEdgedStep(plate, edged.value, hollowed.value));
    expect(found.solids).toBe(1);
    const splines = found.faces.filter(({ kind }) => kind === 'BSpline surface');
    expect(splines.length).toBe(9 + segments(hollowed.value.border).length + 1);
    // The kernel sums over few places unless it is asked for more, as it is below.
    expect(Math.abs(found.volume / box[plate].wood.volumeMm3 - 1)).toBeLessThan(0.003);
    let inside = 0;
    for (const { kind, places } of found.faces)
      for (const place of places) {
        const [x, y, z] = place;
        const within = containsPoint(hollow.line, point<'body'>(x, y));
        if (kind === 'Plane' && Math.abs(z) < 1e-6) expect(within, `gluing face at ${place}`).toBe(false);
        else if (within && z < plateHeight(hollow.arch, x, y, 'finished') - 1) {
          inside++;
          expect(offInside(hollow, place), `inside at ${place}`).toBeLessThan(INSIDE_MM);
        } else
          expect(offFinished(hollow.arch, outline, place), `${kind} at ${place}`).toBeLessThan(SURFACE_MM);
      }
    expect(inside).toBeGreaterThan(1000);
  },
  120_000,
);

test.each(['violin'] as const)(
  'the whole back of a %s, rounded below too',
  (family) => {
    const { hollows, plan, design } = instrumentOf(family);
    const outline = plan.outline.chain;
    const [edged, hollowed] = [edgedShape(hollows.back.arch, outline), hollowedShape(hollows.back)];
    const radiusMm = design.values.edgeUnderRounding?.value ?? 0;
    const under = edged.ok ? underRound(edged.value, radiusMm, 'back') : edged;
    if (!edged.ok || !hollowed.ok || !under.ok) throw new Error('no surfaces');
    const square = python<ReadFaces>(FACES, writeEdgedStep('back', edged.value, hollowed.value));
    const round = python<ReadFaces>(FACES, writeEdgedStep('back', edged.value, hollowed.value, under.value));
    expect(round.solids).toBe(1);
    const tori = round.faces.filter(({ kind }) => kind === 'Torus');
    expect(tori.length).toBe(2 * segments(outline).filter((side) => arcOf(side) !== null).length);
    const below = round.faces.flatMap(({ places }) => places.filter(([, , z]) => z > 0 && z < radiusMm));
    const onRound = below.filter(([x, y]) => nearestOn(outline, point<'body'>(x, y)).distanceMm < radiusMm);
    expect(onRound.length).toBeGreaterThan(1000);
    for (const [x, y, z] of onRound) {
      const { distanceMm } = nearestOn(outline, point<'body'>(x, y));
      const off = Math.abs(Math.hypot(radiusMm - distanceMm, radiusMm - z) - radiusMm);
      expect(off, `${x}, ${y}, ${z}`).toBeLessThan(SURFACE_MM);
    }
    // The wood between a square edge and a quarter circle, layer by layer from the areas inside the edge.
    const layers = 200;
    let lostMm3 = 0;
    for (let layer = 0; layer < layers; layer++) {
      const down = 1 - (layer + 0.5) / layers;
      const [line] = offsetChain(outline, -radiusMm * (1 - Math.sqrt(1 - down ** 2)), { join: 'mitre' });
      lostMm3 += ((areaOf(outline) - areaOf(line ?? outline)) * radiusMm) / layers;
    }
    expect(Math.abs((square.volume - round.volume) / lostMm3 - 1)).toBeLessThan(0.01);
  },
  60_000,
);

/** What a body takes from a plate, cut by the kernel itself. */
const TAKEN = `
import gmsh, json, sys
gmsh.initialize(); gmsh.option.setNumber('General.Terminal', 0); occ = gmsh.model.occ
plate = occ.importShapes(sys.argv[1]); body = occ.importShapes(sys.stdin.read())
taken, _ = occ.intersect(plate, body)
print(json.dumps({'pieces': len([one for one in taken if one[0] == 3]), 'volume': sum(occ.getMass(*one) for one in taken if one[0] == 3)}))
`;

test('a sound hole taken from the hollowed top takes the wood between its outside and inside', () => {
  const { hollows, plan, plates, soundHoles } = instrumentOf('violin');
  const [edged, hollowed] = [edgedShape(hollows.top.arch, plan.outline.chain), hollowedShape(hollows.top)];
  if (!edged.ok || !hollowed.ok) throw new Error('no surfaces');
  const hole = { outer: soundHoles.treble, holes: [], fromZMm: -2, toZMm: plates.top.archHeightMm + 2 };
  const path = join(folder, 'hole.step');
  writeFileSync(path, writeStep('hole', hole));
  const plate = writeEdgedStep('top', edged.value, hollowed.value);
  const taken = python<{ pieces: number; volume: number }>(TAKEN, plate, path);
  expect(taken.pieces).toBe(1);
  let woodMm3 = 0;
  integrateInside([soundHoles.treble], 1, (x, y, areaMm2) => {
    woodMm3 += areaMm2 * (plateHeight(plates.top, x, y, 'finished') - insideHeight(hollows.top, x, y));
  });
  expect(Math.abs(taken.volume / woodMm3 - 1)).toBeLessThan(0.002);
}, 60_000);

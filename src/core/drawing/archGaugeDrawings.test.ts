import { expect, test } from 'vitest';
import { archValues } from '../../../test/fixtures/archValues.ts';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import {
  areaOf,
  boundsOf,
  type Chain,
  containsPoint,
  headingOn,
  nearestOn,
  sampleChain,
  segments,
  selfCrossings,
} from '../curve/index.ts';
import {
  type EdgeState,
  longProfile,
  type Plate,
  type PlateArch,
  plateArch,
  plateHeight,
  stationProfile,
} from '../instrument/index.ts';
import { archGaugeDrawings } from './archGaugeDrawings.ts';
import type { Drawing } from './drawing.ts';
import { letteringFindings, letteringStrokes } from './lettering.ts';

const half = violinHalf();

function arched(plate: Plate): PlateArch {
  const checked = plateArch(archValues(), half, plate);
  if (!checked.ok) throw new Error('refused');
  return checked.value;
}

function gauges(arch: PlateArch, state?: EdgeState): readonly Drawing[] {
  const made = archGaugeDrawings(arch, {
    instrumentName: 'Test violin 355',
    gaugeThicknessMm: 3,
    stopMm: 195,
    ...(state ? { state } : {}),
  });
  if (!made.ok) throw new Error(made.faults.map(({ code }) => code).join());
  return made.value;
}

function cutOf(drawing: Drawing): Chain<'drawing'> {
  const [cut, ...others] = drawing.lines.filter(({ meaning }) => meaning === 'cut');
  if (!cut || others.length > 0) throw new Error('not one cut line');
  return cut.chain;
}

const plates = { back: arched('back'), top: arched('top') };
const sets = (['back', 'top'] as const).flatMap((plate) =>
  (['arched', 'finished'] as const).map((state) => ({
    plate,
    state,
    arch: plates[plate],
    drawings: gauges(plates[plate], state),
  })),
);

test('a plate has five gauges across, from the lower end up, and one along, each with a name of its own', () => {
  expect(gauges(plates.back).map(({ name }) => name)).toEqual([
    'arching-gauge-back-lower-bout',
    'arching-gauge-back-lower-corner',
    'arching-gauge-back-waist',
    'arching-gauge-back-upper-corner',
    'arching-gauge-back-upper-bout',
    'arching-gauge-back-long',
  ]);
  const names = sets.flatMap(({ drawings }) => drawings.map(({ name }) => name));
  expect(new Set(names).size).toBe(24);
});

test.each(sets)(
  '$plate, $state: each gauge is one closed simple piece with a hole inside, as large as it says',
  ({ drawings }) => {
    for (const drawing of drawings) {
      const cut = cutOf(drawing);
      expect(cut.closed).toBe(true);
      expect(areaOf(cut)).toBeGreaterThan(0);
      expect(selfCrossings(cut)).toEqual([]);
      const holes = drawing.lines.filter(({ meaning }) => meaning === 'cut-inside');
      expect(holes.length).toBe(1);
      for (const { chain } of holes) {
        expect(areaOf(chain)).toBeLessThan(0);
        for (const place of sampleChain(chain, 0.1)) {
          expect(containsPoint(cut, place)).toBe(true);
          expect(nearestOn(cut, place).distanceMm).toBeGreaterThan(4);
        }
      }
      const box = boundsOf(cut);
      expect(drawing.checks.map(({ valueMm }) => valueMm)).toEqual([
        box.max.x - box.min.x,
        box.max.y - box.min.y,
      ]);
    }
  },
);

test.each(sets)(
  '$plate, $state: the working edge is the profile of the plate to a hundredth',
  ({ arch, state, drawings }) => {
    drawings.forEach((drawing, index) => {
      const station = arch.stations[index];
      const profile = station ? stationProfile(arch, station, state) : longProfile(arch, state);
      const inside = profile.points.filter(({ x }) => x >= profile.borders[0] && x <= profile.borders[1]);
      expect(inside.length).toBeGreaterThan(300);
      for (const place of inside) expect(nearestOn(cutOf(drawing), place).distanceMm).toBeLessThan(0.01);
    });
  },
);

test.each(sets)(
  '$plate, $state: no gauge reaches below the plate it stands on',
  ({ arch, state, drawings }) => {
    drawings.forEach((drawing, index) => {
      const station = arch.stations[index];
      const [from, to] = station
        ? [-station.edgeHalfWidthMm, station.edgeHalfWidthMm]
        : [0, arch.bodyLengthMm];
      for (const { x, y } of sampleChain(cutOf(drawing), 0.001)) {
        if (!(x > from && x < to)) continue;
        const plate = station ? plateHeight(arch, x, station.yMm, state) : plateHeight(arch, 0, x, state);
        expect(y).toBeGreaterThan(plate - 0.01);
      }
    });
  },
);

test.each(sets)('$plate, $state: a cross gauge is the same on both sides', ({ arch, drawings }) => {
  for (const drawing of drawings.slice(0, arch.stations.length)) {
    const { vertices } = cutOf(drawing);
    for (const { x, y } of vertices) {
      const nearest = Math.min(...vertices.map((other) => Math.hypot(other.x + x, other.y - y)));
      expect(nearest).toBeLessThan(1e-9);
    }
  }
});

test.each(sets)(
  '$plate, $state: between the feet every joint of the working edge is tangent',
  ({ drawings }) => {
    for (const drawing of drawings) {
      const pieces = segments(cutOf(drawing));
      // The feet are the first piece and the one before the right side: their inner ends are the only ridges.
      const last = pieces.findIndex(({ start, end }) => end.x === start.x && end.y > start.y) - 1;
      expect(pieces.length - 1).toBeGreaterThan(last);
      for (let index = 2; index < last; index++) {
        const before = pieces[index - 1];
        const after = pieces[index];
        if (!before || !after) throw new Error('no piece');
        expect(headingOn(after, 0)).toBeCloseTo(headingOn(before, 1), 9);
      }
    }
  },
);

test('the feet stand level on the edge and reach out beyond it', () => {
  for (const { arch, drawings } of sets)
    for (const [index, drawing] of drawings.entries()) {
      const first = segments(cutOf(drawing))[0];
      const outer = arch.stations[index] ? -(arch.stations[index]?.edgeHalfWidthMm ?? 0) : 0;
      expect(first?.start.y).toBe(arch.numbers.edgeHeightMm);
      expect(first?.end.y).toBeCloseTo(arch.numbers.edgeHeightMm, 9);
      expect(first?.start.x).toBeLessThan(outer - 5);
      expect(first?.end.x).toBeGreaterThan(outer + 1);
    }
});

test.each(sets)(
  '$plate, $state: everything written stands on the piece, clear of its edge and of the hole',
  ({ drawings }) => {
    for (const drawing of drawings) {
      const cut = cutOf(drawing);
      const hole = drawing.lines.find(({ meaning }) => meaning === 'cut-inside')?.chain;
      expect(letteringFindings(drawing.lettering)).toEqual([]);
      for (const stroke of drawing.lettering.flatMap(letteringStrokes))
        for (const place of stroke.vertices) {
          expect(containsPoint(cut, place)).toBe(true);
          expect(nearestOn(cut, place).distanceMm).toBeGreaterThan(0.4);
          if (hole) expect(nearestOn(hole, place).distanceMm).toBeGreaterThan(1);
        }
    }
  },
);

test.each(sets)('$plate, $state: no lettering runs into another', ({ drawings }) => {
  for (const drawing of drawings) {
    const boxes = drawing.lettering.map((lettering) =>
      letteringStrokes(lettering).map((stroke) => boundsOf(stroke)),
    );
    boxes.forEach((ours, index) => {
      for (const theirs of boxes.slice(index + 1))
        for (const a of ours)
          for (const b of theirs) {
            const apart = a.max.x < b.min.x || b.max.x < a.min.x || a.max.y < b.min.y || b.max.y < a.min.y;
            expect(apart).toBe(true);
          }
    });
  }
});

test('each gauge is lettered with plate, place and instrument, and says which side looks where', () => {
  for (const { plate, drawings } of sets)
    for (const drawing of drawings) {
      const written = drawing.lettering.map(({ text }) => text).join(' | ');
      expect(written).toContain(plate.toUpperCase());
      expect(written).toContain('Test violin 355');
      expect(written).toMatch(/this side to the (neck|lower end)|NECK END/);
      expect(written).toContain('rise');
    }
});

test('the notes say what the gauge rests on, how thick it is and that edge tools hurt', () => {
  const notes = gauges(plates.top)[1]?.notes.join(' ') ?? '';
  expect(notes).toContain('flat edge, 4 mm thick, before the channel is cut');
  expect(notes).toContain('stuff 3 mm thick');
  expect(notes).toContain('inner 70 %');
  expect(notes).toMatch(/can hurt.*manual of the machine/);
});

test('the bridge is marked on the long gauge of the top only', () => {
  const written = (plate: Plate): string[] =>
    (gauges(plates[plate])[5]?.lettering ?? []).map(({ text }) => text);
  expect(written('top')).toContain('bridge');
  expect(written('back')).not.toContain('bridge');
});

test.each(sets)('$plate, $state: the centre line runs from the working edge to the back', ({ drawings }) => {
  for (const drawing of drawings) {
    const ends = drawing.lines
      .filter(({ centreLine }) => centreLine === true)
      .flatMap(({ chain }) => chain.vertices.map(({ y }) => y));
    expect(ends).toHaveLength(4);
    expect(Math.max(...ends)).toBeCloseTo(boundsOf(cutOf(drawing)).max.y, 9);
  }
});

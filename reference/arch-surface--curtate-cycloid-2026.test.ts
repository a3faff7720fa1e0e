/**
 * The outside of whole plates against the formulas that it is to meet.
 *
 * Source: the parametric curve of the curtate cycloid (x = a·ψ + b·sin ψ, z = b·(1 + cos ψ), any handbook of curves, from memory), evaluated here by
 * bisection; the long arch as a circle with end fillets from its chord and rise (R = (c² + s²)/2s − r, worked out here again).
 * Claim: for the default violin, viola and cello, back and top, every station is its cycloid, with its fullness, to 0.01 mm at every half
 * millimetre (at the corners over the inner 0.7 of the half width), and so are the arcs that its gauge is cut to; the long arch is its circle.
 */
import { expect, test } from 'vitest';
import { type Chain, intersections } from '../src/core/curve/index.ts';
import { type ArchStation, type PlateArch, plateHeight, stationArcs } from '../src/core/instrument/index.ts';
import { defaultInstrument, FAMILIES, PLATES } from './made/defaultInstruments.ts';

const STEP_MM = 0.5;
const WITHIN_MM = 0.01;
const CORNER_INNER = 0.7;

const plates = FAMILIES.flatMap((family) => {
  const { plates, design } = defaultInstrument(family);
  return PLATES.map((plate) => ({ family, plate, arch: plates[plate], design }));
});

/** Height of the unit cycloid with fullness, times its rise: ψ by bisection alone. */
function cycloidByBisection(halfWidthMm: number, riseMm: number, fullness: number, x: number): number {
  const [a, b] = [halfWidthMm / Math.PI, riseMm / 2];
  let [low, high] = [0, Math.PI];
  for (let halving = 0; halving < 60; halving++) {
    const psi = (low + high) / 2;
    if (a * psi + b * Math.sin(psi) > x) high = psi;
    else low = psi;
  }
  const share = (1 + Math.cos(low)) / 2;
  return riseMm * (share + 4 * fullness * share * (1 - share));
}

/** A circle over a chord with end fillets, from the chord's middle. */
function filletedCircle(halfChordMm: number, riseMm: number, filletMm: number, t: number): number {
  const radius = (halfChordMm ** 2 + riseMm ** 2) / (2 * riseMm) - filletMm;
  const joint = (halfChordMm * radius) / (radius + filletMm);
  if (t <= joint) return riseMm - radius + Math.sqrt(radius ** 2 - t ** 2);
  return filletMm - Math.sqrt(filletMm ** 2 - (halfChordMm - t) ** 2);
}

function stationFormula(arch: PlateArch, station: ArchStation, filletMm: number): (x: number) => number {
  const { startMm, endMm } = arch.longArch;
  const away = Math.abs(station.yMm - (startMm + endMm) / 2);
  const riseMm = filletedCircle((endMm - startMm) / 2, arch.riseMm, filletMm, away);
  return (x) => arch.channelZMm + cycloidByBisection(station.halfWidthMm, riseMm, station.fullness, x);
}

function innerShare(station: ArchStation): number {
  return station.name.endsWith('Corner') ? CORNER_INNER : 1;
}

/** Height of a chain at x, that part of it which is looked at passing each x once. */
function chainAt(chain: Chain<'section'>, x: number): number {
  const upright: Chain<'section'> = {
    closed: false,
    vertices: [-50, 150].map((y) => ({ x, y, bulge: 0 })),
  };
  return Math.max(...intersections(chain, upright).map((crossing) => crossing.point.y));
}

test.each(plates)('$family $plate: every station is its cycloid', ({ arch, design }) => {
  const filletMm = design.values.longArchFillet?.value ?? Number.NaN;
  expect(arch.stations).toHaveLength(5);
  for (const station of arch.stations) {
    const formula = stationFormula(arch, station, filletMm);
    const to = innerShare(station) * station.halfWidthMm;
    let worst = 0;
    for (let x = 0; x <= to; x += STEP_MM)
      worst = Math.max(worst, Math.abs(plateHeight(arch, x, station.yMm, 'finished') - formula(x)));
    expect(worst).toBeLessThan(WITHIN_MM);
  }
});

test.each(plates)('$family $plate: so are the arcs that its gauges are cut to', ({ arch, design }) => {
  const filletMm = design.values.longArchFillet?.value ?? Number.NaN;
  for (const state of ['arched', 'finished'] as const)
    for (const station of arch.stations) {
      const arcs = stationArcs(arch, station, state);
      if (!arcs.ok) throw new Error(arcs.faults[0]?.found);
      const formula = stationFormula(arch, station, filletMm);
      // While the edge is flat the arch ends where it sinks into it.
      const reach = Math.max(...arcs.value.vertices.map(({ x }) => x));
      const to = Math.min(reach - STEP_MM / 2, innerShare(station) * station.halfWidthMm);
      let worst = 0;
      for (let x = 0; x <= to; x += STEP_MM)
        for (const side of [x, -x]) {
          const high = chainAt(arcs.value, side);
          worst = Math.max(worst, Math.abs(high - formula(x)));
        }
      expect(worst).toBeLessThan(WITHIN_MM);
    }
});

test.each(plates)(
  '$family $plate: along the centre line it is the circle with its fillets',
  ({ arch, design }) => {
    const filletMm = design.values.longArchFillet?.value ?? Number.NaN;
    const { startMm, endMm } = arch.longArch;
    const middle = (startMm + endMm) / 2;
    for (let y = startMm; y <= endMm; y += STEP_MM) {
      const long = filletedCircle((endMm - startMm) / 2, arch.riseMm, filletMm, Math.abs(y - middle));
      expect(Math.abs(plateHeight(arch, 0, y, 'finished') - arch.channelZMm - long)).toBeLessThan(1e-6);
    }
  },
);

import { power } from '../../base/index.ts';
import { solveDefinite, zeroMatrix } from '../../numeric/index.ts';
import type { LoopPoint } from './bridgeLoops.ts';

/** A nick in an edge of the stem, in the frame's units. */
export interface StemNick {
  /** On the stem's edge as it would run without the nick. */
  readonly x: number;
  readonly y: number;
  readonly depth: number;
}

/** 355ths: the stretch of stem looked at either way of the usual nick, and between its stations. */
const REACH = 15;
const STEP = 0.15;
/** 355ths: least depth, and breadth from narrowest to widest, of a notch that is called a nick. */
const LEAST_DEPTH = 0.3;
const [LEAST_BREADTH, MOST_BREADTH] = [0.7, 4.5];
/** 355ths: departures that do not count against the stem's own edge, and the rounds in which they are sorted out. */
const SMOOTH = 0.12;
const ROUNDS = 12;
const UNKNOWNS = 5;

interface Station {
  readonly x: number;
  readonly y: number;
  readonly bridged: boolean;
}

/**
 * The nick in the stem's inner or outer edge near `nickY`; null where no notch of its size shows. Method: the stem's
 * own edge is a quartic through the stations that do not depart from it; the largest notch into the wood is the nick.
 */
export function holeNick(
  loop: readonly LoopPoint[],
  which: 'inner' | 'outer',
  nickY: number,
): StemNick | null {
  const stations = stemStations(loop, which, nickY);
  if (stations.length < (1.2 * REACH) / STEP) return null;
  const way = which === 'inner' ? -1 : 1;
  const own = ownEdge(stations, nickY, way);
  if (own === null) return null;
  const off = stations.map((station) => way * (station.x - own(station.y)));
  let best: StemNick | null = null;
  let largest = 0;
  for (let i = 0; i < off.length; ) {
    if (off[i] < LEAST_DEPTH / 2) {
      i++;
      continue;
    }
    let [area, moment, depth, end] = [0, 0, 0, i];
    for (; end < off.length && off[end] >= LEAST_DEPTH / 2; end++) {
      area += off[end] * STEP;
      moment += off[end] * STEP * stations[end].y;
      depth = Math.max(depth, off[end]);
    }
    const breadth = (end - i) * STEP;
    const clear = i > 0 && end < off.length && stations.slice(i, end).every((station) => !station.bridged);
    const fits = depth >= LEAST_DEPTH && breadth >= LEAST_BREADTH && breadth <= MOST_BREADTH;
    if (clear && fits && area > largest) {
      largest = area;
      best = { x: own(moment / area), y: moment / area, depth };
    }
    i = end;
  }
  return best;
}

function stemStations(
  loop: readonly LoopPoint[],
  which: 'inner' | 'outer',
  nickY: number,
): readonly Station[] {
  const count = Math.floor((2 * REACH) / STEP) + 1;
  const found: (Station | null)[] = Array.from({ length: count }, () => null);
  loop.forEach((a, i) => {
    const b = loop[(i + 1) % loop.length];
    const [low, high] = [Math.min(a.y, b.y), Math.max(a.y, b.y)];
    const first = Math.max(0, Math.ceil((low - nickY + REACH) / STEP));
    for (let k = first; k < count && nickY - REACH + k * STEP < high; k++) {
      const y = nickY - REACH + k * STEP;
      const x = a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
      const before = found[k];
      if (before === null || (which === 'inner' ? x < before.x : x > before.x))
        found[k] = { x, y, bridged: a.bridged || b.bridged };
    }
  });
  return found.filter((station) => station !== null);
}

/** x of the stem's edge at y as it would run without notches. */
function ownEdge(stations: readonly Station[], nickY: number, way: 1 | -1): ((y: number) => number) | null {
  const terms = (y: number): Float64Array => {
    const t = (y - nickY) / REACH;
    return Float64Array.of(1, t, t * t, t * t * t, t * t * t * t);
  };
  let coefficients = new Float64Array(UNKNOWNS);
  const at = (y: number): number => terms(y).reduce((sum, term, k) => sum + term * coefficients[k], 0);
  for (let round = 0; round < ROUNDS; round++) {
    const matrix = zeroMatrix(UNKNOWNS, UNKNOWNS);
    const right = new Float64Array(UNKNOWNS);
    for (const { x, y } of stations) {
      const off = round === 0 ? 0 : (way * (x - at(y))) / SMOOTH;
      // Notches lie on one side only, so what stands out into the wood counts least.
      const share = 1 / (1 + (off > 0 ? power(off, 4) : off * off));
      const row = terms(y);
      for (let k = 0; k < UNKNOWNS; k++) {
        right[k] += share * row[k] * x;
        for (let l = 0; l < UNKNOWNS; l++) matrix[k][l] += share * row[k] * row[l];
      }
    }
    const solved = solveDefinite(matrix, right);
    if (solved === undefined) return null;
    coefficients = Float64Array.from(solved);
  }
  return at;
}

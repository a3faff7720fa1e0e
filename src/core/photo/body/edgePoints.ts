import { norm, point } from '../../base/index.ts';
import { medianOf } from '../../numeric/index.ts';
import type { EdgePoint, EdgeState, NamedStretch } from './bodyTrace.ts';
import { crossedAt, type LocalEdge } from './localEdge.ts';
import type { MeasuredPlace } from './subPixelEdge.ts';
import type { PlacedTemplate } from './templateBoth.ts';
import { SECTION_WORDS, STATION_STRIDE } from './templateStations.ts';

const SURE_STRENGTH = 0.3;
const LEAST_STRENGTH = 0.15;
const FARTHEST_MM = 2.5;
const BRIDGED_SIGMA_MM = 1;
const DOUBTFUL_SIGMA_MM = 0.4;
const LEAST_SIGMA_PX = 0.03;
/** Times the usual blur above which an edge is a shadow's or a rounded part's. */
const WIDE_BLUR = 2.2;
/** Colour difference (cube-root light, 0 to 1) above which something other than the plate lies inside the edge. */
const OTHER_COLOUR = 0.22;

/** Fewest neighbouring places that something lying over the edge hides. */
const LEAST_COVER = 6;

type Reason = 'seen' | 'crossed' | 'not shown' | 'covered' | 'off' | 'weak' | 'blurred';

/** The measured places with state, spread and names, and the unseen runs named in words. */
export function nameEdge(
  edge: LocalEdge,
  places: readonly MeasuredPlace[],
  placed: PlacedTemplate,
  pxPerMm: number,
  face: 'top' | 'back',
): { readonly points: readonly EdgePoint[]; readonly unseen: readonly NamedStretch[] } {
  const reasons = reasonsOf(edge, places);
  const { count, section, alongMm } = placed.stations;
  const points = places.map((place, i): EdgePoint => {
    const state = stateOf(reasons[i] as Reason);
    const back = state === 'bridged' ? place.offsetMm * pxPerMm : 0;
    return {
      point: point<'photo'>(place.x - back * place.nx, place.y - back * place.ny),
      normal: point<'photo'>(place.nx, place.ny),
      side: i < count === (face === 'top') ? 'treble' : 'bass',
      section: section[i % count] as EdgePoint['section'],
      along: alongMm[i % count] as number,
      state,
      sigmaPx: sigmaOf(state, place, pxPerMm),
    };
  });
  return { points, unseen: nameRuns(points, reasons, placed, face) };
}

function stateOf(reason: Reason): EdgeState {
  if (reason === 'seen') return 'seen';
  return reason === 'weak' || reason === 'blurred' ? 'doubtful' : 'bridged';
}

function sigmaOf(state: EdgeState, place: MeasuredPlace, pxPerMm: number): number {
  if (state === 'bridged') return BRIDGED_SIGMA_MM * pxPerMm;
  const own = place.profile ? Math.max(LEAST_SIGMA_PX, place.profile.sigmaPx) : 0;
  return state === 'doubtful' ? Math.max(own, DOUBTFUL_SIGMA_MM * pxPerMm) : own;
}

function reasonsOf(edge: LocalEdge, places: readonly MeasuredPlace[]): Reason[] {
  const usual = medianOf(places.flatMap((place) => (place.profile ? [place.profile.blurPx] : [])));
  const colours = [0, 1, 2].map((c) => medianOf(places.map((place) => place.inside[c] as number)));
  const reasons = places.map((place, i): Reason => {
    if (crossedAt(edge, i)) return 'crossed';
    if (!edge.bench.evidence.visible[i]) return 'not shown';
    const strange = norm(place.inside.map((value, c) => value - (colours[c] as number)));
    if (strange > OTHER_COLOUR) return 'covered';
    const strength = edge.strength[i] as number;
    if (strength < LEAST_STRENGTH || Math.abs(place.offsetMm) > FARTHEST_MM) return 'off';
    if (strength < SURE_STRENGTH || place.profile === null) return 'weak';
    return place.profile.blurPx > WIDE_BLUR * usual ? 'blurred' : 'seen';
  });
  return shortCoversWeak(reasons);
}

/** What lies over an edge is longer than a few places; at a corner tip it is only the purfling's point. */
function shortCoversWeak(reasons: readonly Reason[]): Reason[] {
  const out = [...reasons];
  let from = 0;
  for (let i = 1; i <= reasons.length; i++) {
    if (reasons[i] === reasons[from]) continue;
    if (reasons[from] === 'covered' && i - from < LEAST_COVER) out.fill('weak', from, i);
    from = i;
  }
  return out;
}

function nameRuns(
  points: readonly EdgePoint[],
  reasons: readonly Reason[],
  placed: PlacedTemplate,
  face: 'top' | 'back',
): NamedStretch[] {
  const runs: NamedStretch[] = [];
  let from = 0;
  for (let i = 1; i <= points.length; i++) {
    const first = points[from] as EdgePoint;
    const here = points[i];
    const same =
      here !== undefined &&
      reasons[i] === reasons[from] &&
      here.section === first.section &&
      here.side === first.side;
    if (same) continue;
    const last = points[i - 1] as EdgePoint;
    if (first.state !== 'seen')
      runs.push({
        name: nameOf(reasons[from] as Reason, first, upperHalf(placed, from), face),
        side: first.side,
        section: first.section,
        fromAlong: first.along,
        toAlong: last.along,
        state: first.state,
      });
    from = i;
  }
  return runs;
}

function upperHalf(placed: PlacedTemplate, i: number): boolean {
  const at = (i % placed.stations.count) * STATION_STRIDE;
  return (placed.half[at + 1] as number) > 177;
}

function nameOf(reason: Reason, at: EdgePoint, upper: boolean, face: 'top' | 'back'): string {
  if (reason === 'crossed') {
    if (!upper) return 'lower edge at the end button and saddle';
    return face === 'top' ? 'upper edge under the neck and fingerboard' : 'upper edge at the button';
  }
  const where = `${SECTION_WORDS[at.section]}, ${at.side} side`;
  if (reason === 'not shown') return `${where}: outside the picture or left out`;
  if (reason === 'covered') return `${where}: something lies over the edge`;
  if (reason === 'off') return `${where}: no edge near the outline`;
  return reason === 'weak' ? `${where}: faint edge` : `${where}: blurred edge or shadow`;
}

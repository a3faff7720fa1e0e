import { type Finding, hypot, letGo, type Point } from '../../base/index.ts';
import type { EdgePoint, NamedStretch } from '../body/bodyTrace.ts';
import { isCornerEnd, SECTION_WORDS } from '../body/templateStations.ts';
import type { Picture } from '../picture/picture.ts';
import { doubleLineResponse } from './doubleLine.ts';
import { type EdgeStrips, edgeStrips } from './edgeStrips.ts';
import { followLine } from './followLine.ts';
import { type MeasuredPurfling, measurePurfling } from './measurePurfling.ts';
import type { PurflingPlace, PurflingTrace } from './purflingTrace.ts';

export interface PurflingOptions {
  /** How far, px, a place of the edge may lie outside the near plate's own: the line is then that much deeper. */
  readonly overlookPx?: (place: Point<'photo'>, normal: Point<'photo'>) => number;
  /** How far, mm, the line may lie from its usual depth before that costs a fifth of a plain line: less where the edge is known. */
  readonly depthSpreadMm?: number;
}

/** mm inside a sound edge where the middle line is looked for: 3 to 6.5 with some wear or a bridge of the edge beside it. */
const [LEAST_DEPTH_MM, MOST_DEPTH_MM] = [2.2, 7];
/** mm. Usual depth, and how far from it costs a fifth of a plain line. */
const [USUAL_DEPTH_MM, DEPTH_SPREAD_MM] = [4.2, 4];
/** mm sampled beyond the search on either side, and how far inside lies a band that has no purfling, to compare with. */
const MARGIN_MM = 2;
const CONTROL_AWAY_MM = 5.2;
const MOST_OVERLOOK_MM = 7;
/** mm. Distances between the dark lines that are tried; violins to cellos. */
const WIDTHS_MM = [0.55, 0.7, 0.85, 1, 1.15, 1.3, 1.5, 1.75] as const;
/** What a sideways move of 1 mm in 1 mm costs, in plain lines. */
const STIFFNESS = 3;
/** How much plainer the line is than the best line where there is none, and the contrast it has at least. */
const PLAINER_THAN_NONE = 1.6;
const LEAST_CONTRAST = 0.02;
/** From this contrast on a line all round is a purfling even where a second one runs inside it. */
const SURE_CONTRAST = 0.3;
/** Share of a plain place's response that still counts as seen. */
const SEEN_SHARE = 0.35;
/** mm. A place farther from its neighbours' middle than this was drawn aside. */
const ASIDE_MM = 0.25;
const NEIGHBOUR_MM = 5;
/** Fewer places than this in a row are chance. */
const SHORTEST_RUN = 5;
/** Share of the edge along which a purfling shows, to be called one. */
const LEAST_SHARE = 0.2;

/**
 * The purfling's middle line opposite every place of the traced edge, photo px, where its two dark lines are seen.
 * Covered, worn and mitred stretches have no places and are named. Method: the plate's rim is pulled straight; two
 * equally distant dark lines are followed by dynamic programming and fitted at sub-pixel places; whether there is a
 * purfling is told by the same search 5 mm farther in, where there is none.
 */
export function tracePurfling(
  picture: Picture,
  edge: readonly EdgePoint[],
  pxPerMm: number,
  options: PurflingOptions = {},
): PurflingTrace {
  const extra = edge.map(({ point, normal }) =>
    Math.min(MOST_OVERLOOK_MM, Math.max(0, (options.overlookPx?.(point, normal) ?? 0) / pxPerMm)),
  );
  const most = MOST_DEPTH_MM + extra.reduce((a, b) => Math.max(a, b), 0);
  const strips = edgeStrips(picture, edge, pxPerMm, [
    LEAST_DEPTH_MM - MARGIN_MM,
    most + CONTROL_AWAY_MM + MARGIN_MM,
  ]);
  const spreadMm = options.depthSpreadMm ?? DEPTH_SPREAD_MM;
  const found = purflingIn({ strips, edge, extra, spreadMm }, pxPerMm);
  letGo(strips.light);
  return found;
}

function purflingIn(search: Search, pxPerMm: number): PurflingTrace {
  const { strips, edge } = search;
  const best = WIDTHS_MM.map((widthMm) => followWidth(search, widthMm)).reduce((a, b) =>
    b.plain > a.plain ? b : a,
  );
  const plainer = best.plain >= SURE_CONTRAST || best.plain >= PLAINER_THAN_NONE * best.elsewhere;
  if (best.plain < LEAST_CONTRAST || !plainer) return noPurfling(edge);
  const depthMm = seenDepths(search, best);
  const measured = measurePurfling(strips, edge, depthMm, best.widthMm, pxPerMm);
  const places = withoutStrays(edge, measured.places, pxPerMm);
  return purflingTrace(edge, places, measured, pxPerMm);
}

interface Search {
  readonly strips: EdgeStrips;
  readonly edge: readonly EdgePoint[];
  readonly extra: readonly number[];
  readonly spreadMm: number;
}

interface Followed {
  readonly widthMm: number;
  /** mm inside the edge, and the response there, place by place. */
  readonly depthMm: Float64Array;
  readonly response: Float64Array;
  /** Median response along the line, and along the best line where there is no purfling. */
  readonly plain: number;
  readonly elsewhere: number;
}

function followWidth(search: Search, widthMm: number): Followed {
  const response = doubleLineResponse(search.strips, widthMm);
  const line = followIn(search, response, 0);
  const none = followIn(search, response, CONTROL_AWAY_MM);
  letGo(response);
  return { widthMm, ...line, plain: middleOf(line.response), elsewhere: middleOf(none.response) };
}

function middleOf(values: Float64Array): number {
  return Float64Array.from(values).sort()[values.length >> 1] ?? 0;
}

/** The best line between the least and the most depth, each `awayMm` deeper, and deeper still by what is looked over. */
function followIn({ strips, edge, extra, spreadMm }: Search, response: Float32Array, awayMm: number) {
  const { samples, fromMm, stepMm } = strips;
  const first = Math.round((LEAST_DEPTH_MM + awayMm - fromMm) / stepMm);
  const last = samples - 1 - Math.round(MARGIN_MM / stepMm);
  const plain = plainOf(response, samples, first, last);
  const chosen = followLine(
    {
      rows: edge.length,
      columns: last - first + 1,
      fill: (row, into) => {
        const shallowest = awayMm > 0 ? LEAST_DEPTH_MM + extra[row] : LEAST_DEPTH_MM;
        for (let column = 0; column < into.length; column++) {
          const depth = LEAST_DEPTH_MM + column * stepMm;
          const away = (depth - USUAL_DEPTH_MM) / (spreadMm + extra[row]);
          const value = response[row * samples + first + column];
          const shows = value > 0 ? value / (value + plain) : Math.max(-1, value / plain);
          const isLookedAt = depth >= shallowest && depth <= MOST_DEPTH_MM + extra[row];
          into[column] = isLookedAt ? shows - (away * away) / 5 : -1;
        }
      },
      stepFromBeforeMm: (row) => stepBetween(edge[row - 1], edge[row]),
    },
    stepMm,
    STIFFNESS,
  );
  return {
    depthMm: Float64Array.from(chosen, (column) => fromMm + (first + column) * stepMm),
    response: Float64Array.from(chosen, (column, row) => response[row * samples + first + column]),
  };
}

/** The median over the places of the best response anywhere: what counts as plain in this picture. */
function plainOf(response: Float32Array, samples: number, first: number, last: number): number {
  const best: number[] = [];
  for (let row = 0; row * samples < response.length; row++) {
    let most = 0;
    for (let j = first; j <= last; j++) most = Math.max(most, response[row * samples + j]);
    best.push(most);
  }
  return Math.max(LEAST_CONTRAST, middleOf(Float64Array.from(best)));
}

/** mm along the edge between neighbours on one side and section, else 0. */
function stepBetween(a: EdgePoint, b: EdgePoint): number {
  return a.side === b.side && a.section === b.section ? Math.abs(b.along - a.along) : 0;
}

/** The followed depths where the line is plain enough, NaN elsewhere. */
function seenDepths({ edge }: Search, { depthMm, response, plain, elsewhere }: Followed): Float64Array {
  const least = Math.max(SEEN_SHARE * plain, Math.min(plain / 2, elsewhere), LEAST_CONTRAST);
  const out = new Float64Array(edge.length).fill(Number.NaN);
  for (let i = 0; i < edge.length; i++) {
    if (isCornerEnd(edge[i].section)) continue;
    let sum = 0;
    let count = 0;
    for (let k = Math.max(0, i - 2); k <= Math.min(edge.length - 1, i + 2); k++) {
      if (edge[k].side !== edge[i].side || edge[k].section !== edge[i].section) continue;
      sum += response[k];
      count++;
    }
    if (sum / count >= least && response[i] >= least / 2) out[i] = depthMm[i];
  }
  return out;
}

/** Without places aside of their neighbours, places past a mitre, and runs too short to be believed. */
function withoutStrays(
  edge: readonly EdgePoint[],
  places: readonly (PurflingPlace | null)[],
  pxPerMm: number,
): readonly (PurflingPlace | null)[] {
  const kept = places.map((place, i) => {
    if (place === null || isPastMitre(edge, place, i)) return null;
    const near: number[] = [];
    for (let k = Math.max(0, i - 8); k <= Math.min(edge.length - 1, i + 8); k++) {
      const other = places[k];
      const same = other && other.side === place.side && other.section === place.section;
      if (same && Math.abs(other.along - place.along) <= NEIGHBOUR_MM) near.push(other.depthPx);
    }
    near.sort((a, b) => a - b);
    return Math.abs(place.depthPx - near[near.length >> 1]) > ASIDE_MM * pxPerMm ? null : place;
  });
  let from = 0;
  for (let i = 1; i <= kept.length; i++) {
    if (i < kept.length && (kept[i] === null) === (kept[from] === null)) continue;
    if (kept[from] !== null && i - from < SHORTEST_RUN) kept.fill(null, from, i);
    from = i;
  }
  return kept;
}

/** Share of its own distance to the edge within which no other stretch of edge may come. */
const MITRE_SHARE = 0.93;
/** Places along the edge that a corner reaches. */
const MITRE_PLACES = 40;

/** Whether another section's edge is nearer than the one the place was looked for from. */
function isPastMitre(edge: readonly EdgePoint[], place: PurflingPlace, at: number): boolean {
  const least = MITRE_SHARE * place.depthPx;
  const end = Math.min(edge.length - 1, at + MITRE_PLACES);
  for (let k = Math.max(0, at - MITRE_PLACES); k <= end; k++) {
    const other = edge[k];
    if (other.side !== place.side || other.section === place.section) continue;
    if (hypot(other.point.x - place.point.x, other.point.y - place.point.y) < least) return true;
  }
  return false;
}

function purflingTrace(
  edge: readonly EdgePoint[],
  places: readonly (PurflingPlace | null)[],
  { shape, widthSigmaMm, parted }: MeasuredPurfling,
  pxPerMm: number,
): PurflingTrace {
  const found = places.filter((place) => place !== null);
  const possible = edge.filter((place) => !isCornerEnd(place.section)).length;
  const share = possible === 0 ? 0 : found.length / possible;
  if (share < LEAST_SHARE) return noPurfling(edge);
  return {
    seen: true,
    places: found,
    widthPx: parted ? { value: shape.widthMm * pxPerMm, sigmaPx: widthSigmaMm * pxPerMm } : null,
    share,
    unseen: unseenRuns(edge, places),
    findings: [],
  };
}

function unseenRuns(
  edge: readonly EdgePoint[],
  places: readonly (PurflingPlace | null)[],
): readonly NamedStretch[] {
  const runs: NamedStretch[] = [];
  let from = 0;
  for (let i = 1; i <= edge.length; i++) {
    const same =
      i < edge.length &&
      stepBetween(edge[i - 1], edge[i]) > 0 &&
      (places[i] === null) === (places[from] === null);
    if (same) continue;
    const { side, section, along } = edge[from];
    if (places[from] === null)
      runs.push({
        name: `purfling, ${SECTION_WORDS[section]}, ${side} side`,
        side,
        section,
        fromAlong: along,
        toAlong: edge[i - 1].along,
        state: 'bridged',
      });
    from = i;
  }
  return runs;
}

function noPurfling(edge: readonly EdgePoint[]): PurflingTrace {
  const finding: Finding = {
    weight: 'remark',
    code: 'purfling.not-seen',
    at: 'purfling',
    found: 'no pair of dark lines 3 to 6.5 mm inside the edge: none there, worn away, or too faint',
    need: 'a purfling that stands out from the wood, in a picture of 2 pixels to the millimetre or more',
    remedy: 'nothing, where the instrument has none; else photograph it nearer or in more even light',
  };
  return {
    seen: false,
    places: [],
    widthPx: null,
    share: 0,
    unseen: unseenRuns(
      edge,
      edge.map(() => null),
    ),
    findings: [finding],
  };
}

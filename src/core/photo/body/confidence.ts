import type { Finding } from '../../base/index.ts';
import { positionGapMm } from './axisPlaces.ts';
import type { BoardPlace } from './boardTest.ts';
import type { Candidate } from './bodyReading.ts';
import { TEMPLATE_LENGTH_MM } from './bodyTemplate.ts';
import type { FoundBody } from './findBody.ts';
import { type FitScore, ZONES } from './fitScore.ts';
import type { LineShares } from './followedLine.ts';
import type { RibsShown } from './ribsShown.ts';

/** What the verdict rests on. */
export interface Confidence {
  readonly verdict: 'accept' | 'ask' | 'refuse';
  readonly spread: number;
  readonly worstZone: { readonly name: string; readonly share: number };
  readonly findings: readonly Finding[];
}

const ACCEPT_SUPPORT = 0.9;
const ASK_SUPPORT = 0.55;
const ACCEPT_ZONE = 0.8;
/** One stretch alone may be hidden so far, as by a chin rest, where the others are as plain as this and the readings agree this well. */
const COVERED_ZONE = 0.55;
const PLAIN_ZONE = 0.85;
const COVERED_SPREAD = 0.02;
const ACCEPT_STRAIN = 4;
const ALIKE_SCORE = 0.06;
const ALIKE_SETTINGS = 3;
const ACCEPT_SPREAD = 0.03;
const RIVAL_SCORE = 0.2;
/** Share of a side that may be a line with one colour on either side of it. On 118 simulated pictures: right ones 0.08 at most, wrong ones from 0.21. */
const ACCEPT_LINE_SHARE = 0.15;
/** mm. On 114 simulated pictures all edges more than 1.5 mm off that a fingerboard could tell of had it farther aside. */
const ACCEPT_BOARD_MM = 5.5;
/** mm. So far aside it may stand where no side's rim looks like ribs, and the share of a rim from which one may. */
const [ACCEPT_LONE_BOARD_MM, RIBS_POSSIBLE] = [10, 0.5];
/** From such a share of a side's rim, and from so much darker than the plate, its dark band is ribs. */
const [RIBS_SHARE, RIBS_DARKER] = [0.6, -0.15];
const RATIOS: readonly (readonly [keyof FitScore['ratios'] | 'length', number, number])[] = [
  ['length', 1.65, 1.83],
  ['upper', 0.74, 0.85],
  ['waist', 0.47, 0.565],
];

/** What else than the fit tells for or against an outline. */
export interface Signs {
  /** The question which of several bodies is meant, where it is open. */
  readonly several: Finding | null;
  /** The face that was asked for, and the one that shows; null where it was not said or cannot be told. */
  readonly face: { readonly said: 'top' | 'back' | null; readonly shows: 'top' | 'back' | null };
  readonly board: BoardPlace | null;
  readonly lines: LineShares;
  readonly ribs: RibsShown | null;
  /** Whether the near plate's edge is still told from the far one's, whatever was followed. */
  readonly platesAreTold: boolean;
}

/**
 * How far the found outline can be believed, and the one thing to ask when it cannot be believed outright.
 * Method: support by the picture, the worst of six zones, agreement of independent settings, plausible
 * proportions, the fingerboard's place, an edge and not a line all along either side, no ribs inside it, and no rival that ends elsewhere.
 * One zone may be half hidden where all else is plain. Limits set on 39 photographs and 232 simulated ones.
 */
export function judge(
  final: FitScore,
  { candidates, quick }: FoundBody,
  { several, face, board, lines, ribs, platesAreTold }: Signs,
  sideNames: readonly [plus: string, minus: string],
): Confidence {
  const [leader] = candidates;
  const alike = candidates.filter(
    (one) => leader.score.score - one.score.score <= ALIKE_SCORE && positionGapMm(one.fit, leader.fit) < 60,
  );
  const spread = spreadOf(alike);
  const worst = final.zones.reduce(
    (least, share, zone) => (share < (final.zones[least] as number) ? zone : least),
    0,
  );
  const worstZone = { name: zoneName(worst, sideNames), share: final.zones[worst] as number };
  const asks = [
    several,
    faceDoubt(face),
    zoneDoubt(final, worstZone, spread),
    settingsDoubt(alike, spread, quick),
    rivalDoubt(candidates),
    ratioDoubt(final),
    boardDoubt(board, ribs),
    lineDoubt(lines),
    platesAreTold ? null : ribsDoubt(ribs),
    strainDoubt(final),
  ].filter((one) => one !== null);
  const first = asks[0];
  const refused = final.support < ASK_SUPPORT;
  return {
    verdict: refused ? 'refuse' : first ? 'ask' : 'accept',
    spread,
    worstZone,
    findings: first ? [first] : [],
  };
}

function zoneName(zone: number, [plus, minus]: readonly [string, string]): string {
  const [height, half] = (ZONES[zone] as string).split(' ') as [string, string];
  const words = height === 'C' ? 'C bout' : `${height} bout`;
  return `${words}, ${half === 'plus' ? plus : minus} side`;
}

/** Largest relative range of the three widths over the alike candidates. */
function spreadOf(alike: readonly Candidate[]): number {
  return Math.max(
    ...(['lower', 'upper', 'waist'] as const).map((name) => {
      const values = alike.map((one) => one.score.ratios[name]);
      return (
        (Math.max(...values) - Math.min(...values)) / (values.reduce((a, b) => a + b, 0) / values.length)
      );
    }),
  );
}

function doubt(code: string, at: string, found: string, need: string, remedy: string): Finding {
  return { code: `trace.${code}`, at, found, need, remedy, weight: 'caution' };
}

/** A body of the other face than was asked for: another instrument, or the sides would be named the wrong way round. */
function faceDoubt({ said, shows }: Signs['face']): Finding | null {
  if (said === null || shows === null || said === shows) return null;
  const [asked, seen] = said === 'top' ? ['top', 'back'] : ['back', 'top'];
  return doubt(
    'other-face',
    'face',
    shows === 'back'
      ? 'the top was asked for, but this body shows neither sound holes nor a fingerboard'
      : 'the back was asked for, but this body shows sound holes or a fingerboard',
    `a photograph of the ${asked}`,
    `say --face ${seen} if this is the ${seen}; if it is not, mark a place inside the body that is meant`,
  );
}

function zoneDoubt(final: FitScore, worst: Confidence['worstZone'], spread: number): Finding | null {
  const isSeen = worst.share >= ACCEPT_ZONE || isOnlyCovered(final, worst.share, spread);
  if (final.support >= ACCEPT_SUPPORT && isSeen) return null;
  return doubt(
    'zone-unseen',
    worst.name,
    `the edge is seen on only ${Math.round(100 * worst.share)} % of this stretch`,
    `${Math.round(100 * ACCEPT_ZONE)} %, or ${Math.round(100 * COVERED_ZONE)} % where all else is plain, or a look by the maker`,
    'drag two points there onto the true edge, or confirm the outline as drawn',
  );
}

/** Whether one stretch alone is partly hidden, and the rest so plain that it settles the outline. */
function isOnlyCovered({ zones }: FitScore, worstShare: number, spread: number): boolean {
  const plain = zones.filter((share) => share >= PLAIN_ZONE);
  return worstShare >= COVERED_ZONE && plain.length >= ZONES.length - 1 && spread <= COVERED_SPREAD;
}

function settingsDoubt(alike: readonly Candidate[], spread: number, quick: boolean): Finding | null {
  if ((quick || alike.length >= ALIKE_SETTINGS) && spread <= ACCEPT_SPREAD) return null;
  return doubt(
    'settings-disagree',
    'outline',
    spread > ACCEPT_SPREAD
      ? `several readings of the picture differ by ${(100 * spread).toFixed(1)} % in width`
      : 'no second reading of the picture confirms this outline',
    `agreement within ${100 * ACCEPT_SPREAD} %`,
    'compare the outline with the picture and drag one point where it leaves the edge',
  );
}

function rivalDoubt(candidates: readonly Candidate[]): Finding | null {
  const leader = candidates[0] as Candidate;
  const rival = candidates.find(
    (one) =>
      leader.score.score - one.score.score < RIVAL_SCORE &&
      positionGapMm(one.fit, leader.fit) > 0.05 * TEMPLATE_LENGTH_MM &&
      isBodyLike(one.score),
  );
  if (!rival) return null;
  return doubt(
    'rival-outline',
    'ends of the body',
    'a second outline that ends elsewhere is nearly as likely',
    'one plain outline',
    'click where the lower end of the body lies on the centre line',
  );
}

/** Whether an outline could be a body's at all: an upside-down one has its bouts the wrong way round. */
function isBodyLike(score: FitScore): boolean {
  return score.strain <= ACCEPT_STRAIN && ratioDoubt(score) === null;
}

function ratioDoubt(final: FitScore): Finding | null {
  const { lower, upper, waist } = final.ratios;
  const values = { length: TEMPLATE_LENGTH_MM / lower, upper: upper / lower, waist: waist / lower, lower: 1 };
  const names = {
    length: 'length to lower bout',
    upper: 'upper to lower bout',
    waist: 'waist to lower bout',
    lower: '',
  };
  for (const [name, least, most] of RATIOS) {
    const value = values[name];
    if (value >= least && value <= most) continue;
    return doubt(
      'odd-proportions',
      names[name],
      `${value.toFixed(2)} in the picture`,
      `${least} to ${most}, as bodies of this kind have`,
      'check whether the camera was tilted or the instrument stands aslant; if not, confirm the outline',
    );
  }
  return null;
}

function boardDoubt(board: BoardPlace | null, ribs: RibsShown | null): Finding | null {
  const limitMm = ribs !== null && ribs.share < RIBS_POSSIBLE ? ACCEPT_LONE_BOARD_MM : ACCEPT_BOARD_MM;
  if (board === null || Math.abs(board.offsetMm) <= limitMm) return null;
  return doubt(
    'turned',
    'fingerboard',
    `its middle stands ${Math.abs(board.offsetMm).toFixed(0)} mm beside the centre line`,
    `${limitMm} mm or less`,
    'check whether the instrument was turned about its long axis; photograph it squarely',
  );
}

function lineDoubt({ bass, treble }: LineShares): Finding | null {
  const most = Math.max(bass, treble);
  if (most <= ACCEPT_LINE_SHARE) return null;
  return doubt(
    'line-not-edge',
    `${bass > treble ? 'bass' : 'treble'} side`,
    `${Math.round(100 * most)} % of what was followed here is a line with one colour on either side: it may be the purfling`,
    'an edge between the body and what it lies on',
    'draw a line on the body there, between the purfling and the edge, or photograph it on a ground of another colour',
  );
}

function ribsDoubt(ribs: RibsShown | null): Finding | null {
  if (ribs === null || ribs.share < RIBS_SHARE || ribs.darker > RIBS_DARKER) return null;
  return doubt(
    'ribs-shown',
    `edge ${whereTo(ribs.towards)} in the picture`,
    `the ribs seem to show inside the outline on ${Math.round(100 * ribs.share)} % of it: what was followed may be the far plate`,
    'the edge of the plate that faces the camera',
    'photograph it with the lens straight above its middle and farther away, or drag points there onto the near edge',
  );
}

function whereTo({ x, y }: RibsShown['towards']): string {
  if (Math.abs(x) > Math.abs(y)) return x > 0 ? 'to the right' : 'to the left';
  return y > 0 ? 'below' : 'above';
}

function strainDoubt(final: FitScore): Finding | null {
  if (final.strain <= ACCEPT_STRAIN) return null;
  return doubt(
    'unusual-shape',
    'outline',
    `its shape lies ${final.strain.toFixed(1)} spreads from the usual`,
    `${ACCEPT_STRAIN} or less`,
    'confirm that this is a body of the violin family with four corners',
  );
}

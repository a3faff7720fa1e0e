import { asin } from '../base/index.ts';
import { bulgeOfSweep, type Chain } from '../curve/index.ts';
import { boardThickness, boardWidth } from '../instrument/index.ts';
import { nameLines } from './archGaugeLettering.ts';
import type { Drawing } from './drawing.ts';
import {
  blockHeightMm,
  corners,
  figure,
  LEAST_CARD_MM,
  MARGIN_MM,
  mm,
  type NeckPlan,
  neckPiece,
  straightChain,
  textBlock,
} from './neckPiece.ts';

/** Gauges of the fingerboard: its section at three places, the hollow under its end, its scoop along both outer strings. */
export function boardDrawings(parts: NeckPlan): readonly Drawing[] {
  const { board, neckStopMm } = parts.neck.sizes;
  return [
    sectionGauge(parts, 'nut', 'at the nut', 0),
    sectionGauge(parts, 'edge', 'over the edge of the top', neckStopMm),
    sectionGauge(parts, 'end', 'at its end', board.lengthMm),
    ...hollowGauge(parts),
    scoopGauge(parts),
  ];
}

/** mm. Legs of a section gauge beside the board. */
const LEG_MM = 13;

function sectionGauge({ plan, neck }: NeckPlan, name: string, where: string, alongMm: number): Drawing {
  const { board } = neck.sizes;
  const half = boardWidth(board, alongMm) / 2;
  const thickMm = boardThickness(board, alongMm);
  const outer = Math.max(half + LEG_MM, LEAST_CARD_MM / 2);
  const roomMm = 2 * outer - 2 * MARGIN_MM;
  const texts = [
    `BOARD · ${where}`,
    ...nameLines(plan.name, roomMm),
    `${figure(2 * half)} wide, sides ${figure(board.sideMm)}`,
    `middle ${figure(thickMm)}, round R ${figure(board.radiusMm)}`,
  ];
  const highMm = thickMm + blockHeightMm(texts.length) + 2 * MARGIN_MM;
  const sweepRad = 2 * asin(half / board.radiusMm);
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...corners([half, 0], [outer, 0], [outer, highMm], [-outer, highMm], [-outer, 0], [-half, 0]),
      { x: -half, y: board.sideMm, bulge: bulgeOfSweep(-sweepRad) },
      ...corners([half, board.sideMm]),
    ],
  };
  return neckPiece(`board-section-${name}`, `Fingerboard, section ${where}`, body, {
    lettering: textBlock(texts, { x: -outer + MARGIN_MM, y: highMm - MARGIN_MM }, roomMm),
    notes: [
      `Stands over the board on a flat bench, ${alongMm === 0 ? 'at the nut' : `${mm(alongMm)} from the nut`}: when its legs touch the bench, width, sides, round and thickness are right. Checked before the board is scooped; the round is a radius of ${mm(board.radiusMm)}.`,
    ],
  });
}

/** mm. Shoulders of the hollow's gauge on the flat beside it. */
const SHOULDER_MM = 5;

function hollowGauge({ plan, neck }: NeckPlan): readonly Drawing[] {
  const { hollow, sizes } = neck;
  if (!hollow) return [];
  const half = hollow.widthMm / 2;
  const outer = Math.max(half + SHOULDER_MM, LEAST_CARD_MM / 2);
  const roomMm = 2 * outer - 2 * MARGIN_MM;
  const thickMm = boardThickness(sizes.board, sizes.board.lengthMm);
  const texts = [
    'BOARD · hollow under the end',
    ...nameLines(plan.name, roomMm),
    `${figure(hollow.depthMm)} deep, leaves ${figure(thickMm - hollow.depthMm)}`,
  ];
  const lowMm = -blockHeightMm(texts.length) - 2 * MARGIN_MM;
  const sweepRad = 2 * asin(half / hollow.radiusMm);
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...corners([-outer, 0], [-outer, lowMm], [outer, lowMm], [outer, 0]),
      { x: half, y: 0, bulge: bulgeOfSweep(hollow.depthMm > half ? 2 * Math.PI - sweepRad : sweepRad) },
      ...corners([-half, 0]),
    ],
  };
  return [
    neckPiece('board-hollow', 'Fingerboard, hollow under its end', body, {
      lettering: textBlock(texts, { x: -outer + MARGIN_MM, y: -MARGIN_MM }, roomMm),
      notes: [
        `Held under the end of the board with its shoulders on the flat underside. The hollow begins ${mm(hollow.fromNutMm)} from the nut, beyond the edge of the top, and runs out there; ${mm(thickMm - hollow.depthMm)} stay in the middle. Gouge toward the end, the board held in a cradle.`,
      ],
    }),
  ];
}

/** mm. Height of the straight-edge between its two working edges, at their ends. */
const STRAIGHT_EDGE_MM = 24;

function scoopGauge({ plan, neck }: NeckPlan): Drawing {
  const { scoop, sizes } = neck;
  const { lengthMm } = sizes.board;
  const bulge = (radiusMm: number): number => bulgeOfSweep(2 * asin(lengthMm / 2 / radiusMm));
  const high = STRAIGHT_EDGE_MM;
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      { x: 0, y: 0, bulge: bulge(scoop.bassRadiusMm) },
      { x: lengthMm, y: 0, bulge: 0 },
      { x: lengthMm, y: high, bulge: bulge(scoop.trebleRadiusMm) },
      { x: 0, y: high, bulge: 0 },
    ],
  };
  const roomMm = lengthMm - 2 * MARGIN_MM;
  const texts = [
    `SCOOP · ${plan.name}`,
    `this edge along the lowest string: ${figure(scoop.bassMm, 2)}; the other along the highest: ${figure(scoop.trebleMm, 2)}`,
  ];
  return neckPiece('board-scoop', 'Fingerboard, scoop', body, {
    scored: [
      straightChain(false, [
        [lengthMm / 2, 0],
        [lengthMm / 2, 4],
      ]),
    ],
    lettering: textBlock(texts, { x: MARGIN_MM, y: high - MARGIN_MM - 1 }, roomMm),
    notes: [
      `As long as the board. Laid along the line of the lowest string from nut to end it touches all along when the board is hollowed by ${mm(scoop.bassMm, 2)} half way; turned over, along the highest string, by ${mm(scoop.trebleMm, 2)}. Between them it changes evenly, ${mm(scoop.middleMm, 2)} in the middle; the round half way along is then R ${figure(scoop.acrossRadiusMm)}. With the same round all along the middle would have ${mm(scoop.middleOfOneRoundMm, 2)}.`,
      'Scrape and plane with the grain; check with a true straight-edge too: paper is not straight to a tenth of a millimetre over this length, cut it from plywood or metal.',
    ],
  });
}

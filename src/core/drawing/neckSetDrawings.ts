import { accept, asin, atan, type Checked, cos, refuse, sin } from '../base/index.ts';
import { boundsOf, bulgeOfSweep, type Chain, intersections, placeChain, subChain } from '../curve/index.ts';
import { boardThickness, gaugePlace, type PlateArch, stationArcs } from '../instrument/index.ts';
import { nameLines } from './archGaugeLettering.ts';
import type { Drawing } from './drawing.ts';
import {
  blockHeightMm,
  corners,
  degrees,
  figure,
  MARGIN_MM,
  mm,
  type NeckPlan,
  neckPiece,
  straightChain,
  textBlock,
} from './neckPiece.ts';
import { letteringScale } from './outlineDrawingsMarks.ts';

/**
 * Gauges by which the neck is set: projection at the bridge, overstand and angle at the edge, height of the board's end, and
 * a frame over the body that centres the board and shows twist. Faults: those of fitting the cross arches.
 */
export function neckSetDrawings(parts: NeckPlan): Checked<readonly Drawing[]> {
  const bodyMm = parts.plan.outline.bodyLengthMm;
  const { sizes, set } = parts.neck;
  const scale = letteringScale(bodyMm);
  const bridge = crossEdge(parts.top, bodyMm - sizes.bodyStopMm, (CARD_MM * Math.max(1, scale)) / 2);
  const endMm = bodyMm - set.boardEndFromTopEndMm;
  const end = crossEdge(parts.top, endMm, (CARD_MM * scale) / 2);
  const place = gaugePlace(parts.top, endMm);
  if (!bridge.ok || !end.ok || !place.ok)
    return refuse(...[bridge, end, place].flatMap((one) => (one.ok ? [] : one.faults)));
  return accept([
    projectionGauge(parts, bridge.value),
    overstandGauge(parts),
    boardEndGauge(parts, end.value),
    centreFrame(parts, place.value.edgeHalfWidthMm),
  ]);
}

/** mm at the usual size: width of the cards that stand on the top. */
const CARD_MM = 56;

/** mm. Notch for the straight-edge over the board, how deep, and marks beside it. */
const NOTCH_MM = { wide: 12, deep: 7, mark: 5 };

/** mm. Marks over and under the projection. */
const MARKS_MM = [-1, 1] as const;

/** mm at the usual size. */
const MARK_MM = 4;

function projectionGauge({ plan, top, neck }: NeckPlan, foot: Chain<'drawing'>): Drawing {
  const { sizes, set } = neck;
  const box = boundsOf(foot);
  const half = box.max.x;
  const floorMm = box.max.y + sizes.projectionMm;
  const highMm = floorMm + NOTCH_MM.deep;
  const notch = NOTCH_MM.wide / 2;
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...foot.vertices,
      ...corners(
        [half, highMm],
        [notch, highMm],
        [notch, floorMm],
        [-notch, floorMm],
        [-notch, highMm],
        [-half, highMm],
      ),
    ],
  };
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = [`PROJECTION ${figure(sizes.projectionMm)} · bridge line`, ...nameLines(plan.name, roomMm)];
  return neckPiece('projection-gauge', 'Projection at the bridge', body, {
    scored: [
      ...MARKS_MM.flatMap((by) =>
        [-1, 1].map((side) =>
          straightChain(false, [
            [side * notch, floorMm + by],
            [side * (notch + NOTCH_MM.mark), floorMm + by],
          ]),
        ),
      ),
      straightChain(false, [
        [0, floorMm - MARK_MM],
        [0, floorMm],
      ]),
    ],
    lettering: textBlock(texts, { x: -half + MARGIN_MM, y: floorMm - MARK_MM - 1 }, roomMm),
    notes: [
      `Stands across the top on the bridge line, ${mm(sizes.bodyStopMm)} from the upper end, the mark on the joint. A straight-edge along the middle of the board lies on the floor of the notch; each mark beside it is ${mm(1)} more or less. It comes to a bridge ${mm(set.bridgeHeightMm)} high in the middle.`,
      `Its foot is the finished arch of the top, ${mm(box.max.y - top.numbers.edgeHeightMm)} over the edge. Usual tolerance ${mm(0.5)}, from memory; the projection sinks by a few tenths once the strings pull.`,
    ],
  });
}

/** mm at the usual size: what of the overstand gauge lies along the neck and over the body, and its foot on the edge. */
const ALONG_MM = { neck: 72, body: 26, foot: 4, high: 21 };

function overstandGauge({ plan, neck }: NeckPlan): Drawing {
  const scale = letteringScale(plan.outline.bodyLengthMm);
  const { sizes, set } = neck;
  const angle = set.neckAngleRad;
  const [neckMm, bodyMm, footMm] = [ALONG_MM.neck, ALONG_MM.body, ALONG_MM.foot].map(
    (each) => each * scale,
  ) as [number, number, number];
  // Along the glue line, zero over the edge of the top; the foot stands square to the edge.
  const at = (xMm: number, zMm: number): readonly [number, number] => {
    const z = zMm - sizes.overstandMm;
    return [xMm * cos(angle) + z * sin(angle), -xMm * sin(angle) + z * cos(angle)];
  };
  const onLine = (xMm: number): readonly [number, number] => [xMm / cos(angle), 0];
  const texts = [
    `OVERSTAND ${figure(sizes.overstandMm)} · neck angle ${degrees(angle)}`,
    plan.name,
    'lower edge along the glue line of the board, foot on the edge of the top',
  ];
  const highMm = blockHeightMm(texts.length) + 2 * MARGIN_MM;
  const body = straightChain(true, [
    [-neckMm, 0],
    onLine(0),
    at(0, 0),
    at(footMm, 0),
    onLine(footMm),
    [bodyMm, 0],
    [bodyMm, highMm],
    [-neckMm, highMm],
  ]);
  return neckPiece('overstand-gauge', 'Overstand and neck angle', body, {
    lettering: textBlock(
      texts,
      { x: -neckMm + MARGIN_MM, y: highMm - MARGIN_MM },
      neckMm + bodyMm - 2 * MARGIN_MM,
    ),
    notes: [
      `Held flat against the side of neck and board, the lettered end toward the nut, its foot on the edge of the top beside the mortise with the outer side of the foot level with the end of the plate. When its edge covers the glue line all along, overstand and angle are both right; ${mm(0.3)} either way is usual, from memory. Turn it over for the other side.`,
    ],
  });
}

function boardEndGauge({ plan, neck }: NeckPlan, foot: Chain<'drawing'>): Drawing {
  const { set } = neck;
  const box = boundsOf(foot);
  const half = box.max.x;
  const highMm = box.max.y + set.boardEndOverTopMm;
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [...foot.vertices, ...corners([half, highMm], [-half, highMm])],
  };
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = [`BOARD END ${figure(set.boardEndOverTopMm)}`, ...nameLines(plan.name, roomMm)];
  // The sides are lower than the middle by the fall of the arch.
  const freeMm = highMm - MARK_MM - box.max.y - MARGIN_MM / 2;
  return neckPiece('board-end-gauge', 'Height of the end of the board', body, {
    scored: [
      straightChain(false, [
        [0, highMm - MARK_MM * 0.75],
        [0, highMm],
      ]),
    ],
    lettering: textBlock(texts, { x: -half + MARGIN_MM, y: highMm - MARK_MM }, roomMm, {
      scale: Math.min(1, freeMm / blockHeightMm(texts.length)),
    }),
    notes: [
      `Stands across the top against the end of the board, ${mm(set.boardEndFromTopEndMm)} from the upper end of the body: the middle of the board comes level with its upper edge. It is what the projection brings; where it does not agree with the projection gauge, the board is bent or its thickness is off.`,
    ],
  });
}

/** mm at the usual size: feet of the frame outside and inside the edge, the beam over the board, air over the arch. */
const FRAME_MM = { outside: 9, inside: 5, beam: 19, air: 3 };

function centreFrame({ plan, neck }: NeckPlan, edgeHalfMm: number): Drawing {
  const scale = letteringScale(plan.outline.bodyLengthMm);
  const { sizes, set } = neck;
  const { board } = sizes;
  const [outside, inside, air] = [FRAME_MM.outside, FRAME_MM.inside, FRAME_MM.air].map(
    (each) => each * scale,
  ) as [number, number, number];
  const half = board.widthAtEndMm / 2;
  const crownMm = set.boardEndOverEdgeMm;
  const archMm = sizes.archAtBoardEndMm + air;
  const sideMm = crownMm - (boardThickness(board, board.lengthMm) - board.sideMm);
  const texts = [`BOARD ON CENTRE · end ${figure(crownMm)} over the edge`, plan.name, 'seen from the bridge'];
  const highMm = crownMm + blockHeightMm(texts.length) + 2 * MARGIN_MM;
  const sweepRad = 2 * asin(half / board.radiusMm);
  const [outer, inner] = [edgeHalfMm + outside, edgeHalfMm - inside];
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...corners(
        [inner, 0],
        [outer, 0],
        [outer, highMm],
        [-outer, highMm],
        [-outer, 0],
        [-inner, 0],
        [-inner, archMm],
        [-half, archMm],
      ),
      { x: -half, y: sideMm, bulge: bulgeOfSweep(-sweepRad) },
      ...corners([half, sideMm], [half, archMm], [inner, archMm]),
    ],
  };
  return neckPiece('centre-frame', 'Board on centre', body, {
    scored: [-1, 1].map((side) =>
      straightChain(false, [
        [side * edgeHalfMm, 0],
        [side * edgeHalfMm, Math.min(archMm, crownMm) - 1],
      ]),
    ),
    lettering: textBlock(texts, { x: -outer + MARGIN_MM, y: highMm - MARGIN_MM }, 2 * outer - 2 * MARGIN_MM),
    notes: [
      `Stands on the edges of the top over the end of the board, ${mm(set.boardEndFromTopEndMm)} from the upper end. With the neck right, the board fills its round, both feet stand, and the edges of the body come to the two lines alike: the neck is on centre, as high as it must be, and not twisted. A light under one foot is twist.`,
      `Lines ${mm(2 * edgeHalfMm)} apart. One millimetre off the centre at the bridge is ${degrees(atan(1 / (sizes.neckStopMm + sizes.bodyStopMm)))} at the root.`,
    ],
  });
}

/** The finished outside of the top across, within a distance of the centre line; over its gluing face, from bass to treble. */
function crossEdge(top: PlateArch, yMm: number, halfMm: number): Checked<Chain<'drawing'>> {
  const place = gaugePlace(top, yMm);
  if (!place.ok) return place;
  const whole = stationArcs(top, place.value, 'finished');
  if (!whole.ok) return whole;
  const highMm = top.archHeightMm + 1;
  const at = (xMm: number) =>
    intersections(whole.value, {
      closed: false,
      vertices: [0, highMm].map((y) => ({ x: xMm, y, bulge: 0 })),
    })[0]?.a;
  const [from, to] = [at(-halfMm), at(halfMm)];
  const part = from && to ? subChain(whole.value, from, to) : whole.value;
  return accept(placeChain<'drawing', 'section'>(part, { turnRad: 0, shift: [0, 0] }));
}

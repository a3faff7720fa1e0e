import { hypot } from '../base/index.ts';
import { type Chain, sampleChain } from '../curve/index.ts';
import {
  boardThickness,
  type Instrument,
  insideHeight,
  neckPlace,
  plateHeight,
} from '../instrument/index.ts';
import type { ShownLine } from './shownLine.ts';
import type { ShownSpan } from './shownSpan.ts';

export type SideKind =
  | 'ribs'
  | 'top'
  | 'back'
  | 'post'
  | 'neck'
  | 'head'
  | 'board'
  | 'nut'
  | 'bridge'
  | 'saddle'
  | 'tailpiece'
  | 'string';

/**
 * The whole instrument from the bass side, its plates cut along the middle. Millimetres: x from the upper end of the top
 * toward the tail, so that the neck lies at negative x; y down from the plane of the edge.
 */
export interface ShownSide {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
  readonly lines: readonly ShownLine<SideKind>[];
  readonly spans: readonly ShownSpan[];
  readonly neckAngleRad: number;
  readonly breakAngleRad: number;
}

type Pair = readonly [x: number, y: number];

/** mm: places along the plates, chords of arcs, how far inside the edge a plate ends. */
const STEP_MM = 1;
const CHORD_MM = 0.03;
const WITHIN_MM = 0.02;

/** Numbers that a hand on a part is on. */
const ANSWERS: Readonly<Record<SideKind, readonly string[]>> = {
  ribs: ['ribHeightNeck', 'ribHeightTail'],
  top: ['archHeightTop', 'stop'],
  back: ['archHeightBack'],
  post: ['postDiameter', 'post.length'],
  neck: [
    'neckStop',
    'overstand',
    'neck.overstand',
    'neckAngle',
    'neck.angle',
    'neckThicknessNut',
    'neckThicknessHeel',
    'buttonHeight',
  ],
  head: ['headLength', 'headTop', 'headDepth'],
  board: ['boardLength', 'boardRadius', 'projection', 'neck.projection', 'boardEndHeight', 'neck.boardEnd'],
  nut: ['nutDepth', 'stringNutBass', 'stringNutTreble'],
  bridge: ['bridgeHeight', 'bridge.height', 'bridgeTopThickness', 'bridgeFootThickness'],
  saddle: ['saddleHeight', 'saddleDepth', 'saddleCrest'],
  tailpiece: ['tailpieceLength', 'afterLength', 'strings.afterLength', 'tailGutGap'],
  string: ['stringLength', 'neck.stringLength', 'strings.pull', 'tuningA'],
};

/** The side view of an instrument: how neck, board, bridge and strings hang together. */
export function shownSide(instrument: Instrument): ShownSide {
  const { design, neck, setUp, head, plates, plan, hollows } = instrument;
  const value = (name: keyof typeof design.values): number => design.values[name]?.value ?? Number.NaN;
  const { sizes, set } = neck;
  const length = plan.outline.bodyLengthMm;
  const edge = value('edgeHeightTop');
  const rib = (x: number) => {
    const { heightNeckMm, heightTailMm } = plan.ribs;
    return heightNeckMm + ((heightTailMm - heightNeckMm) * x) / length;
  };
  const inset = plan.ribs.outer.insetMm;
  const onNeck = (along: number, up: number): Pair => {
    const { xMm, zMm } = neckPlace(sizes, set.neckAngleRad, along, up);
    return [xMm, -zMm];
  };
  const onTop = (x: number, height: number): Pair => [x, edge - height];
  const onBack = (x: number, height: number): Pair => [x, edge + rib(x) + height];
  const places = Array.from({ length: Math.ceil(length / STEP_MM) + 1 }, (_, index) =>
    Math.min(length - WITHIN_MM, Math.max(WITHIN_MM, index * STEP_MM)),
  );
  const plateCut = (plate: 'top' | 'back', place: (x: number, height: number) => Pair) => [
    ...places.map((x) => place(x, plateHeight(plates[plate], 0, length - x, 'finished'))),
    ...places.toReversed().map((x) => place(x, insideHeight(hollows[plate], 0, length - x))),
  ];
  const stop = sizes.bodyStopMm;
  const archZ = sizes.archAtBridgeMm;
  const bridgeZ = set.bridgeOverEdgeMm;
  const [foot, tip] = [value('bridgeFootThickness'), value('bridgeTopThickness')];
  const nutUp = boardThickness(sizes.board, 0) + sizes.stringsAtNutMm;
  const nut = onNeck(0, nutUp);
  const saddleX = stop + setUp.saddle.fromBridgeMm;
  const saddle: Pair = [saddleX, -setUp.saddle.overEdgeMm];
  const rear = hypot(saddleX - stop, bridgeZ - setUp.saddle.overEdgeMm);
  const onRear = (along: number): Pair => [
    stop + ((saddleX - stop) * along) / rear,
    -bridgeZ + ((bridgeZ - setUp.saddle.overEdgeMm) * along) / rear,
  ];
  const fret = setUp.afterLengthMm;
  const tail = fret + (design.values.tailpieceLength?.value ?? setUp.tailpieceMostMm);
  const { x: postAcross, y: postUp } = hollows.barAndPost.post.from;
  const postX = length - postUp;
  const boardEnd = onNeck(sizes.board.lengthMm, boardThickness(sizes.board, sizes.board.lengthMm));
  const lines = [
    filled('ribs', [
      [inset, edge],
      [length - inset, edge],
      [length - inset, edge + rib(length - inset)],
      [inset, edge + rib(inset)],
    ]),
    filled('back', plateCut('back', onBack)),
    filled('post', [
      ...[-1, 1].map(
        (side): Pair => [
          postX + (side * value('postDiameter')) / 2,
          edge - insideHeight(hollows.top, postAcross, postUp),
        ],
      ),
      ...[1, -1].map(
        (side): Pair => [
          postX + (side * value('postDiameter')) / 2,
          edge + rib(postX) + insideHeight(hollows.back, postAcross, postUp),
        ],
      ),
    ]),
    filled('top', plateCut('top', onTop)),
    filled(
      'neck',
      pairsOf(neck.shape.side).map(([along, up]) => onNeck(along, up)),
    ),
    filled(
      'head',
      pairsOf(head.profile.outline).map(([behind, fromNut]) => onNeck(-fromNut, -behind)),
    ),
    filled(
      'board',
      [
        [0, 0],
        [sizes.board.lengthMm, 0],
        [sizes.board.lengthMm, boardThickness(sizes.board, sizes.board.lengthMm)],
        [0, boardThickness(sizes.board, 0)],
      ].map(([along, up]) => onNeck(along as number, up as number)),
    ),
    filled(
      'nut',
      [
        [0, 0],
        [0, nutUp],
        [-value('nutDepth'), nutUp - 1],
        [-value('nutDepth'), 0],
      ].map(([along, up]) => onNeck(along as number, up as number)),
    ),
    filled('bridge', [
      [stop - foot / 2, -archZ],
      [stop + foot / 2, -archZ],
      [stop + foot / 2, -(archZ + 2)],
      [stop + tip / 2, -bridgeZ],
      [stop - tip / 2, -bridgeZ],
      [stop - foot / 2, -(archZ + 2)],
    ]),
    filled('saddle', [
      [length - value('saddleDepth'), 0],
      [length, 0],
      [length, -setUp.saddle.overEdgeMm + 2],
      saddle,
      [length - value('saddleDepth'), -1],
    ]),
    open('string', [nut, [stop, -bridgeZ], saddle]),
    filled('tailpiece', [
      onRear(fret),
      onRear(tail),
      below(onRear(tail), TAILPIECE_MM),
      below(onRear(fret), TAILPIECE_MM),
    ]),
  ];
  const ys = lines.flatMap(({ places: at }) => at.map(([, y]) => y));
  const xs = lines.flatMap(({ places: at }) => at.map(([x]) => x));
  return {
    leftMm: Math.min(...xs),
    rightMm: Math.max(...xs),
    topMm: Math.min(...ys),
    bottomMm: Math.max(...ys),
    lines: lines.map(({ line }) => line),
    spans: [
      { name: 'stringLength', from: nut, to: [stop, -bridgeZ], valueMm: set.stringLengthMm },
      { name: 'neckStop', from: onNeck(0, 0), to: onNeck(sizes.neckStopMm, 0), valueMm: sizes.neckStopMm },
      { name: 'stop', from: [0, 0], to: [stop, 0], valueMm: stop },
      {
        name: 'projection',
        from: [stop, -archZ],
        to: [stop, -archZ - sizes.projectionMm],
        valueMm: sizes.projectionMm,
      },
      { name: 'overstand', from: [0, 0], to: onNeck(sizes.neckStopMm, 0), valueMm: sizes.overstandMm },
      {
        name: 'boardLength',
        from: onNeck(0, 0),
        to: onNeck(sizes.board.lengthMm, 0),
        valueMm: sizes.board.lengthMm,
      },
      {
        name: 'boardEndHeight',
        from: [boardEnd[0], -sizes.archAtBoardEndMm],
        to: boardEnd,
        valueMm: set.boardEndOverTopMm,
      },
      { name: 'bridgeHeight', from: [stop, -archZ], to: [stop, -bridgeZ], valueMm: set.bridgeHeightMm },
    ],
    neckAngleRad: set.neckAngleRad,
    breakAngleRad: setUp.angles.breakAngleRad,
  };
}

/** mm that a tailpiece is thick, for the picture alone. */
const TAILPIECE_MM = 5;

function below([x, y]: Pair, mm: number): Pair {
  return [x, y + mm];
}

function pairsOf(chain: Chain<'section'> | Chain<'head'>): readonly Pair[] {
  return sampleChain(chain as Chain<'section'>, CHORD_MM).map(({ x, y }): Pair => [x, y]);
}

function filled(kind: SideKind, places: readonly Pair[]) {
  return { places, line: { kind, path: `${pathOf(places)}Z`, answersTo: ANSWERS[kind] } };
}

function open(kind: SideKind, places: readonly Pair[]) {
  return { places, line: { kind, path: pathOf(places), answersTo: ANSWERS[kind] } };
}

function pathOf(places: readonly Pair[]): string {
  return `M${places.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`;
}

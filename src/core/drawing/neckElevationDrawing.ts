import { accept, type Checked } from '../base/index.ts';
import { boundsOf, type Chain, intersections, mirrorChain, placeChain, subChain } from '../curve/index.ts';
import { boardThickness, longArcs, neckPlace } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import type { Drawing, DrawnLine } from './drawing.ts';
import { degrees, mm, type NeckPlan, straightChain } from './neckPiece.ts';
import { drawnLine, letteringScale } from './outlineDrawingsMarks.ts';

/** mm at the usual size: how far behind the bridge the body is drawn. */
const BEHIND_BRIDGE_MM = 28;

/**
 * Neck, fingerboard and body from the side at true size, from nut to bridge: to lay the neck on, and to see what every number
 * of the set means. Drawing frame: x from the upper end of the top toward the tail, y over the edge of the top; nothing is cut.
 * Faults: those of fitting the arch.
 */
export function neckElevationDrawing({ plan, top, neck }: NeckPlan): Checked<Drawing> {
  const arch = longArcs(top, 'finished');
  if (!arch.ok) return arch;
  const scale = letteringScale(plan.outline.bodyLengthMm);
  const { sizes, set, mortise, shape, bodyHeightMm } = neck;
  const { board, bodyStopMm } = sizes;
  const angle = set.neckAngleRad;
  const at = (alongMm: number, upMm: number): readonly [number, number] => {
    const { xMm, zMm } = neckPlace(sizes, angle, alongMm, upMm);
    return [xMm, zMm];
  };
  const behindMm = bodyStopMm + BEHIND_BRIDGE_MM * scale;
  const crown = archOver(arch.value, top.bodyLengthMm, top.numbers.edgeHeightMm, behindMm);
  const [nut, origin] = [at(0, boardThickness(board, 0) + sizes.stringsAtNutMm), at(0, 0)];
  const end = at(board.lengthMm, boardThickness(board, board.lengthMm));
  const neckSide = placeChain<'drawing', 'section'>(shape.side, {
    turnRad: angle,
    shift: [origin[0], origin[1]],
  });
  const lines: readonly DrawnLine[] = [
    drawnLine('draw', neckSide),
    drawnLine(
      'draw',
      straightChain(false, [
        at(0, 0),
        at(0, boardThickness(board, 0)),
        end,
        at(board.lengthMm, 0),
        at(shape.root.alongMm, 0),
      ]),
    ),
    ...(crown ? [drawnLine('draw', crown)] : []),
    // The edge of the top, the back, and the end of the body beside the neck.
    drawnLine(
      'draw',
      straightChain(false, [
        [mortise.depthAtTopMm, 0],
        [behindMm, 0],
      ]),
    ),
    drawnLine(
      'draw',
      straightChain(false, [
        [mortise.depthAtBackMm, -bodyHeightMm],
        [behindMm, -bodyHeightMm],
      ]),
    ),
    // Strings, bridge, and the board carried on to it.
    drawnLine(
      'draw',
      straightChain(false, [
        [nut[0], nut[1]],
        [bodyStopMm, set.bridgeOverEdgeMm],
        [bodyStopMm, sizes.archAtBridgeMm],
      ]),
    ),
    {
      meaning: 'draw',
      centreLine: true,
      chain: straightChain(false, [end, [bodyStopMm, sizes.archAtBridgeMm + sizes.projectionMm]]),
    },
  ];
  const boxes = lines.map(({ chain }) => boundsOf(chain));
  const corner = {
    x: Math.min(...boxes.map(({ min }) => min.x)),
    y: Math.min(...boxes.map(({ min }) => min.y)),
  };
  const wideMm = Math.max(...boxes.map(({ max }) => max.x)) - corner.x;
  return accept({
    name: 'neck-set',
    title: 'Set of the neck',
    part: 'neck',
    lines,
    lettering: captionBelow(
      [
        'SET OF THE NECK · from the side',
        plan.name,
        `neck stop ${mm(sizes.neckStopMm)}, body stop ${mm(bodyStopMm)}, strings ${mm(set.stringLengthMm)}`,
        `neck angle ${degrees(angle)}, overstand ${mm(sizes.overstandMm)}, root ${degrees(neck.rootAngleRad)} to the gluing face`,
        `projection ${mm(sizes.projectionMm)} over the top at the bridge, end of the board ${mm(set.boardEndOverTopMm)} over the top`,
        `bridge ${mm(set.bridgeHeightMm)} in the middle, strings rise ${degrees(set.frontAngleRad)}`,
        `mortise ${mm(mortise.depthAtTopMm)} at the top, ${mm(mortise.depthAtBackMm)} at the back`,
      ],
      corner,
      { scale, mostMm: wideMm },
    ),
    notes: [
      'True size, to lay the neck on before it is glued, and to see what the numbers mean. Seen along the centre line: the long-dashed line is the middle of the board carried on to the bridge.',
    ],
    count: 1,
    routes: ['print'],
    checks: [{ name: 'width', valueMm: wideMm }],
  });
}

/** The top along its centre line from its upper end to a place, over the edge, toward the tail. */
function archOver(
  arch: Chain<'section'>,
  bodyLengthMm: number,
  edgeHeightMm: number,
  toMm: number,
): Chain<'drawing'> | null {
  const turned = placeChain<'drawing', 'section'>(mirrorChain(arch), {
    turnRad: 0,
    shift: [bodyLengthMm, -edgeHeightMm],
  });
  const highMm = boundsOf(turned).max.y + 1;
  const end = intersections(
    turned,
    straightChain(false, [
      [toMm, -edgeHeightMm],
      [toMm, highMm],
    ]),
  )[0];
  const last = turned.vertices.length - 2;
  if (!end) return null;
  const ends = [
    { segment: 0, fraction: 0 },
    { segment: last, fraction: 1 },
  ] as const;
  const startsAtTail = (turned.vertices[0]?.x ?? 0) > toMm;
  return startsAtTail ? subChain(turned, end.a, ends[1]) : subChain(turned, ends[0], end.a);
}

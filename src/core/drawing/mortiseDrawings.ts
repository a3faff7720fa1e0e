import { cos, sin } from '../base/index.ts';
import { boundsOf, type Chain, mirrorChain, placeChain, reverseChain } from '../curve/index.ts';
import { upperEdge } from '../instrument/index.ts';
import { nameLines } from './archGaugeLettering.ts';
import type { Drawing } from './drawing.ts';
import { GLUE_CAUTION } from './glueCaution.ts';
import {
  blockHeightMm,
  corners,
  degrees,
  figure,
  LEAST_CARD_MM,
  MARGIN_MM,
  mm,
  type NeckPlan,
  neckPiece,
  straightChain,
  textBlock,
  upToLast,
} from './neckPiece.ts';
import { letteringScale } from './outlineDrawingsMarks.ts';

/** Templates for the joint of neck and body: button, plan and depth of the mortise, angle of the root. */
export function mortiseDrawings(parts: NeckPlan): readonly Drawing[] {
  return [buttonTemplate(parts), mortisePlan(parts), mortiseDepth(parts), rootAngle(parts)];
}

/** mm at the usual size. How far a card reaches along the edge beyond button or mortise, and marks of the centre line. */
const BESIDE_MM = 13;
const MARK_MM = 4;

function buttonTemplate({ plan, neck }: NeckPlan): Drawing {
  const { outline } = plan;
  const { button } = neck;
  const edge = cardEdge(plan, button.widthMm / 2);
  const roomMm = 2 * edge.halfMm - 2 * MARGIN_MM;
  const texts = [
    'BUTTON · back',
    ...nameLines(plan.name, roomMm),
    `${figure(button.widthMm)} wide, ${figure(button.heightMm)} beyond the edge`,
  ];
  const lowMm = edge.lowMm - 2 * MARGIN_MM - MARK_MM - blockHeightMm(texts.length);
  const body = lowered(
    {
      closed: true,
      vertices: [
        ...corners([-edge.halfMm, lowMm], [edge.halfMm, lowMm]),
        ...upToLast(edge.treble),
        ...button.edge.vertices.map(({ x, y, bulge }) => ({ x, y, bulge })),
        ...edge.bass.vertices.slice(1),
      ],
    },
    outline.bodyLengthMm,
  );
  return neckPiece('button', 'Button of the back', body, {
    scored: [
      straightChain(false, [
        [0, lowMm - outline.bodyLengthMm],
        [0, lowMm - outline.bodyLengthMm + MARK_MM],
      ]),
      straightChain(false, [
        [0, button.heightMm - 2 * MARK_MM],
        [0, button.heightMm],
      ]),
    ],
    lettering: textBlock(
      texts,
      { x: -edge.halfMm + MARGIN_MM, y: edge.lowMm - outline.bodyLengthMm - MARGIN_MM },
      roomMm,
    ),
    notes: [
      `Laid on the back with both shoulders along the edge and the marks on the joint: draw round the button. The heel of the neck is finished flush with it.`,
    ],
  });
}

function mortisePlan({ plan, neck }: NeckPlan): Drawing {
  const { outline } = plan;
  const { mortise, shape } = neck;
  const floor = shape.root.edgeWidthMm / 2;
  // As much wider or narrower than the floor as the neck is at the gluing face.
  const mouth = floor + (shape.root.mouthWidthMm - shape.root.topWidthMm) / 2;
  const edge = cardEdge(plan, mouth);
  const roomMm = 2 * edge.halfMm - 2 * MARGIN_MM;
  const floorMm = outline.bodyLengthMm - mortise.depthAtTopMm;
  const texts = [
    'MORTISE · top',
    ...nameLines(plan.name, roomMm),
    `${figure(2 * floor)} wide, ${figure(mortise.depthAtTopMm)} deep at the top`,
    `${figure(mortise.depthAtBackMm)} deep, ${figure(shape.root.backWidthMm)} wide at the back`,
  ];
  const lowMm = floorMm - 3 * MARGIN_MM - MARK_MM - blockHeightMm(texts.length);
  const body = lowered(
    {
      closed: true,
      vertices: [
        ...corners([-edge.halfMm, lowMm], [edge.halfMm, lowMm]),
        ...edge.treble.vertices,
        ...corners([floor, floorMm], [-floor, floorMm]),
        ...edge.bass.vertices,
      ],
    },
    outline.bodyLengthMm,
  );
  const onFloor = floorMm - outline.bodyLengthMm;
  return neckPiece('mortise-plan', 'Mortise, plan', body, {
    scored: [
      straightChain(false, [
        [0, onFloor - MARK_MM],
        [0, onFloor],
      ]),
      straightChain(false, [
        [0, lowMm - outline.bodyLengthMm],
        [0, lowMm - outline.bodyLengthMm + MARK_MM],
      ]),
    ],
    lettering: textBlock(texts, { x: -edge.halfMm + MARGIN_MM, y: onFloor - MARK_MM - MARGIN_MM }, roomMm),
    notes: [
      `Laid on the top with its upper edge along the edge of the plate and the marks on the joint: knife round the notch, then saw inside the line and pare to it. ${mouth < floor ? 'It is a little wider at its floor than at its mouth, as the neck is: the root goes in from above. ' : ''}Check against the root that was cut, not against the sheet: ${mm(0.1)} of play is too much.`,
      `The mortise narrows to ${mm(shape.root.backWidthMm)} at the back and deepens to ${mm(mortise.depthAtBackMm)}; ${mm(neck.block.behindMm)} of the block stay behind it.`,
      GLUE_CAUTION,
    ],
  });
}

/** mm. The card of the depth gauge, outside the body. */
const HANDLE_MM = 44;

function mortiseDepth({ plan, neck }: NeckPlan): Drawing {
  const { mortise, bodyHeightMm } = neck;
  const body = straightChain(true, [
    [-HANDLE_MM, -bodyHeightMm],
    [mortise.depthAtBackMm, -bodyHeightMm],
    [mortise.depthAtTopMm, 0],
    [-HANDLE_MM, 0],
  ]);
  const roomMm = HANDLE_MM - 2 * MARGIN_MM;
  return neckPiece('mortise-depth', 'Depth of the mortise', body, {
    scored: [
      straightChain(false, [
        [0, -bodyHeightMm],
        [0, 0],
      ]),
    ],
    lettering: textBlock(
      [
        'MORTISE · depth',
        ...nameLines(plan.name, roomMm),
        `top, above: ${figure(mortise.depthAtTopMm)}`,
        `back, below: ${figure(mortise.depthAtBackMm)}`,
      ],
      { x: -HANDLE_MM + MARGIN_MM, y: -MARGIN_MM },
      roomMm,
    ),
    notes: [
      `Stood on the button in the middle of the mortise: its slanting edge is the floor. Lay a straight-edge along the edge of the top across the mortise; the floor is right when the line comes level with it and the upper edge with the edge of the top.`,
      `The floor leans ${degrees(mortise.leanRad)} out of the square, deeper toward the back, so that the root at ${degrees(neck.rootAngleRad)} brings the board to ${degrees(neck.set.neckAngleRad)} over the edge.`,
    ],
  });
}

/** mm at the usual size: both arms of the angle, and how wide they are; the relief of its inside corner. */
const ARM_MM = { face: 75, root: 42, wide: 24 };
const RELIEF_MM = 1.5;

function rootAngle({ plan, neck }: NeckPlan): Drawing {
  const scale = Math.max(1, letteringScale(plan.outline.bodyLengthMm));
  const { rootAngleRad: angle } = neck;
  const [face, root, wide] = [ARM_MM.face * scale, ARM_MM.root * scale, ARM_MM.wide];
  // The wood lies below on the left: its gluing face along −x, its root down along this direction.
  const down = { x: -cos(angle), y: -sin(angle) };
  const out = { x: sin(angle), y: -cos(angle) };
  const outerX = (wide * (1 - out.y)) / out.x;
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...corners([-face, 0]),
      // The corner ends in a hollow, clear of the arris of the wood.
      { x: -RELIEF_MM, y: 0, bulge: -1 },
      ...corners(
        [RELIEF_MM * down.x, RELIEF_MM * down.y],
        [root * down.x, root * down.y],
        [root * down.x + wide * out.x, root * down.y + wide * out.y],
        [outerX, wide],
        [-face, wide],
      ),
    ],
  };
  const roomMm = face - MARGIN_MM;
  return neckPiece('root-angle', 'Angle of the root', body, {
    lettering: textBlock(
      [
        `ROOT ANGLE ${degrees(angle)}`,
        ...nameLines(plan.name, roomMm),
        'long arm on the gluing face, short arm on the root',
      ],
      { x: -face + MARGIN_MM, y: wide - MARGIN_MM },
      roomMm,
    ),
    notes: [
      `The long arm lies on the gluing face of the neck, the short one on the face of the root: ${degrees(angle)} between them. With the neck at ${degrees(neck.set.neckAngleRad)} it sinks the root from ${mm(neck.mortise.depthAtTopMm)} at the top to ${mm(neck.mortise.depthAtBackMm)} at the back; ${degrees(neck.mortise.evenRootAngleRad)} would sink it alike.`,
    ],
  });
}

/** The upper end of the outline on both sides of an opening, running up on the treble side and down on the bass side. */
function cardEdge({ outline }: NeckPlan['plan'], openingMm: number) {
  const halfMm = Math.max(openingMm + BESIDE_MM, LEAST_CARD_MM / 2);
  const { upperBout } = outline.half;
  const treble = upperEdge(upperBout, outline.bodyLengthMm, halfMm, openingMm) ?? {
    closed: false,
    vertices: [],
  };
  const bass = reverseChain(mirrorChain(treble));
  return {
    halfMm,
    lowMm: boundsOf(treble).min.y,
    treble: placeChain<'drawing', 'body'>(treble, { turnRad: 0, shift: [0, 0] }),
    bass: placeChain<'drawing', 'body'>(bass, { turnRad: 0, shift: [0, 0] }),
  };
}

/** Brought down so that the upper end of the body is at zero. */
function lowered(chain: Chain<'drawing'>, bodyLengthMm: number): Chain<'drawing'> {
  return placeChain<'drawing', 'drawing'>(chain, { turnRad: 0, shift: [0, -bodyLengthMm] });
}

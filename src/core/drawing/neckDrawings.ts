import { boundsOf, type Chain, placeChain } from '../curve/index.ts';
import { alongNeck, boardWidth, insideLine, type NeckSection } from '../instrument/index.ts';
import { nameLines } from './archGaugeLettering.ts';
import type { Drawing } from './drawing.ts';
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
} from './neckPiece.ts';
import { letteringScale } from './outlineDrawingsMarks.ts';

/** Templates to saw and carve the neck by: its side, its plan, three gauges of its round, and the end of its root. */
export function neckDrawings(parts: NeckPlan): readonly Drawing[] {
  return [
    sideTemplate(parts),
    planTemplate(parts),
    ...parts.neck.shape.sections.map((section) => sectionGauge(parts, section)),
    rootTemplate(parts),
  ];
}

/** mm at the usual size. Lettering on the neck itself starts this far from nut and gluing face. */
const IN_MM = { fromNut: 5, fromFace: 2.4 };

/** No unit. Letters on the neck itself, which is narrow, against those on a card. */
const ON_NECK = 0.85;

function sideTemplate({ plan, neck }: NeckPlan): Drawing {
  const scale = letteringScale(plan.outline.bodyLengthMm);
  const { shape, sizes, set, mortise, button, rootAngleRad, bodyHeightMm } = neck;
  const body = onDrawing(shape.side);
  const box = boundsOf(body);
  const at = (xMm: number, zMm: number) => {
    const { alongMm, upMm } = alongNeck(sizes, set.neckAngleRad, xMm, zMm);
    return { x: alongMm, y: upMm };
  };
  const edge = insideLine<'drawing'>(at(-button.heightMm, 0), at(bodyHeightMm, 0), body);
  // Where the plates end: what lies beyond goes into the mortise.
  const upright = insideLine<'drawing'>(at(0, -MARGIN_MM), at(0, -bodyHeightMm), body);
  const roomMm = neck.shape.sections[2]?.alongMm ?? box.max.x / 2;
  return neckPiece('neck-side', 'Neck, side', body, {
    scored: [...edge, ...upright],
    lettering: textBlock(
      [plan.name, `NECK · side, gluing face above, nut at this end; root ${degrees(rootAngleRad)}`],
      { x: IN_MM.fromNut * scale, y: -IN_MM.fromFace * scale },
      roomMm - 2 * IN_MM.fromNut * scale,
      { scale: ON_NECK * Math.min(1, scale) },
    ),
    notes: [
      `Both sides alike. The upper edge is the gluing face of the fingerboard, planed flat first; from the nut to the edge of the top ${mm(sizes.neckStopMm)}. The head goes on beyond the nut. The scored lines show the edge of the top, ${mm(sizes.overstandMm)} under the gluing face, and the end of the plates.`,
      `The root stands at ${degrees(rootAngleRad)} to the gluing face and goes ${mm(mortise.depthAtTopMm)} deep at the edge of the top, ${mm(mortise.depthAtBackMm)} at the back. Leave 2 to 3 mm on its lower end until it is fitted on the button.`,
      `The heel turns round ${mm(shape.heel.upperRadiusMm)} and runs down to the tip of the button; it is finished after the neck is set.`,
    ],
  });
}

/** mm. A root that differs less from the board carried on is the board carried on. */
const OWN_ROOT_MM = 0.02;

function planTemplate({ plan, neck }: NeckPlan): Drawing {
  const scale = letteringScale(plan.outline.bodyLengthMm);
  const { shape, sizes } = neck;
  const endMm = shape.root.alongMm;
  const half = (alongMm: number): number => boardWidth(sizes.board, alongMm) / 2;
  // Beyond the end of the plates a root of its own width leaves the line of the board.
  const root = shape.root.topWidthMm / 2;
  const isOwn = Math.abs(root - half(endMm)) > OWN_ROOT_MM;
  const side = (to: 1 | -1): readonly (readonly [number, number])[] => [
    [endMm, to * root],
    ...(isOwn ? [[sizes.neckStopMm, to * half(sizes.neckStopMm)] as const] : []),
    [0, to * half(0)],
  ];
  const body = straightChain(true, [...side(-1).toReversed(), ...side(1)]);
  const heelMm = shape.sections[2]?.alongMm ?? endMm / 2;
  const across = [heelMm, sizes.neckStopMm].flatMap((x) =>
    insideLine<'drawing'>({ x, y: -endMm }, { x, y: endMm }, body),
  );
  const roomMm = heelMm - 2 * IN_MM.fromNut * scale;
  const size = { scale: ON_NECK * Math.min(1, scale) };
  const x = IN_MM.fromNut * scale;
  return neckPiece('neck-plan', 'Neck, plan', body, {
    scored: [
      straightChain(false, [
        [0, 0],
        [endMm, 0],
      ]),
      ...across,
    ],
    lettering: [
      ...textBlock([plan.name], { x, y: half(0) - IN_MM.fromFace * scale }, roomMm, size),
      ...textBlock(
        ['NECK · plan, nut at this end; lines: heel, edge of the top'],
        { x, y: -IN_MM.fromFace * scale },
        roomMm,
        size,
      ),
    ],
    notes: [
      `The gluing face: ${mm(2 * half(0))} wide at the nut, ${mm(2 * half(sizes.neckStopMm))} at the edge of the top, ${isOwn ? 'and in the mortise' : 'carried on straight into the mortise to'} ${mm(2 * root)}. Flush with the fingerboard; saw outside the line and finish neck and board together.`,
    ],
  });
}

/** mm. Arms of a gauge of the round, beside the board, and how long their mark of the gluing face is. */
const ARM_MM = 13;
const TICK_MM = 5;

const WHERE: Readonly<Record<NeckSection['name'], string>> = {
  nut: 'near the nut',
  middle: 'middle',
  heel: 'where the heel begins',
};

function sectionGauge({ plan, neck }: NeckPlan, section: NeckSection): Drawing {
  const { widthMm, woodMm, withBoardMm, round } = section;
  const cardMm = Math.max(widthMm + 2 * ARM_MM, LEAST_CARD_MM);
  const roomMm = cardMm - 2 * MARGIN_MM;
  const texts = [
    `NECK · ${WHERE[section.name]}`,
    ...nameLines(plan.name, roomMm),
    `${figure(section.alongMm)} from the nut, ${figure(widthMm)} wide`,
    `with board ${figure(withBoardMm)}, wood ${figure(woodMm)}`,
  ];
  const armMm = neck.sizes.board.sideMm;
  const lowMm = -woodMm - 2 * MARGIN_MM - blockHeightMm(texts.length);
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...corners([-cardMm / 2, armMm], [-cardMm / 2, lowMm], [cardMm / 2, lowMm], [cardMm / 2, armMm]),
      ...corners([widthMm / 2, armMm]),
      ...round.vertices.map(({ x, y, bulge }) => ({ x, y, bulge })),
      ...corners([-widthMm / 2, armMm]),
    ],
  };
  return neckPiece(`neck-round-${section.name}`, `Round of the neck, ${WHERE[section.name]}`, body, {
    scored: [-1, 1].map((side) =>
      straightChain(false, [
        [(side * widthMm) / 2, 0],
        [side * (widthMm / 2 + TICK_MM), 0],
      ]),
    ),
    lettering: textBlock(texts, { x: -cardMm / 2 + MARGIN_MM, y: -woodMm - MARGIN_MM }, roomMm),
    notes: [
      `Pushed on from behind with the board glued, square to the gluing face, ${mm(section.alongMm)} from the nut: when the round lies in it, its arms end level with the upper arrises of the board and their marks with the glue line. Neck and board together measure ${mm(withBoardMm)} in the middle.`,
    ],
  });
}

/** mm. The bar of the root's template, over the gluing face, and its shoulders beside the root. */
const SHOULDER_MM = 8;
/** mm. From one scored line to the end of another. */
const CLEAR_MM = 1;

function rootTemplate({ plan, neck }: NeckPlan): Drawing {
  const { root } = neck.shape;
  const barMm = Math.max(root.topWidthMm + 2 * SHOULDER_MM, LEAST_CARD_MM);
  const roomMm = barMm - 2 * MARGIN_MM;
  const texts = [
    'ROOT · end of the neck',
    ...nameLines(plan.name, roomMm),
    `${figure(root.topWidthMm)} at the board, ${figure(root.backWidthMm)} at the back`,
  ];
  const highMm = blockHeightMm(texts.length) + 2 * MARGIN_MM;
  const [top, back] = [root.topWidthMm / 2, root.backWidthMm / 2];
  const body = straightChain(true, [
    [-back, -root.heightMm],
    [back, -root.heightMm],
    [top, 0],
    [barMm / 2, 0],
    [barMm / 2, highMm],
    [-barMm / 2, highMm],
    [-barMm / 2, 0],
    [-top, 0],
  ]);
  const edge = -root.edgeFromTopMm;
  return neckPiece('neck-root', 'Root of the neck, end', body, {
    scored: [
      straightChain(false, [
        [-root.edgeWidthMm / 2, edge],
        [root.edgeWidthMm / 2, edge],
      ]),
      straightChain(false, [
        [0, -root.heightMm],
        [0, edge - CLEAR_MM],
      ]),
    ],
    lettering: textBlock(texts, { x: -barMm / 2 + MARGIN_MM, y: highMm - MARGIN_MM }, roomMm),
    notes: [
      `Laid on the end of the root with the bar level with the gluing face of the board and the line in the middle of the neck. The line across is the edge of the top: ${mm(root.edgeWidthMm)} wide there, ${mm(root.edgeFromTopMm)} under the gluing face along the root. The lower end stands on the button; ${mm(root.heightMm)} in all.`,
      'Fit the cheeks of the mortise first, then the depth: a tenth of a millimetre at one cheek turns the end of the board by ten times as much.',
    ],
  });
}

function onDrawing(chain: Chain<'section'>): Chain<'drawing'> {
  return placeChain<'drawing', 'section'>(chain, { turnRad: 0, shift: [0, 0] });
}

import { hypot } from '../base/index.ts';
import { boundsOf, type Chain, placeChain } from '../curve/index.ts';
import { insideLine, insideWidth } from '../instrument/index.ts';
import type { Drawing } from './drawing.ts';
import { type HeadPlan, headPiece, headScale, withName } from './headPiece.ts';
import { figure, mm, straightChain, textBlock } from './neckPiece.ts';

/** mm on a head of 107 mm: the grip of the width gauge, and how far its shoulders stand out. */
const GRIP_MM = 30;
const SHOULDER_MM = 5;
/** No unit. Lettering on small gauges. */
const SMALL = 0.75;
/** mm. Lines of a text block but the first. */
const TEXT_MM = 2.8;

/** Gauges of the inside of the pegbox: its widths on the front and at the floor, and its depth all along. */
export function pegboxDrawings(plan: HeadPlan): readonly Drawing[] {
  return [widthGauge(plan), depthGauge(plan)];
}

/** Two tapered tongues on one grip: right the widths on the front, left those at the floor. */
function widthGauge({ head, plan }: HeadPlan): Drawing {
  const { pegbox } = head;
  const scale = headScale(head);
  const grip = (GRIP_MM * scale) / 2;
  const floorFrom = fromNut(pegbox.floor, 0);
  const floorTo = fromNut(pegbox.floor, -1);
  const front = [pegbox.opensFromMm, pegbox.opensToMm].map((at) => insideWidth(pegbox, at, 0) / 2);
  const floor = [floorFrom, floorTo].map((at) => insideWidth(pegbox, at, 1) / 2);
  const [frontNut = 0, frontThroat = 0] = front;
  const [floorNut = 0, floorThroat = 0] = floor;
  const frontMm = pegbox.opensToMm - pegbox.opensFromMm;
  const floorMm = floorTo - floorFrom;
  const high = Math.max(frontNut, floorNut) + SHOULDER_MM * scale;
  const body = straightChain(true, [
    [-grip - floorMm, -floorThroat],
    [-grip, -floorNut],
    [-grip, -high],
    [grip, -high],
    [grip, -frontNut],
    [grip + frontMm, -frontThroat],
    [grip + frontMm, frontThroat],
    [grip, frontNut],
    [grip, high],
    [-grip, high],
    [-grip, floorNut],
    [-grip - floorMm, floorThroat],
  ]);
  const size = { scale: SMALL * scale };
  const onTongue = (text: string, x: number, anchor: 'start' | 'end', roomMm: number) =>
    textBlock([text], { x, y: 1.3 * scale }, roomMm, { ...size, anchor });
  return headPiece('pegbox-widths', 'Pegbox inside, widths', body, {
    lettering: [
      ...textBlock(
        [
          'PEGBOX',
          'inside',
          withName(plan.name, TEXT_MM * SMALL * scale, 2 * grip - 4 * scale),
          `${figure(2 * frontNut)} to ${figure(2 * frontThroat)}`,
        ],
        { x: -grip + 2 * scale, y: high - 3 * scale },
        2 * grip - 4 * scale,
        size,
      ),
      ...onTongue('on the front, throat at this end', grip + 3 * scale, 'start', frontMm * 0.7),
      ...onTongue('at the floor, throat at this end', -grip - 3 * scale, 'end', floorMm * 0.7),
    ],
    notes: [
      `Laid into the opening with its grip toward the nut: the right tongue is the inside on the front, ${mm(2 * frontNut)} at the nut and ${mm(2 * frontThroat)} at the throat, the left one at the floor, ${mm(2 * floorNut)} and ${mm(2 * floorThroat)}. Both walls are right when a tongue goes in up to the grip without play; the walls lean inward, ${mm(pegbox.sizes.leanMm)} each.`,
    ],
  });
}

/** The inside in the middle of the head, to stand in the pegbox on its edge. */
function depthGauge({ head, plan }: HeadPlan): Drawing {
  const { pegbox } = head;
  const scale = headScale(head);
  // Laid down along the straight back, so that it is read level: the front of the pegbox above.
  const turnRad = head.profile.sizes.leanRad - Math.PI / 2;
  const turned = placeChain<'drawing', 'head'>(pegbox.cavity, { turnRad, shift: [0, 0] });
  const { min } = boundsOf(turned);
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: turned.vertices.map((one) => ({ ...one, x: one.x - min.x, y: one.y - min.y })),
  };
  const box = boundsOf(body);
  const long = box.max.x;
  const [upright] = insideLine<'drawing'>({ x: 0.5 * long, y: -long }, { x: 0.5 * long, y: long }, body);
  const [low = 0, high = 0] = upright?.vertices.map(({ y }) => y) ?? [];
  return headPiece('pegbox-depth', 'Pegbox inside, depth', body, {
    lettering: textBlock(
      ['PEGBOX DEPTH', withName(plan.name, TEXT_MM * SMALL * scale, 0.36 * long), 'nut to the left'],
      { x: 0.36 * long, y: (low + high) / 2 + 5 * scale },
      0.36 * long,
      { scale: SMALL * scale },
    ),
    notes: [
      `Stands on its edge in the middle of the pegbox, its smaller end at the nut. When it touches the floor all along, its upper edge lies level with the front edges of the walls and ${mm(pegbox.sizes.floorMm)} of wood is left to the back. Where it rides, wood is still to go. Measure the floor with a calliper before the last cuts.`,
    ],
  });
}

function fromNut({ vertices }: Chain<'head'>, index: number): number {
  const at = vertices.at(index);
  return hypot(at?.x ?? 0, at?.y ?? 0);
}

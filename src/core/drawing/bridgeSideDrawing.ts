import { bulgeLeaving, type Chain } from '../curve/index.ts';
import type { Drawing } from './drawing.ts';
import { blockHeightMm, corners, figure, MARGIN_MM, mm, textBlock } from './neckPiece.ts';
import { nameInLines, type SetupSheet, setupPiece } from './setupPiece.ts';

/** mm. Half the width of the card. */
const HALF_MM = 30;

/**
 * The thickness of the bridge from its side, as a slot that it is pushed into with its top first: back flat and square,
 * front an arc that leaves the foot upright and thins it to the top.
 */
export function bridgeSideDrawing({ instrument, name }: SetupSheet): Drawing {
  const { setUp, design } = instrument;
  const value = (of: 'bridgeFootThickness' | 'bridgeTopThickness'): number => design.values[of]?.value ?? 0;
  const [foot, top] = [value('bridgeFootThickness'), value('bridgeTopThickness')];
  const highMm = setUp.crownHeightMm;
  const front = { x: foot / 2, y: 0 };
  const crown = { x: top - foot / 2, y: highMm };
  const roomMm = 2 * (HALF_MM - MARGIN_MM);
  const texts = [
    `BRIDGE · ${figure(foot, 2)} and ${figure(top, 2)} thick`,
    ...nameInLines(name, roomMm),
    'tail to the left, board to the right',
  ];
  const topY = highMm + 2 * MARGIN_MM + blockHeightMm(texts.length);
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...corners([-HALF_MM, 0], [-foot / 2, 0], [-foot / 2, highMm]),
      { ...crown, bulge: -bulgeLeaving(front, Math.PI / 2, crown) },
      ...corners([front.x, front.y], [HALF_MM, 0], [HALF_MM, topY], [-HALF_MM, topY]),
    ],
  };
  return setupPiece('bridge-side', 'Thickness of the bridge', body, {
    lettering: textBlock(texts, { x: -HALF_MM + MARGIN_MM, y: topY - MARGIN_MM }, roomMm),
    notes: [
      `The bridge is pushed in with its top first until its feet come level with the lower edge, where it is ${mm(foot, 2)} thick; at the top ${mm(top, 2)}. Its back stays flat and stands square to the edge of the top; the front is planed round until it goes in. Leaning ${((setUp.angles.halvingLeanRad * 180) / Math.PI).toFixed(1)}° toward the tail it would halve the break of the strings.`,
    ],
  });
}

import { point } from '../base/index.ts';
import { pointOn, segments } from '../curve/index.ts';
import type { HeadProfile } from '../instrument/index.ts';
import type { Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';

/** mm on a head of 107 mm. */
const LETTERED_FOR_MM = 107;
const TITLE_MM = 3;
const TEXT_MM = 2.4;
const LEAST_MM = 1.3;

/** mm from the straight back of the pegbox to the nearest base line, and from line to line. */
const FROM_BACK_MM = 3.2;
const LINE_MM = 4;

/** What stands on the side template: along the straight back of the pegbox, to be read with the scroll to the right. */
export function headSideLettering({ spine, sizes }: HeadProfile, name: string): readonly Lettering[] {
  const scale = Math.max(0.75, sizes.lengthMm / LETTERED_FOR_MM);
  const [, straight] = segments(spine);
  if (!straight) return [];
  const from = pointOn(straight, 0);
  const roomMm = Math.hypot(straight.end.x - from.x, straight.end.y - from.y);
  const turnRad = Math.PI / 2 - sizes.leanRad;
  const texts: readonly (readonly [string, number])[] = [
    ['HEAD · SIDE', TITLE_MM],
    [name, TEXT_MM],
    [`length ${sizes.lengthMm.toFixed(1)}, depth ${sizes.depthMm.toFixed(1)}`, TEXT_MM],
  ];
  return texts.flatMap(([text, wishedMm], index): Lettering[] => {
    const inMm = (FROM_BACK_MM + (texts.length - 1 - index) * LINE_MM) * scale;
    const wished = wishedMm * scale;
    const heightMm = Math.min(wished, (wished * roomMm) / letteringWidthMm({ text, heightMm: wished }));
    if (heightMm < LEAST_MM) return [];
    const at = point<'drawing'>(from.x - inMm * Math.sin(turnRad), from.y + inMm * Math.cos(turnRad));
    return [{ text, at, heightMm, turnRad, anchor: 'start' }];
  });
}

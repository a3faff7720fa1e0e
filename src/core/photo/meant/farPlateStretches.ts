import { namedSide } from './meantWishes.ts';
import type { MergedPlace } from './mergeHalves.ts';

/** A stretch of one side that was set aside, as followed on ribs or far plate: heights above the lower end, and the most by which it stood out. */
export interface FarPlateStretch {
  readonly side: 'bass' | 'treble';
  readonly fromMm: number;
  readonly toMm: number;
  readonly mm: number;
}

/** Neighbouring stations that were set aside, as stretches. */
export function farPlateStretches(
  places: readonly MergedPlace[],
  lowerEndMm: number,
  face: 'top' | 'back',
): readonly FarPlateStretch[] {
  const stretches: (FarPlateStretch & { readonly last: number })[] = [];
  places.forEach(({ aside, y }, i) => {
    if (aside === null) return;
    const [side, heightMm] = [namedSide(aside.side, face), y - lowerEndMm];
    const before = stretches.at(-1);
    const grows = before !== undefined && before.last === i - 1 && before.side === side;
    const { fromMm, toMm, mm } = grows ? before : { fromMm: heightMm, toMm: heightMm, mm: 0 };
    if (grows) stretches.pop();
    stretches.push({
      side,
      fromMm: Math.min(fromMm, heightMm),
      toMm: Math.max(toMm, heightMm),
      mm: Math.max(mm, aside.mm),
      last: i,
    });
  });
  return stretches.map(({ last: _, ...stretch }) => stretch);
}

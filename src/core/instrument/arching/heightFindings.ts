import type { Finding } from '../../base/index.ts';
import type { Plate } from './archNumbers.ts';
import type { HeightLeft, HeightPull } from './drawnHeights.ts';

/** What is left of a height beyond this many times its half interval is more than it is known by. */
const OFF_TIMES = 2;

/** How many heights that stand off are told. */
const TOLD = 5;

/** Scatter above what was said for the heights by this share is told. */
const LOOSE_SHARE = 1.2;

/** In words: how closely the surface follows measured heights, where it was moved most, and which heights stand off. */
export function heightFindings(plate: Plate, pull: Omit<HeightPull, 'findings'>): readonly Finding[] {
  const at = `measuredHeights.${plate}`;
  const { left, carried, plusMinusMm, rmsBeforeMm, rmsMm, moved, outside } = pull;
  const sigmaMm = plusMinusMm / 2;
  const findings: Finding[] = [
    {
      weight: 'remark',
      code: 'heights.drawn',
      at,
      found: `${plate}: ${counted(left.length)}, ${told(rmsBeforeMm)} mm rms off the arch of the numbers, ${told(rmsMm)} mm off the surface drawn to them; it moved by ${signed(moved.mm)} mm at most, at ${place(moved)}${carriedWords(carried)}`,
      need: 'a look at the contours before wood is cut to them',
      remedy:
        'look with garland picture --of contours; take the heights out of the design to have the arch of its numbers again',
    },
  ];
  if (outside > 0)
    findings.push({
      weight: 'caution',
      code: 'heights.outside',
      at,
      found: `${plate}: ${counted(outside)} not inside the channel, which ${outside === 1 ? 'draws' : 'draw'} nothing`,
      need: 'heights of the arch inside the channel',
      remedy: 'see whether they count up from the lower end; edge and channel have values of their own',
    });
  if (rmsMm > LOOSE_SHARE * sigmaMm)
    findings.push({
      weight: 'caution',
      code: 'heights.scatter',
      at,
      found: `${plate}: heights that scatter by ${told(rmsMm)} mm about any smooth surface, known to ± ${plusMinusMm} mm as they say`,
      need: `a scatter of ${told(sigmaMm)} mm`,
      remedy: 'leave out what is worn, sunk or pushed up by post and bar, or say a larger plusMinus',
    });
  const off = left
    .filter(({ leftMm }) => Math.abs(leftMm) > OFF_TIMES * plusMinusMm)
    .toSorted((a, b) => Math.abs(b.leftMm) - Math.abs(a.leftMm));
  if (off.length > 0)
    findings.push({
      weight: 'caution',
      code: 'heights.off',
      at,
      found: `${plate}: ${off.slice(0, TOLD).map(offWords).join('; ')}${off.length > TOLD ? `; and ${off.length - TOLD} more` : ''}`,
      need: `heights within ${told(OFF_TIMES * plusMinusMm)} mm of what their neighbours say`,
      remedy: 'read them again, or leave them out where the wood has moved',
    });
  return findings;
}

function carriedWords(sections: number): string {
  if (sections === 0) return '';
  return `; the shape of ${sections} whole ${sections === 1 ? 'section' : 'sections'} is carried along the body`;
}

function offWords({ zMm, leftMm, ...at }: HeightLeft): string {
  return `${told(zMm)} at ${place(at)} stands ${told(Math.abs(leftMm))} mm too ${leftMm > 0 ? 'high' : 'low'}`;
}

function place({ xMm, yMm }: { readonly xMm: number; readonly yMm: number }): string {
  return `${Math.abs(xMm).toFixed(0)} mm beside the centre line, ${yMm.toFixed(0)} mm up`;
}

function counted(count: number): string {
  return `${count} measured ${count === 1 ? 'height' : 'heights'}`;
}

function told(mm: number): string {
  return mm.toFixed(2);
}

function signed(mm: number): string {
  return `${mm < 0 ? '−' : '+'}${told(Math.abs(mm))}`;
}

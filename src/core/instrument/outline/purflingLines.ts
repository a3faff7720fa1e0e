import { accept, type Checked, type Finding, type Point } from '../../base/index.ts';
import type { HalfOutline } from '../../curve/index.ts';
import type { PlanValues } from '../planValues.ts';
import { type SectionLines, sectionLines } from './sectionLines.ts';

/** Both lines of the purfling groove; at every corner they run to a mitre. Body frame, mm. */
export interface PurflingLines {
  readonly outer: SectionLines;
  readonly inner: SectionLines;
  /** On the centre joint, in the middle of the groove: where strips meet, under the fingerboard and the saddle. */
  readonly joints: { readonly upper: Point<'body'>; readonly lower: Point<'body'> };
  readonly findings: readonly Finding[];
}

/** No purfling line comes nearer to a corner end than this share of its distance from the edge; from memory. */
const LEAST_DEPTH_SHARE = 0.25;

/**
 * The purfling lines: parallels of each section, prolonged and trimmed to the mitre in each corner.
 *
 * Where the parallels of a wide corner would meet beyond its end, they stop on a straight end inside it, and the
 * finding `purfling.no-mitre` says so: the maker draws the point there by hand.
 * Faults: those of {@link sectionLines}.
 */
export function purflingLines(
  half: HalfOutline,
  bodyLengthMm: number,
  values: Pick<PlanValues, 'purflingToEdge' | 'purflingWidth'>,
): Checked<PurflingLines> {
  const leastDepthMm = LEAST_DEPTH_SHARE * values.purflingToEdge;
  const outer = sectionLines(half, values.purflingToEdge, leastDepthMm);
  const inner = sectionLines(half, values.purflingToEdge + values.purflingWidth, leastDepthMm);
  if (!outer.ok) return outer;
  if (!inner.ok) return inner;
  const middleMm = values.purflingToEdge + values.purflingWidth / 2;
  return accept({
    outer: outer.value,
    inner: inner.value,
    joints: { upper: { x: 0, y: bodyLengthMm - middleMm }, lower: { x: 0, y: middleMm } },
    findings: noMitre(outer.value, values.purflingToEdge),
  });
}

function noMitre(outer: SectionLines, distanceMm: number): Finding[] {
  const corners = (['lower', 'upper'] as const).filter((which) => outer[`${which}Corner`].kind === 'flat');
  if (corners.length === 0) return [];
  return [
    {
      code: 'purfling.no-mitre',
      weight: 'remark',
      at: 'purflingToEdge',
      found: `parallel purfling lines ${distanceMm} mm from the edge would meet outside the ${corners.join(' and ')} corners`,
      need: 'a mitre inside the corner',
      remedy: 'draw the point of the purfling by hand, a little nearer to the edge than elsewhere',
    },
  ];
}

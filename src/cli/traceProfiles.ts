import { basename } from 'node:path';
import {
  accept,
  type Checked,
  markerFinder,
  type ProfileOutcome,
  parseArchWords,
  parseSheetBar,
  printSpread,
  refuse,
  spreadDecimals,
  traceArchProfile,
  traceScroll,
} from '../core/index.ts';
import { readPicture } from '../host/index.ts';
import { oneOf } from './oneOf.ts';
import { progress } from './report.ts';

/** What a photograph may show besides a body from the front or the back. */
export const PROFILES = ['cross-arch', 'long-arch', 'scroll'] as const;

/** The words of a command that say how a profile is to be traced. */
export interface ProfileWords {
  readonly edgeHeight?: string;
  readonly sheetBar?: string;
  readonly face: string;
  readonly station?: string;
  readonly rightIs?: string;
  readonly drawn?: boolean;
  readonly fromEnds?: boolean;
  readonly ends?: string;
  readonly leaveOut?: boolean;
}

/** The profile in one photograph. */
export async function traceProfileFile(
  of: (typeof PROFILES)[number],
  paths: readonly string[],
  words: ProfileWords,
): Promise<Checked<ProfileOutcome>> {
  const [path, second] = paths;
  if (path === undefined || second !== undefined) return refuse(onePhotograph(second ?? ''));
  const bars = parseSheetBar(words.sheetBar, words.edgeHeight);
  if (!bars.ok) return bars;
  const face = oneOf('--face', words.face, ['top', 'back'] as const);
  if (!face.ok) return face;
  const arch =
    of === 'scroll' ? accept(null) : parseArchWords({ ...words, of, isDrawn: words.drawn === true });
  if (!arch.ok) return arch;
  progress(`Reading ${path} …`);
  const picture = await readPicture(path);
  if (!picture.ok) return picture;
  const request = {
    name: basename(path),
    picture: picture.value,
    ...(bars.value.sheetBarMm && { sheetBarMm: bars.value.sheetBarMm }),
    ...(bars.value.edgeHeightMm !== undefined && { heightMm: bars.value.edgeHeightMm }),
  };
  const finder = markerFinder();
  return arch.value
    ? traceArchProfile({ ...request, ...arch.value, face: face.value }, finder)
    : traceScroll(request, finder);
}

/** What a maker reads first of a profile. */
export function profileLines({ document }: ProfileOutcome): readonly string[] {
  const { name, of, points, plusMinus, fit, places } = document;
  const what = { crossArch: 'cross arch', longArch: 'long arch', scrollSide: 'side of the scroll' }[of];
  const lines = [
    `${name}: ${what}, ${points.length} points, ± ${plusMinus.point.toFixed(spreadDecimals(plusMinus.point))} mm each and ${(100 * plusMinus.scale).toFixed(2)} % of every length`,
  ];
  if (fit) {
    lines.push(`  rise ${printSpread(fit.rise.value, fit.rise.plusMinus)} mm`);
    if (fit.fullness) lines.push(`  fullness ${printSpread(fit.fullness.value, fit.fullness.plusMinus)}`);
    if (fit.form) lines.push(`  nearest to ${fit.form}`);
    lines.push(`  readings off the fit: ${fit.rms.toFixed(2)} mm rms, ${fit.max.toFixed(2)} mm at most`);
    lines.push(...fit.deviations.map(({ words }) => `  ${words}`));
  }
  for (const [place, { at }] of Object.entries(places ?? {}))
    lines.push(`  ${place}: ${at[0].toFixed(1)} along, ${at[1].toFixed(1)} up`);
  return lines;
}

function onePhotograph(found: string) {
  return {
    code: 'profile.one-photograph',
    at: found,
    found: 'a second photograph',
    need: 'one photograph of a profile at a time',
    remedy: 'trace each alone',
  };
}

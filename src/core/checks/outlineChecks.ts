import type { Finding } from '../base/index.ts';
import { type Design, halfOf } from '../design/index.ts';
import { NECK_TO_STOP, PROPORTIONS } from '../knowledge/index.ts';
import { findingOn, shown, valueOf } from './valueOf.ts';

/**
 * What drafting the outline has against the values: what cannot be reached is a contradiction. A length out of all
 * scale is left to `lengthFindings`, which names the slip behind it.
 */
export function outlineFindings(design: Design): readonly Finding[] {
  const half = halfOf(design);
  if (half.ok) return half.value.findings;
  return half.faults
    .filter(({ code }) => code !== 'draft.length')
    .map((fault) => ({ ...fault, weight: 'contradiction' }));
}

/** Stop and neck against the body and against each other. */
export function stopFindings(design: Design): readonly Finding[] {
  const bodyLength = valueOf(design, 'bodyLength');
  const stop = valueOf(design, 'stop');
  const neckStop = valueOf(design, 'neckStop');
  if (stop >= bodyLength)
    return [
      findingOn(['stop', 'bodyLength'], 'contradiction', 'check.stop-beyond-body', {
        found: `a stop of ${shown(stop)} mm on a body of ${shown(bodyLength)} mm`,
        need: 'a stop shorter than the body',
        remedy: 'correct the stop, or the body length',
      }),
    ];
  const findings: Finding[] = [];
  const { low, high } = PROPORTIONS.stop;
  if (stop < low * bodyLength || stop > high * bodyLength)
    findings.push(
      findingOn(['stop', 'bodyLength'], 'caution', 'check.stop-share', {
        found: `a stop of ${shown(stop / bodyLength, 3)} of the body`,
        need: `${low} to ${high} of it (the bridge stands near 0.55)`,
        remedy: 'measure the stop again from the upper end of the top to the bridge line',
      }),
    );
  return [...findings, ...neckFindings(design, stop, neckStop)];
}

/** No unit. A neck this far off its proportion is felt by a player; chosen by us. */
const NECK_OFF = 0.03;

function neckFindings(design: Design, stop: number, neckStop: number): readonly Finding[] {
  const usual = NECK_TO_STOP[design.family];
  const ratio = neckStop / stop;
  if (!(Math.abs(ratio / usual - 1) > NECK_OFF)) return [];
  const proportion = design.family === 'cello' ? '7 : 10' : '2 : 3';
  return [
    findingOn(['neckStop', 'stop'], 'caution', 'check.neck-to-stop', {
      found: `neck stop to body stop as ${shown(neckStop)} to ${shown(stop)} mm, ${shown(ratio, 3)}`,
      need: `about ${proportion}, which is ${shown(usual * stop)} mm of neck`,
      remedy: 'change the neck stop, or keep it if the player wants it so',
    }),
  ];
}

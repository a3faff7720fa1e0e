import { accept, type Checked, refuse } from '../../base/index.ts';
import type { ArchGaugeOptions } from '../../drawing/index.ts';
import { parseLength } from '../../quantity/index.ts';
import { namedOption } from '../namedOption.ts';

/** How a maker wants the gauges: as in the pack without choices where nothing is said. */
export type GaugeChoices = Pick<ArchGaugeOptions, 'atMm' | 'feet' | 'workingEdge'>;

/** Choices as typed. Faults, all at once: `make.gauge-at`, `make.gauge-feet`, `make.gauge-edge`. */
export function parseGaugeChoices(words: {
  readonly gaugeAt?: string;
  readonly gaugeFeet?: string;
  readonly gaugeEdge?: string;
}): Checked<GaugeChoices> {
  const atMm = words.gaugeAt === undefined ? accept([]) : heights(words.gaugeAt);
  const feet =
    words.gaugeFeet === undefined
      ? accept(undefined)
      : namedOption('make.gauge-feet', '--gauge-feet', words.gaugeFeet, ['edge', 'bench'] as const);
  const edge =
    words.gaugeEdge === undefined
      ? accept(undefined)
      : namedOption('make.gauge-edge', '--gauge-edge', words.gaugeEdge, ['bevelled', 'square'] as const);
  if (!atMm.ok || !feet.ok || !edge.ok)
    return refuse(...[atMm, feet, edge].flatMap((one) => (one.ok ? [] : one.faults)));
  return accept({
    ...(atMm.value.length > 0 && { atMm: atMm.value }),
    ...(feet.value && { feet: feet.value }),
    ...(edge.value && { workingEdge: edge.value }),
  });
}

/** Tenths of a millimetre tell two gauges apart. */
const TENTHS = 10;

/** Heights above the lower end, from the lowest up, each once. */
function heights(text: string): Checked<readonly number[]> {
  const read = text.split(/[,;]/).map((part) => parseLength(part));
  if (read.some((one) => !one.ok))
    return refuse({
      code: 'make.gauge-at',
      at: '--gauge-at',
      found: `"${text}"`,
      need: 'heights above the lower end with commas, such as 95,150',
      remedy: 'write each as a length in mm',
    });
  const tenths = read.flatMap((one) => (one.ok ? [Math.round(one.value.mm * TENTHS)] : []));
  return accept([...new Set(tenths)].sort((a, b) => a - b).map((tenth) => tenth / TENTHS));
}

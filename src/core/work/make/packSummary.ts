import type { Drawing } from '../../drawing/index.ts';
import type { Instrument } from '../../instrument/index.ts';
import { originText } from '../../quantity/index.ts';

/** The lengths that a maker looks for first. */
const KEY_VALUES = [
  'bodyLength',
  'upperBout',
  'waist',
  'lowerBout',
  'stop',
  'ribHeightNeck',
  'ribHeightTail',
  'overhang',
  'ribThickness',
  'archHeightBack',
  'archHeightTop',
] as const;

const PARTS: Readonly<Record<Drawing['part'], readonly [string, string]>> = {
  form: ['form sheet', 'form sheets'],
  outline: ['outline template', 'outline templates'],
  blocks: ['block pattern', 'block patterns'],
  roughing: ['roughing chart', 'roughing charts'],
  arching: ['arching gauge', 'arching gauges'],
  hollowing: ['hollowing sheet', 'hollowing sheets'],
  edge: ['edge gauge or plan', 'edge gauges and plans'],
  sheet: ['sheet', 'sheets'],
  ribs: ['rib pattern', 'rib patterns'],
  neck: ['neck or board gauge', 'neck and board gauges'],
  head: ['head template or gauge', 'head templates and gauges'],
  bar: ['bar or post template', 'bar and post templates'],
  soundHoles: ['sound hole template', 'sound hole templates'],
  setup: ['set-up gauge', 'set-up gauges'],
};

/** What a pack holds and its key lengths with their origin, line by line. */
export function packSummary(
  { design, plan }: Instrument,
  drawings: readonly Drawing[],
  fileCount: number,
): readonly string[] {
  const counts = new Map<Drawing['part'], number>();
  for (const { part } of drawings) counts.set(part, (counts.get(part) ?? 0) + 1);
  const drawn = [...counts].map(([part, count]) => `${count} ${PARTS[part][count === 1 ? 0 : 1]}`);
  return [
    `${design.name} (${design.family})`,
    ...KEY_VALUES.flatMap((name) => {
      const quantity = design.values[name];
      if (!quantity) return [];
      const spread = quantity.plusMinus === undefined ? '      ' : ` ± ${quantity.plusMinus.toFixed(1)}`;
      const length = quantity.value.toFixed(1).padStart(6);
      return [`  ${name.padEnd(15)} ${length} mm${spread}  ${originText(quantity.origin)}`];
    }),
    `  form            ${plan.form.lengthMm.toFixed(1)} × ${plan.form.widthMm.toFixed(1)} × ${plan.form.thicknessMm} mm, ${plan.form.clampHoles.length} clamp holes`,
    `  ${drawn.length > 0 ? `drawn: ${drawn.join(', ')}; ` : ''}${fileCount} files`,
  ];
}

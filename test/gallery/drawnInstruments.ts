import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Design } from '../../src/core/design/index.ts';
import type { Drawing, PaperName } from '../../src/core/drawing/index.ts';
import { derive, draft, drawInstrument, make, spokenPieces } from '../../src/core/work/index.ts';

const MEASUREMENTS = {
  violin: { family: 'violin', name: 'Violin', values: { bodyLength: 355 } },
  viola: JSON.parse(
    readFileSync(join(import.meta.dirname, '../../demo/small-viola.measurements.json'), 'utf8'),
  ) as object,
  quarter: { family: 'violin', name: 'Quarter violin', values: { bodyLength: 280 } },
  cello: { family: 'cello', name: 'Cello', values: { bodyLength: 755 } },
} as const;

/** The instruments that the gallery shows; all but the viola from their body length alone. */
export type Shown = keyof typeof MEASUREMENTS;
export const SHOWN: readonly Shown[] = ['violin', 'viola', 'quarter', 'cello'];

const made = new Map<string, readonly Drawing[]>();

/** Every drawing of an instrument's pack, from a table of measurements, by the verbs a maker uses; another name on request. */
export function drawnInstrument(shown: Shown, name?: string): readonly Drawing[] {
  const key = `${shown} ${name ?? ''}`;
  const known = made.get(key);
  if (known) return known;
  const instrument = derive(designOf(shown, name));
  if (!instrument.ok) throw new Error(JSON.stringify(instrument.faults));
  const drawings = drawInstrument(instrument.value);
  if (!drawings.ok) throw new Error(JSON.stringify(drawings.faults));
  made.set(key, drawings.value);
  return drawings.value;
}

/** The same drawings with their words in German. */
export function germanInstrument(shown: Shown, name?: string): readonly Drawing[] {
  return spokenPieces(designOf(shown, name), drawnInstrument(shown, name), 'de');
}

/** The files of an instrument's pack on a paper, by their path, as the verb of a maker makes them. */
export async function madePack(shown: Shown, paper: PaperName): Promise<ReadonlyMap<string, Uint8Array>> {
  const pack = await make(designOf(shown), {
    kinds: ['print', 'laser'],
    paper,
    dxf: 'R2000',
    digest: (bytes) => createHash('sha256').update(bytes).digest('hex'),
  });
  if (!pack.ok) throw new Error(JSON.stringify(pack.faults));
  return new Map(pack.value.files.map(({ path, bytes }) => [path, bytes]));
}

function designOf(shown: Shown, name?: string): Design {
  const table = { format: 'garland-measurements', version: 1, ...MEASUREMENTS[shown], ...(name && { name }) };
  const drafted = draft([{ name: 'table', json: table }]);
  if (!drafted.ok) throw new Error(JSON.stringify(drafted.faults));
  return drafted.value.design;
}

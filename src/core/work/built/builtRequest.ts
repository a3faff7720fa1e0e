import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import { type BuiltPart } from '../../checks/index.ts';
import type { Picture } from '../../photo/index.ts';
import { parseLength } from '../../quantity/index.ts';
import { parseSheetBar } from '../trace/traceWords.ts';

/** A photograph of something that was made, and what is told about it. */
export interface BuiltRequest {
  /** What the photograph is called in words and documents. */
  readonly name: string;
  readonly picture: Picture;
  readonly part: BuiltPart;
  /** Which face of the body looks up; decides which side is called bass. */
  readonly face: 'top' | 'back';
  /** Height of the upper edge over the paper at the lower and at the upper end; from the design where left out. */
  readonly thicknessMm?: readonly [lower: number, upper: number];
  /** What the two bars of the printed sheet measure. */
  readonly sheetBarMm?: { readonly xMm?: number; readonly yMm?: number };
  readonly toleranceMm: number;
}

/** mm. What a form may be off and still be built on; common practice, and chosen by us for the other parts. */
const USUAL_TOLERANCE_MM = 0.3;
/** mm. Ribs of a cello with room to spare; and the widest and finest limits that make sense. */
const THICKEST_MM = 200;
const WIDEST_MM = 10;
const FINEST_MM = 0.01;

/** The options of a check on a made thing as typed. Faults: `built.thickness`, `built.tolerance`, those of lengths. */
export function parseBuiltOptions(typed: {
  readonly thickness?: string;
  readonly tolerance?: string;
  readonly sheetBar?: string;
}): Checked<Pick<BuiltRequest, 'thicknessMm' | 'toleranceMm' | 'sheetBarMm'>> {
  const bars = parseSheetBar(typed.sheetBar, undefined);
  const thickness = typed.thickness === undefined ? undefined : parseThickness(typed.thickness);
  const tolerance = typed.tolerance === undefined ? undefined : parseTolerance(typed.tolerance);
  const faults: Fault[] = [bars, thickness, tolerance].flatMap((one) => (one && !one.ok ? one.faults : []));
  if (faults.length > 0) return refuse(...faults);
  return accept({
    ...(bars.ok && bars.value.sheetBarMm && { sheetBarMm: bars.value.sheetBarMm }),
    ...(thickness?.ok && { thicknessMm: thickness.value }),
    toleranceMm: tolerance?.ok ? tolerance.value : USUAL_TOLERANCE_MM,
  });
}

/** One length, or two with a slash where the thing is not equally high at both ends. */
function parseThickness(text: string): Checked<readonly [number, number]> {
  const parts = text.split('/').map((part) => parseLength(part, { at: '--thickness' }));
  const isFraction = text.includes('/') && parts.some((part) => !part.ok);
  const read = isFraction ? [parseLength(text, { at: '--thickness' })] : parts;
  const faults = read.flatMap((part) => (part.ok ? [] : part.faults));
  if (faults.length > 0) return refuse(...faults);
  const lengths = read.flatMap((part) => (part.ok ? [part.value.mm] : []));
  const [lower, upper] = [lengths[0] ?? 0, lengths[1] ?? lengths[0] ?? 0];
  if (lengths.length <= 2 && lengths.every((mm) => mm >= 0 && mm <= THICKEST_MM))
    return accept([lower, upper]);
  return refuse({
    code: 'built.thickness',
    at: '--thickness',
    found: `“${text}”`,
    need: `how high the upper edge stands over the sheet, 0 to ${THICKEST_MM} mm; two with a slash, lower end first, where it slopes`,
    remedy: 'measure its thickness with callipers, or the height of the ribs',
  });
}

function parseTolerance(text: string): Checked<number> {
  const length = parseLength(text, { at: '--tolerance' });
  if (!length.ok) return length;
  if (length.value.mm >= FINEST_MM && length.value.mm <= WIDEST_MM) return accept(length.value.mm);
  return refuse({
    code: 'built.tolerance',
    at: '--tolerance',
    found: `${length.value.mm} mm`,
    need: `a length between ${FINEST_MM} and ${WIDEST_MM} mm`,
    remedy: `leave it out for ${USUAL_TOLERANCE_MM} mm`,
  });
}

import { accept, type Checked, type Fault, type Finding, hypot, refuse, WRITE_MM } from '../base/index.ts';
import { nearestSize } from '../knowledge/index.ts';
import { printLength, type Quantity } from '../quantity/index.ts';
import type { Design } from './design.ts';
import { designSchema } from './designSchema.ts';
import { filled } from './draftDesign.ts';
import { nearestName } from './nearestName.ts';
import { kindFaults, schemaFaults } from './schemaFaults.ts';
import { lengthQuestions } from './sizeQuestions.ts';
import { NEEDED_VALUES, VALUE_NAMES, VALUES, type ValueName } from './values.ts';

/**
 * The design in a parsed document, unknown entries kept.
 *
 * A needed value that the document lacks (an older Garland did not know it) is filled from the family, with its
 * origin and a finding. Faults, all at once, each with its path: `file.kind`,
 * `file.newer`, `design.missing`, `design.wrong`, `design.outline`, `size.body-length`. Findings: `design.filled`,
 * `design.not-read`.
 */
export function readDesign(
  json: unknown,
): Checked<{ readonly design: Design; readonly findings: readonly Finding[] }> {
  const wrongKind = kindFaults(json, 'garland-design', 1);
  if (wrongKind.length > 0) return refuse(...wrongKind);
  const parsed = designSchema.safeParse(json);
  if (!parsed.success) return refuse(...schemaFaults(parsed.error, json, 'design', VALUE_NAMES));
  const read: Design = parsed.data;
  const broken = outlineFaults(read);
  if (broken.length > 0) return refuse(...broken);
  const whole = completed(read, parsed.data.values.bodyLength.value);
  if (!whole.ok) return whole;
  return accept({ ...whole.value, findings: [...unknownValues(read), ...whole.value.findings] });
}

function completed(
  design: Design,
  lengthMm: number,
): Checked<{ readonly design: Design; readonly findings: readonly Finding[] }> {
  const missing = NEEDED_VALUES.filter((name) => design.values[name] === undefined);
  if (missing.length === 0) return accept({ design, findings: [] });
  const { faults } = lengthQuestions(design.family, lengthMm);
  if (faults.length > 0) return refuse(...faults);
  const whole = filled(design.values, nearestSize(design.family, lengthMm), lengthMm);
  const findings =
    missing.length > NAMED_ALONE
      ? [filledTogether(missing)]
      : missing.map((name) => filledFinding(name, whole[name]));
  return accept({ design: { ...design, values: { ...design.values, ...whole } }, findings });
}

/** A traced half must start and end on the centre line and stay on its own side of it. */
function outlineFaults(design: Design): readonly Fault[] {
  if (design.outline.kind !== 'traced') return [];
  const { lowerBout, cBout, upperBout } = design.outline.half;
  const start = lowerBout.vertices[0];
  const end = upperBout.vertices.at(-1);
  const points = [lowerBout, cBout, upperBout].flatMap(({ vertices }) => vertices);
  const meets = start && end && hypot(start.x, start.y) < WRITE_MM && Math.abs(end.x) < WRITE_MM;
  if (meets && points.every(({ x }) => x > -WRITE_MM)) return [];
  return [
    {
      code: 'design.outline',
      at: 'outline.half',
      found: 'a traced half that does not run from the origin to the centre line on the treble side',
      need: 'a half outline from (0, 0) to (0, body length) with x not below zero',
      remedy: 'trace the photograph again; the file was changed or damaged',
    },
  ];
}

function unknownValues(design: Design): readonly Finding[] {
  return Object.keys(design.values)
    .filter((name) => !Object.hasOwn(VALUES, name))
    .map((name) => {
      const meant = nearestName(name, VALUE_NAMES);
      return {
        code: 'design.not-read',
        weight: 'remark',
        at: name,
        found: 'a value that this Garland does not know; it is kept and not used',
        need: meant === undefined ? 'a known name, for it to be used' : `a known name, such as “${meant}”`,
        remedy: 'correct its name, or leave it',
      };
    });
}

/** More missing values than these come from an older Garland: they are told together. */
const NAMED_ALONE = 5;
/** As many of them are named. */
const FIRST_NAMED = 3;

function filledTogether(missing: readonly ValueName[]): Finding {
  return {
    code: 'design.filled',
    weight: 'remark',
    at: 'values',
    found: `no ${missing.slice(0, FIRST_NAMED).join(', ')} and ${missing.length - FIRST_NAMED} more in the document, which an older Garland saved; the family's habits are used`,
    need: 'values of its own',
    remedy: 'keep them, or set them; derive lists each, and they are saved with the design',
  };
}

function filledFinding(name: ValueName, quantity: Quantity | undefined): Finding {
  const value = quantity?.value ?? 0;
  const text = quantity?.unit === 'mm' ? printLength(value) : String(value);
  return {
    code: 'design.filled',
    weight: 'remark',
    at: name,
    found: `no value in the document; ${text} is used, the family's habit`,
    need: 'a value of its own',
    remedy: 'keep it, or set it; it is saved with the design',
  };
}

/**
 * Thicknesses of plates as two published tables print them: Average violin measurements (author not named, no year given; columns
 * 1/4 to 4/4) and The viola: small, medium and large (author not named, no year given).
 * Claim: the presets of these sizes are the printed figures to the last digit, with the table as their origin. What the
 * violin's table prints for the channel of the waist stands at the flanks of ours.
 */
import { expect, test } from 'vitest';
import { draftDesign, type Family } from '../src/core/design/index.ts';
import { chosen, originText } from '../src/core/quantity/index.ts';

const WHERE = ['Middle', 'Flanks', 'Bouts', 'Channel'] as const;

/** Middle (at the post), flanks, bouts, channel; back and top. */
const ROWS = [
  ['violin', 285, [3.2, 2, 2, 1.8], [2.5, 2.3, 2.2, 2]],
  ['violin', 320, [3.5, 2, 2, 1.8], [2.5, 2.4, 2.2, 2]],
  ['violin', 335, [3.9, 2.2, 2.2, 2], [2.8, 2.4, 2.4, 2.1]],
  ['violin', 345, [4.1, 2.3, 2.3, 2.1], [2.9, 2.6, 2.5, 2.3]],
  ['violin', 355, [4.3, 2.5, 2.5, 2.3], [3, 2.7, 2.7, 2.4]],
  ['viola', 390, [4, 2.4, 2.4, 2], [3.1, 2.5, 2.5, 2.3]],
  ['viola', 406, [4.5, 2.7, 2.6, 2.3], [3.2, 2.6, 2.6, 2.4]],
  ['viola', 430, [5, 3, 3, 2.5], [3.3, 3, 3, 2.8]],
] as const;

test.each(ROWS)('a %s of %d mm', (family: Family, length, back, top) => {
  const bodyLength = { value: length, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family, name: 'sample', values: { bodyLength } });
  if (!drafted.ok) throw new Error('refused');
  const { values } = drafted.value.design;
  const table = family === 'violin' ? /Average violin measurements/ : /The viola: small, medium and large/;
  for (const [plate, row] of [
    ['Back', back],
    ['Top', top],
  ] as const)
    WHERE.forEach((where, index) => {
      const quantity = values[`thickness${plate}${where}`];
      expect(quantity?.value, `${plate} ${where}`).toBe(row[index]);
      expect(quantity && originText(quantity.origin)).toMatch(table);
    });
});

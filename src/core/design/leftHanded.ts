import * as z from 'zod';

/** Whether an instrument is built left-handed, as it stands in a design and in a table. */
export const leftHandedSchema = z
  .boolean({ error: 'true or false' })
  .optional()
  .describe(
    'true for a player who bows with the left hand: strings, pegs, bar and post change sides; false when left out',
  );

/** Which side the highest string, the post and the treble foot of the bridge stand on: the sign of their x on the body. */
export function highStringSide({ leftHanded }: { readonly leftHanded?: boolean | undefined }): 1 | -1 {
  return leftHanded ? -1 : 1;
}

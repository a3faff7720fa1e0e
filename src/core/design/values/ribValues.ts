import type { ValueMeaning } from './valueMeaning.ts';

/** Numbers a maker may give about the work on the ribs: linings let into the blocks, and the cauls that press them home. */
export const RIB_VALUES = {
  liningLetIn: {
    unit: 'mm',
    says: 'how far the linings are let into the corner blocks, at their full thickness',
  },
  caulDepth: { unit: 'mm', says: 'thickness of the cauls that press the ribs on, at their thinnest' },
  caulFacing: { unit: 'mm', says: 'thickness of the cork or leather on the face of the cauls' },
} as const satisfies Record<string, ValueMeaning>;

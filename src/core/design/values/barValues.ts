import type { ValueMeaning } from './valueMeaning.ts';

/** Numbers a maker may give about what stands under the bridge: its feet, the post and the bar. */
export const BAR_VALUES = {
  bridgeFeet: { unit: 'mm', says: 'width of the bridge over the outer ends of its feet' },
  bridgeFootThickness: { unit: 'mm', says: 'thickness of a foot of the bridge, along the body' },
  footBeyondBar: {
    unit: 'mm',
    says: 'how far the bridge feet reach out beyond the outer face of the bar, and beyond the post',
  },
  postDiameter: { unit: 'mm', says: 'diameter of the sound post' },
  barLength: { unit: 'mm', says: 'length of the bass bar' },
  barThickness: { unit: 'mm', says: 'thickness of the bass bar, across' },
  barHeight: { unit: 'mm', says: 'height of the trimmed bass bar at the bridge' },
  barEndHeight: { unit: 'mm', says: 'height of the trimmed bass bar at its ends' },
} as const satisfies Record<string, ValueMeaning>;

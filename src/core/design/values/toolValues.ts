import type { ValueMeaning } from './valueMeaning.ts';

/** Numbers a maker may give about how plates are roughed out and hollowed, their wood, and what gauges are cut from. */
export const TOOL_VALUES = {
  hollowAllowance: { unit: 'mm', says: 'wood left on the inside when it is drilled to depth' },
  densityBack: { unit: 'kg/m³', says: 'density of the wood of the back' },
  densityTop: { unit: 'kg/m³', says: 'density of the wood of the top' },
  roughAllowance: { unit: 'mm', says: 'wood left on the arch when it is roughed out' },
  roughStep: { unit: 'mm', says: 'height of a step of the roughed-out arch' },
  drillPitch: { unit: 'mm', says: 'distance between the holes drilled to depth' },
  drillDiameter: { unit: 'mm', says: 'diameter of the bit that drills to depth' },
  drillPoint: { unit: 'mm', says: 'how far the point of that bit stands out beyond its full width' },
  blankHeightBack: {
    unit: 'mm',
    optional: true,
    says: 'thickness of the board for the back, outside planed level',
  },
  blankHeightTop: {
    unit: 'mm',
    optional: true,
    says: 'thickness of the board for the top, outside planed level',
  },
  gaugeThickness: { unit: 'mm', says: 'thickness of the stuff that gauges are cut from' },
} as const satisfies Record<string, ValueMeaning>;

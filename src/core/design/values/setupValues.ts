import type { ValueMeaning } from './valueMeaning.ts';

/** Numbers a maker may give about what carries the strings: nut, bridge, tailpiece, saddle, end button. */
export const SETUP_VALUES = {
  stringSpacingNut: { unit: 'mm', says: 'outer strings at the nut, centre to centre' },
  stringSpacingBridge: { unit: 'mm', says: 'outer strings on the bridge, centre to centre' },
  nutDepth: { unit: 'mm', says: 'depth of the nut, along the strings' },
  bridgeFootLength: { unit: 'mm', says: 'length of a foot of the bridge, across the body' },
  bridgeTopThickness: { unit: 'mm', says: 'thickness of the bridge at its top' },
  afterLength: {
    unit: 'mm',
    optional: true,
    says: 'bridge to the fret of the tailpiece, along the strings; a sixth of the string unless given',
  },
  tailpieceLength: {
    unit: 'mm',
    optional: true,
    says: 'fret of the tailpiece to its end toward the saddle',
  },
  tailGutGap: { unit: 'mm', says: 'end of the tailpiece to the saddle, along the strings' },
  saddleWidth: { unit: 'mm', says: 'width of the saddle, across the body' },
  saddleDepth: { unit: 'mm', says: 'how far the saddle is let into the top, from the edge' },
  saddleHeight: { unit: 'mm', says: 'height of the saddle over the edge of the top' },
  saddleCrest: { unit: 'mm', says: 'edge of the top to the highest line of the saddle' },
  saddleGap: { unit: 'mm', says: 'free wood at either end of the saddle, for the top to shrink' },
  endpinDiameter: {
    unit: 'mm',
    says: 'diameter of the end button (cello: of the endpin’s plug) at the ribs',
  },
  endpinTaper: { unit: 'ratio', says: 'length over which the end button gains 1 mm in diameter' },
  barSpring: { unit: 'mm', says: 'spring of the bass bar: gap at both ends when it touches in the middle' },
} as const satisfies Record<string, ValueMeaning>;

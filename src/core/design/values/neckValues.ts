import type { ValueMeaning } from './valueMeaning.ts';

/** Numbers a maker may give about the neck: its set, the fingerboard, the strings over it, heel, button and mortise. */
export const NECK_VALUES = {
  overstand: { unit: 'mm', says: 'gluing face of the fingerboard over the edge of the top, at the edge' },
  projection: { unit: 'mm', says: 'crown of the fingerboard carried on to the bridge, over the top there' },
  neckAngle: {
    unit: 'deg',
    optional: true,
    says: 'gluing face of the fingerboard to the plane of the edge of the top',
  },
  boardEndHeight: {
    unit: 'mm',
    optional: true,
    says: 'crown of the fingerboard at its end, over the top there',
  },
  bridgeHeight: { unit: 'mm', optional: true, says: 'top of the bridge in its middle, over the top there' },
  stringLength: { unit: 'mm', optional: true, says: 'nut to bridge along the strings' },
  boardLength: { unit: 'mm', says: 'length of the fingerboard' },
  boardWidthNut: { unit: 'mm', says: 'width of the fingerboard at the nut' },
  boardWidthEnd: { unit: 'mm', says: 'width of the fingerboard at its end' },
  boardRadius: { unit: 'mm', says: 'radius of the round of the fingerboard, not its diameter' },
  boardSide: { unit: 'mm', says: 'height of the sides of the fingerboard' },
  boardRoof: {
    unit: 'mm',
    says: 'wood left over the hollow under the end of the fingerboard, in the middle',
  },
  boardScoopBass: { unit: 'mm', says: 'hollow along the fingerboard under the lowest string, half way' },
  boardScoopTreble: { unit: 'mm', says: 'hollow along the fingerboard under the highest string, half way' },
  stringNutBass: { unit: 'mm', says: 'lowest string over the fingerboard at the nut' },
  stringNutTreble: { unit: 'mm', says: 'highest string over the fingerboard at the nut' },
  stringEndBass: { unit: 'mm', says: 'lowest string over the end of the fingerboard' },
  stringEndTreble: { unit: 'mm', says: 'highest string over the end of the fingerboard' },
  neckThicknessNut: { unit: 'mm', says: 'thickness of the neck with the fingerboard, at the nut' },
  neckThicknessHeel: {
    unit: 'mm',
    says: 'thickness of the neck with the fingerboard, where the heel begins',
  },
  heelStart: { unit: 'mm', says: 'edge of the top to where the heel begins, along the neck' },
  buttonWidth: { unit: 'mm', says: 'width of the button' },
  buttonHeight: { unit: 'mm', says: 'how far the button stands out beyond the back' },
  rootWidthTop: {
    unit: 'mm',
    optional: true,
    says: 'width of the root of the neck at the gluing face of the fingerboard; the board carried on unless given',
  },
  rootWidthBack: {
    unit: 'mm',
    optional: true,
    says: 'width of the root of the neck at the back; as wide as the button unless given',
  },
  mortiseDepth: { unit: 'mm', says: 'depth of the mortise in the upper block, at the edge of the top' },
  rootAngle: { unit: 'deg', says: 'face of the root of the neck to the gluing face of the fingerboard' },
} as const satisfies Record<string, ValueMeaning>;

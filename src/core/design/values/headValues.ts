import type { ValueMeaning } from './valueMeaning.ts';

/**
 * Numbers a maker may give about the head: the side view of scroll and pegbox, its widths, the pegbox inside, the pegs.
 * "Behind" counts from the gluing face of the fingerboard, carried on past the nut, toward the back; "from the nut" along it.
 */
export const HEAD_VALUES = {
  headLength: { unit: 'mm', says: 'length of the head: tip of the chin to the top, along the gluing face' },
  headTop: { unit: 'mm', says: 'nut to the top of the head, along the gluing face' },
  headDepth: { unit: 'mm', says: 'farthest place of the back of the head behind the gluing face' },
  scrollHeight: { unit: 'mm', says: 'height of the scroll: top of the head to the bottom of its outer turn' },
  scrollFront: { unit: 'mm', says: 'front of the scroll behind the gluing face' },
  scrollEye: { unit: 'mm', says: 'diameter of the eye of the scroll, where the spiral ends' },
  scrollTurns: { unit: 'ratio', says: 'turns of the spiral from the throat to the eye, in quarters' },
  scrollQuickening: {
    unit: 'ratio',
    says: 'how much faster than evenly the spiral closes toward the eye, per square of quarter turns',
  },
  backLeaveAngle: {
    unit: 'deg',
    says: 'where the back of the head leaves the spiral, turned from the back toward the top',
  },
  backLeanAngle: { unit: 'deg', says: 'lean of the straight back of the pegbox toward the neck' },
  backHollow: { unit: 'mm', says: 'radius of the hollow of the back above the chin' },
  chinBehind: { unit: 'mm', says: 'tip of the chin behind the gluing face' },
  chinAngle: { unit: 'deg', says: 'underside of the chin out of the square to the gluing face' },
  chinReach: { unit: 'mm', says: 'nut to where the underside of the chin runs into the back of the neck' },
  chinSpare: {
    unit: 'mm',
    says: 'wood left on the back of the neck under the chin until the neck is shaped',
  },
  pegboxFrontAngle: { unit: 'deg', says: 'how far the front edge of the pegbox turns back by the throat' },
  throatGap: { unit: 'mm', says: 'narrowest place between pegbox and scroll at the throat' },
  throatRadius: { unit: 'mm', says: 'radius of the end of the throat' },
  scrollEars: { unit: 'mm', says: 'width of the scroll over its eyes' },
  headNarrowest: { unit: 'mm', says: 'width of the head at its top, the narrowest place' },
  chinWidth: { unit: 'mm', says: 'width of the back of the head at the chin' },
  outerTurnAngle: { unit: 'deg', says: 'both edges of the outer turn to each other, seen from the front' },
  middleTurnAngle: { unit: 'deg', says: 'both edges of the second turn to each other, seen from the front' },
  innerTurnAngle: { unit: 'deg', says: 'both edges of the third turn to each other, seen from the front' },
  pegboxWidthNut: { unit: 'mm', says: 'width of the pegbox at the nut, on the front' },
  pegboxShoulder: {
    unit: 'mm',
    says: 'length from the nut over which the pegbox rounds out from the neck to its own width: its shoulders; 0: none',
  },
  pegboxWidthThroat: { unit: 'mm', says: 'width of the pegbox at the throat, on the front' },
  pegboxWallNut: { unit: 'mm', says: 'thickness of the walls of the pegbox at the nut, on the front' },
  pegboxWallThroat: { unit: 'mm', says: 'thickness of the walls of the pegbox at the throat, on the front' },
  pegboxWallLean: { unit: 'mm', says: 'how much thicker each wall of the pegbox is at the floor' },
  pegboxFloor: { unit: 'mm', says: 'wood between the floor of the pegbox and the back of the head' },
  pegboxEndSlope: { unit: 'mm', says: 'how far the end of the pegbox under the nut slopes in by the floor' },
  pegboxWeb: { unit: 'mm', says: 'wood between the inside of the pegbox and the end of the throat' },
  peg1: { unit: 'mm', says: 'nut to the middle of the peg hole nearest to it' },
  peg2: { unit: 'mm', says: 'nut to the middle of the second peg hole' },
  peg3: { unit: 'mm', says: 'nut to the middle of the third peg hole' },
  peg4: { unit: 'mm', says: 'nut to the middle of the peg hole nearest to the throat' },
  pegDiameter: {
    unit: 'mm',
    says: 'diameter of the pegs at the outside of the wall on the side of their heads',
  },
  pegTaper: { unit: 'ratio', says: 'length over which a peg gains 1 mm in diameter' },
} as const satisfies Record<string, ValueMeaning>;

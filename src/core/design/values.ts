import type { Unit } from '../quantity/index.ts';

/**
 * Every number a maker may give, by the name it has in MEASUREMENTS.json, in a design and in the register.
 * `optional` ones are used only when given; all others are filled from the family's habits, with origin.
 */
export const VALUES = {
  bodyLength: { unit: 'mm', says: 'length of the body without the button, straight' },
  upperBout: { unit: 'mm', says: 'widest place of the upper bout' },
  waist: { unit: 'mm', says: 'narrowest place between the corners' },
  lowerBout: { unit: 'mm', says: 'widest place of the lower bout' },
  upperBoutStation: {
    unit: 'mm',
    optional: true,
    says: 'height of the widest upper bout above the lower end',
  },
  waistStation: { unit: 'mm', optional: true, says: 'height of the narrowest waist above the lower end' },
  lowerBoutStation: {
    unit: 'mm',
    optional: true,
    says: 'height of the widest lower bout above the lower end',
  },
  upperCornerStation: { unit: 'mm', optional: true, says: 'height of the upper corners above the lower end' },
  lowerCornerStation: { unit: 'mm', optional: true, says: 'height of the lower corners above the lower end' },
  upperCorners: { unit: 'mm', optional: true, says: 'width over the upper corners, tip to tip' },
  lowerCorners: { unit: 'mm', optional: true, says: 'width over the lower corners, tip to tip' },
  upperCornerEnd: { unit: 'mm', says: 'width of the upper corner end' },
  lowerCornerEnd: { unit: 'mm', says: 'width of the lower corner end' },
  stop: { unit: 'mm', says: 'body stop: upper end of the top to the bridge line' },
  neckStop: { unit: 'mm', says: 'nut to the upper edge of the top' },

  overhang: { unit: 'mm', says: 'edge of the plate beyond the ribs, along the bouts' },
  cornerOverhang: { unit: 'mm', says: 'corner end of the plate beyond the rib corner' },
  ribThickness: { unit: 'mm', says: 'thickness of the ribs' },
  ribHeightNeck: { unit: 'mm', says: 'height of the ribs at the neck' },
  ribHeightTail: { unit: 'mm', says: 'height of the ribs at the lower end' },
  liningThickness: { unit: 'mm', says: 'thickness of the linings' },
  liningWidth: { unit: 'mm', says: 'height of the linings' },
  upperBlockWidth: { unit: 'mm', says: 'width of the upper block' },
  upperBlockDepth: { unit: 'mm', says: 'depth of the upper block' },
  lowerBlockWidth: { unit: 'mm', says: 'width of the lower block' },
  lowerBlockDepth: { unit: 'mm', says: 'depth of the lower block' },
  lowerCornerBlockAlongWaist: { unit: 'mm', says: 'reach of the lower corner block along the waist side' },
  lowerCornerBlockAlongBout: { unit: 'mm', says: 'reach of the lower corner block along the bout side' },
  upperCornerBlockAlongWaist: { unit: 'mm', says: 'reach of the upper corner block along the waist side' },
  upperCornerBlockAlongBout: { unit: 'mm', says: 'reach of the upper corner block along the bout side' },
  formThickness: { unit: 'mm', says: 'thickness of the inner form' },
  clampHoleDiameter: { unit: 'mm', says: 'diameter of the clamp holes in the form' },
  clampHoleWall: { unit: 'mm', says: 'wood between a clamp hole and the edge of the form' },
  clampHolePitch: { unit: 'mm', says: 'wished distance between clamp holes' },
  pinDiameter: { unit: 'mm', says: 'diameter of the pin holes on the centre line' },
  pinFromEnd: { unit: 'mm', says: 'pin holes from the ends of the body' },

  purflingToEdge: { unit: 'mm', says: 'edge of the plate to the outer line of the purfling' },
  purflingWidth: { unit: 'mm', says: 'width of the purfling' },
  purflingDepth: { unit: 'mm', says: 'depth of the groove for the purfling' },
  stingLength: { unit: 'mm', says: 'point of the purfling in a corner: how far it reaches beyond the mitre' },
  stingAside: {
    unit: 'mm',
    says: 'how far that point bends from the middle of the corner toward the waist',
  },
  edgeHeightBack: { unit: 'mm', says: 'thickness of the edge of the back' },
  edgeHeightTop: { unit: 'mm', says: 'thickness of the edge of the top' },
  archHeightBack: { unit: 'mm', says: 'height of the back over its gluing face at the crest' },
  archHeightTop: { unit: 'mm', says: 'height of the top over its gluing face at the crest' },
  scoopDepthBack: { unit: 'mm', says: 'edge crest down to the channel, back' },
  scoopDepthTop: { unit: 'mm', says: 'edge crest down to the channel, top' },
  edgeCrestInset: { unit: 'mm', says: 'edge of the plate to the crest of the edge' },
  edgeUnderRounding: { unit: 'mm', says: 'radius that rounds the edge below, toward the ribs' },
  edgeLand: { unit: 'mm', says: 'flat edge left while arching, before the channel is cut' },
  channelAtBouts: { unit: 'mm', says: 'edge of the plate to the lowest line of the channel, bouts and ends' },
  channelAtWaist: { unit: 'mm', says: 'edge of the plate to the lowest line of the channel, waist' },
  channelAtCorners: { unit: 'mm', says: 'edge of the plate to the lowest line of the channel, corners' },
  channelCornerRounding: { unit: 'mm', says: 'radius that rounds the channel line inside the corners' },
  longArchFillet: { unit: 'mm', says: 'radius that brings the long arch level into the channel' },
  fullnessUpperBout: { unit: 'ratio', says: 'fullness of the cross arch at the upper bout (0 = cycloid)' },
  fullnessUpperCorner: { unit: 'ratio', says: 'fullness of the cross arch at the upper corners' },
  fullnessWaist: { unit: 'ratio', says: 'fullness of the cross arch at the waist' },
  fullnessLowerCorner: { unit: 'ratio', says: 'fullness of the cross arch at the lower corners' },
  fullnessLowerBout: { unit: 'ratio', says: 'fullness of the cross arch at the lower bout' },
  thicknessBackMiddle: { unit: 'mm', says: 'thickness of the back in the middle, under the bridge' },
  thicknessBackBouts: { unit: 'mm', says: 'thickness of the back in the bouts' },
  thicknessBackFlanks: { unit: 'mm', says: 'thickness of the back at the sides of the waist' },
  thicknessBackChannel: { unit: 'mm', says: 'thickness of the back along the channel' },
  thicknessTopMiddle: { unit: 'mm', says: 'thickness of the top in the middle, under the bridge' },
  thicknessTopBouts: { unit: 'mm', says: 'thickness of the top in the bouts' },
  thicknessTopFlanks: { unit: 'mm', says: 'thickness of the top at the sides of the waist' },
  thicknessTopChannel: { unit: 'mm', says: 'thickness of the top along the channel' },
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
} as const satisfies Record<string, { unit: Unit; optional?: boolean; says: string }>;

/** Name of a number that a maker may give; {@link VALUES} says what it is. */
export type ValueName = keyof typeof VALUES;

/** All of them, in the order in which they are listed to a maker. */
export const VALUE_NAMES = Object.keys(VALUES) as readonly ValueName[];

/** The names that a whole design always holds. */
export const NEEDED_VALUES: readonly ValueName[] = VALUE_NAMES.filter(
  (name) => !('optional' in VALUES[name]),
);

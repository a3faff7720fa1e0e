/** What the side view of a head is drafted from. Head frame: "behind" is x, "from the nut" is y; angles in radians. */
export interface ProfileSizes {
  /** Tip of the chin to the top. */
  readonly lengthMm: number;
  /** Nut to the top. */
  readonly topMm: number;
  /** The farthest place of the back. */
  readonly depthMm: number;
  /** Top to the bottom of the outer turn. */
  readonly scrollHeightMm: number;
  /** The front of the scroll behind the gluing face. */
  readonly scrollFrontMm: number;
  readonly eyeRadiusMm: number;
  /** Quarter turns from the throat to the eye; a whole number. */
  readonly quarterTurns: number;
  readonly quickening: number;
  /** Polar angle, from the back toward the top, where the back leaves the spiral. */
  readonly leaveRad: number;
  readonly leanRad: number;
  readonly hollowRadiusMm: number;
  readonly chinBehindMm: number;
  readonly chinRad: number;
  readonly chinReachMm: number;
  /** The back of the neck behind the gluing face, where the chin runs into it. */
  readonly neckBehindMm: number;
  readonly frontRad: number;
  readonly throatGapMm: number;
  readonly throatRadiusMm: number;
}

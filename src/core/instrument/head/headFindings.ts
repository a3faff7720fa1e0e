import { distanceBetween, type Finding } from '../../base/index.ts';
import type { ValueName } from '../../design/index.ts';
import type { Pegbox } from './pegbox.ts';
import type { Peg } from './pegs.ts';
import type { StringPath } from './stringPaths.ts';

/** mm on a head of 107 mm, from memory where nothing else is said; larger heads need more in proportion. */
const LEAST_MM = {
  /** Walls and floor: thinner ones split at the peg holes. */
  wall: 3.5,
  floor: 3,
  /** Wood in front of a peg hole and room under it. */
  cover: 2.5,
  /** From peg hole to peg hole, middle to middle. */
  pitch: 13,
  /** From a peg hole to an end of the inside: the string is wound there. Chosen by us. */
  end: 1.5,
  /** A string that comes nearer to a peg that it passes touches it as it stretches. Chosen by us. */
  room: 0.2,
  /** A string with no room to a wall rubs on it. Chosen by us. */
  wallRoom: 0,
} as const;
const FOR_MM = 107;

/** No unit. A pegbox that stands out further than this on either side, over its width, needs shoulders; chosen by us. */
const STEP_SHARE = 0.1;

/** No unit. Shoulders longer than this share of the pegbox are a slip; chosen by us. */
const SHOULDER_SHARE = 0.2;

/** What must be left, for a head of another length. */
export function leastOnHead(what: keyof typeof LEAST_MM, headLengthMm: number): number {
  return (LEAST_MM[what] * headLengthMm) / FOR_MM;
}

/** Walls and floor that are too thin, peg holes too near to each other or to an edge. */
export function pegboxFindings(box: Pegbox, pegs: readonly Peg[], headLengthMm: number): readonly Finding[] {
  const least = (what: keyof typeof LEAST_MM): number => leastOnHead(what, headLengthMm);
  const { sizes, thinnestWall: thin } = box;
  const findings: Finding[] = [];
  const say = (at: ValueName, code: string, found: string, need: string, remedy: string): void => {
    findings.push({ code: `head.${code}`, weight: 'caution', at, found, need, remedy });
  };
  const walls: readonly (readonly [ValueName, number, string])[] = [
    ['pegboxWallNut', sizes.wallNutMm, 'at the nut'],
    ['pegboxWallThroat', sizes.wallThroatMm, 'at the throat'],
    ['pegboxWallLean', thin.mm, `beside the floor, ${thin.fromNutMm.toFixed(0)} mm from the nut`],
  ];
  const stepMm = (sizes.widthNutMm - sizes.neckWidthMm) / 2;
  if (sizes.shoulderMm === 0 && stepMm > STEP_SHARE * sizes.widthNutMm)
    findings.push({
      code: 'head.step',
      weight: 'remark',
      at: 'pegboxShoulder',
      found: `a pegbox that stands out ${mm(stepMm)} on either side of the neck at the nut, without shoulders`,
      need: 'shoulders that round it out from the neck, or a pegbox hardly wider than the neck',
      remedy: `give pegboxShoulder, about ${mm(stepMm)} for a quarter circle`,
    });
  const shoulderMostMm = SHOULDER_SHARE * box.lengthMm;
  if (sizes.shoulderMm > shoulderMostMm)
    say(
      'pegboxShoulder',
      'shoulder-long',
      `shoulders ${mm(sizes.shoulderMm)} long on a pegbox of ${mm(box.lengthMm)}`,
      `${mm(shoulderMostMm)} or less, or they are a taper and no shoulders`,
      'correct it: it is the length from the nut over which the pegbox rounds out',
    );
  if (sizes.shoulderMm > 0 && stepMm < 0)
    findings.push({
      code: 'head.shoulder',
      weight: 'remark',
      at: 'pegboxShoulder',
      found: `shoulders on a pegbox ${mm(sizes.widthNutMm)} wide at the nut, no wider than the neck of ${mm(sizes.neckWidthMm)}`,
      need: 'a pegbox wider than the neck',
      remedy: 'widen the pegbox at the nut, or set pegboxShoulder to 0',
    });
  for (const [at, wallMm, where] of walls)
    if (wallMm < least('wall'))
      say(
        at,
        'wall-thin',
        `walls of the pegbox ${mm(wallMm)} thick ${where}`,
        `${mm(least('wall'))} or more, or they split at the pegs`,
        at === 'pegboxWallLean'
          ? 'raise pegboxWallLean or pegboxFloor, or widen the back of the head'
          : 'make them thicker, or widen the pegbox',
      );
  if (sizes.floorMm < least('floor'))
    say(
      'pegboxFloor',
      'floor-thin',
      `a floor of the pegbox ${mm(sizes.floorMm)} thick`,
      `${mm(least('floor'))} or more`,
      'raise pegboxFloor',
    );
  for (const peg of pegs) {
    const name = pegName(peg);
    for (const [coverMm, where] of [
      [peg.frontCoverMm, 'in front of it'],
      [peg.floorCoverMm, 'between it and the floor'],
    ] as const)
      if (coverMm < least('cover'))
        say(
          name,
          'peg-cover',
          `${ordinal(peg.number)} peg hole from the nut with ${mm(coverMm)} ${where}`,
          `${mm(least('cover'))} or more`,
          'move the peg along, thin the floor, or deepen the head',
        );
    if (peg.endRoomMm < least('end'))
      say(
        name,
        'peg-end',
        `${ordinal(peg.number)} peg hole from the nut with ${mm(peg.endRoomMm)} to the end of the pegbox`,
        `${mm(least('end'))} or more, for the windings of the string`,
        'move the peg along',
      );
    const next = pegs[peg.number];
    if (!next) continue;
    const apartMm = distanceBetween(next.centre, peg.centre);
    if (apartMm < least('pitch'))
      say(
        pegName(next),
        'peg-pitch',
        `${ordinal(peg.number)} and ${ordinal(next.number)} peg hole ${mm(apartMm)} apart`,
        `${mm(least('pitch'))} or more, for fingers and for the wood between`,
        'move one of them along',
      );
  }
  return findings;
}

/** Strings that touch a peg which they pass, or a wall. */
export function stringFindings(paths: readonly StringPath[], headLengthMm: number): readonly Finding[] {
  const roomMm = leastOnHead('room', headLengthMm);
  const besideWallMm = leastOnHead('wallRoom', headLengthMm);
  return paths.flatMap((path): readonly Finding[] => {
    const findings: Finding[] = [];
    if (path.leastRoom !== null && path.leastRoom.mm < roomMm)
      findings.push({
        code: 'head.string-on-peg',
        weight: 'caution',
        at: `peg${path.leastRoom.peg}, peg${path.peg}`,
        found: `the ${path.letter} string ${touches(path.leastRoom.mm)} the ${ordinal(path.leastRoom.peg)} peg from the nut on its way to its own`,
        need: `${mm(roomMm)} or more between them`,
        remedy: 'move these pegs farther apart, or take thinner ones',
      });
    if (path.wallRoomMm < besideWallMm)
      findings.push({
        code: 'head.string-on-wall',
        weight: 'caution',
        at: 'pegboxWidthNut',
        found: `the ${path.letter} string ${touches(path.wallRoomMm)} the wall of the pegbox`,
        need: 'a string clear of the wall',
        remedy: 'widen the pegbox, thin its walls, or bring the strings closer together at the nut',
      });
    return findings;
  });
}

function touches(roomMm: number): string {
  return roomMm <= 0 ? 'touches' : `comes within ${mm(roomMm)} of`;
}

function pegName({ number }: Peg): ValueName {
  return (['peg1', 'peg2', 'peg3', 'peg4'] as const)[number - 1] ?? 'peg1';
}

function ordinal(number: number): string {
  return ['first', 'second', 'third', 'fourth'][number - 1] ?? `${number}th`;
}

const mm = (value: number): string => `${value.toFixed(1)} mm`;

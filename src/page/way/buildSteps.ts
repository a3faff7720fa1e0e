import type { PiecePart } from '../../core/index.ts';
import type { stepsEn } from '../words/stepsEn.ts';

/** A step of the work at the bench: the pieces it is done with, and the numbers that are measured on the way. */
export interface BuildStep {
  readonly name: keyof typeof stepsEn.steps;
  readonly parts: readonly PiecePart[];
  readonly numbers: readonly string[];
}

/** The steps in the order in which an instrument is usually built on an inner form (common practice). */
export const BUILD_STEPS: readonly BuildStep[] = [
  {
    name: 'blocks',
    parts: ['form', 'blocks'],
    numbers: ['formThickness', 'upperBlockWidth', 'upperBlockDepth', 'lowerBlockWidth', 'lowerBlockDepth'],
  },
  {
    name: 'ribs',
    parts: ['ribs'],
    numbers: ['ribThickness', 'ribs.waistLength', 'ribs.upperLength', 'ribs.lowerLength'],
  },
  { name: 'linings', parts: ['ribs'], numbers: ['liningThickness', 'liningWidth', 'liningLetIn'] },
  { name: 'levelled', parts: ['ribs'], numbers: ['ribHeightNeck', 'ribHeightTail'] },
  {
    name: 'outline',
    parts: ['outline'],
    numbers: ['bodyLength', 'upperBout', 'waist', 'lowerBout', 'overhang', 'cornerOverhang'],
  },
  {
    name: 'arching',
    parts: ['roughing', 'arching'],
    numbers: ['archHeightBack', 'archHeightTop', 'edgeHeightBack', 'edgeHeightTop'],
  },
  {
    name: 'purfling',
    parts: ['edge'],
    numbers: ['purflingToEdge', 'purflingWidth', 'purflingDepth', 'scoopDepthBack', 'scoopDepthTop'],
  },
  {
    name: 'hollowing',
    parts: ['hollowing'],
    numbers: [
      'thicknessBackMiddle',
      'thicknessBackBouts',
      'thicknessTopMiddle',
      'thicknessTopBouts',
      'back.mass',
      'top.mass',
    ],
  },
  {
    name: 'holesAndBar',
    parts: ['soundHoles', 'bar'],
    numbers: ['holeLength', 'upperEyesApart', 'lowerEyeToEdge', 'barLength', 'barHeight', 'barSpring'],
  },
  { name: 'closed', parts: [], numbers: ['overhang', 'airVolume'] },
  { name: 'head', parts: ['head'], numbers: ['headLength', 'scrollHeight', 'headNarrowest', 'pegTaper'] },
  {
    name: 'neck',
    parts: ['neck'],
    numbers: ['neckStop', 'overstand', 'projection', 'neck.angle', 'mortiseDepth'],
  },
  { name: 'varnish', parts: [], numbers: [] },
  {
    name: 'setUp',
    parts: ['setup'],
    numbers: [
      'post.length',
      'post.fromCentre',
      'bridge.height',
      'stringEndTreble',
      'stringEndBass',
      'strings.afterLength',
    ],
  },
];

import type { Finding, Point } from '../../base/index.ts';
import type { BodyPose } from '../body/bodyTrace.ts';
import type { Picture } from '../picture/picture.ts';
import { holeFrame } from './holeFrame.ts';
import { jointStrip } from './jointStrip.ts';
import { lightSampler } from './lightSampler.ts';
import { plainestLine, type RowEvidence } from './plainestLine.ts';
import { type MeasuredLine, refineLine } from './refineLine.ts';

/** The joint of a two-piece plate as a straight line, photo px. */
export interface CentreJoint {
  /** At the heights of the body's lower and upper end. */
  readonly lower: Point<'photo'>;
  readonly upper: Point<'photo'>;
  /** Half intervals (k = 2) across the joint at either end; the bow that a tilted camera sees in an arched joint counts. */
  readonly plusMinusPx: { readonly lower: number; readonly upper: number };
  /** Share of the uncovered middle that shows it. */
  readonly share: number;
}

export interface CentreJointTrace {
  /** Null where no joint is seen. */
  readonly joint: CentreJoint | null;
  readonly findings: readonly Finding[];
}

/** How much plainer the joint is than any other straight line, such as a line of the grain; and the least it shows. */
const PLAINER = 1.4;
const LEAST_SCORE = 0.35;
const LEAST_SHARE = 0.5;
/** Rows, 355ths of the length, that must be free of board and tailpiece. */
const LEAST_ROWS = 60;
const LENGTH = 355;

/**
 * The centre joint of a two-piece plate near the body's centre line, or none seen: one piece, or a joint no plainer than
 * the grain. Method: every straight dark line near the centre line is weighed; the plainest counts where it stands out from
 * all others, and is measured piece by piece.
 */
export function traceCentreJoint(picture: Picture, pose: BodyPose): CentreJointTrace {
  const frame = holeFrame(pose, true);
  const strip = jointStrip(lightSampler(picture), frame);
  if (strip.rows.length < LEAST_ROWS)
    return notSeen('too little of the middle is free of fingerboard and tailpiece');
  const measured = lineIn({ ...strip, values: strip.line });
  if (measured === null)
    return notSeen('no straight dark line near the centre line is plainer than the grain');
  return {
    joint: {
      lower: frame.toPhoto(measured.atLow, 0),
      upper: frame.toPhoto(measured.atHigh, LENGTH),
      plusMinusPx: {
        lower: measured.plusMinusLow * frame.pxPerUnit,
        upper: measured.plusMinusHigh * frame.pxPerUnit,
      },
      share: Math.min(1, measured.share),
    },
    findings: [],
  };
}

function lineIn(evidence: RowEvidence): MeasuredLine | null {
  const first = plainestLine(evidence, 0, LENGTH);
  if (first.score < LEAST_SCORE || first.score < PLAINER * first.next) return null;
  const measured = refineLine(evidence, first, 0, LENGTH);
  return measured && measured.share >= LEAST_SHARE ? measured : null;
}

function notSeen(found: string): CentreJointTrace {
  return {
    joint: null,
    findings: [
      {
        weight: 'remark',
        code: 'joint.not-seen',
        at: 'centre joint',
        found,
        need: 'a joint that shows as a dark line along most of the plate',
        remedy: 'nothing, where the plate is of one piece; else light it from one side',
      },
    ],
  };
}

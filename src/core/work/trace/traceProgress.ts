/** Told what a trace goes on with, and what share of the whole is done, 0 to 1; shares never fall. */
export type TraceProgress = (stage: string, share: number) => void;

/** Progress of a part that takes the whole from one share to another. */
export function partOf(whole: TraceProgress, from: number, to: number): TraceProgress {
  return (stage, share) => whole(stage, from + share * (to - from));
}

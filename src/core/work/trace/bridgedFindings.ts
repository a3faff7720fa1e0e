import type { Finding } from '../../base/index.ts';
import type { BodyTrace } from '../../photo/index.ts';

/** mm along the half outline of a body of 355: shorter gaps are carried over by their neighbours. */
const LONG_MM = 12;
/** mm from either end within which neck, fingerboard, button or tail gear cross the edge of every instrument. */
const CROSSED_MM = 5;

/**
 * Stretches that neither side shows. One side bridged is taken from the other; where both are, the outline stands on
 * the usual shape alone. The ends of the body, under the neck and at the button, are always bridged and are left out.
 * Finding: `trace.bridged-both`.
 */
export function bridgedFindings({ unseen, edge }: Pick<BodyTrace, 'unseen' | 'edge'>): readonly Finding[] {
  const last = edge.reduce((most, { along }) => Math.max(most, along), 0);
  const bridged = unseen.filter(
    ({ state, fromAlong, toAlong }) =>
      state === 'bridged' && fromAlong > CROSSED_MM && toAlong < last - CROSSED_MM,
  );
  const side = (name: 'bass' | 'treble') => bridged.filter((one) => one.side === name);
  const both = side('bass').flatMap((one) =>
    side('treble').flatMap((other) => {
      const mm = Math.min(one.toAlong, other.toAlong) - Math.max(one.fromAlong, other.fromAlong);
      return mm >= LONG_MM && one.section === other.section ? [{ name: one.name, mm }] : [];
    }),
  );
  return both.map(({ name, mm }) => ({
    weight: 'caution' as const,
    code: 'trace.bridged-both',
    at: name,
    found: `neither side shows its edge here over ${mm.toFixed(0)} mm; the outline follows the usual shape`,
    need: 'an edge on one side at least',
    remedy: 'mark two places on the true edge there, or photograph again with this stretch free and plain',
  }));
}

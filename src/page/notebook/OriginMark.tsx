import type { Origin } from '../../core/index.ts';

/** Marks of origin, as a pencil tick in the margin: calliper, book, many hands, pencil, a bent arrow. */
const MARKS: Readonly<Record<Origin['kind'], string>> = {
  measured: 'M3 4v12M17 4v12M3 10h14M6 7l-3 3 3 3M14 7l3 3-3 3',
  published:
    'M10 5.5C8 4 5.5 3.8 2.5 4.2v11.3c3-.4 5.500-.2 7.500 1.300M10 5.500c2-1.500 4.500-1.700 7.500-1.300v11.300c-3-.4-5.500-.2-7.500 1.300M10 5.500v11.300',
  'common-practice': 'M4 4v12M8 4v12M12 4v12M16 4v12',
  'from-memory': 'M4 13c0-5 3-9 6-9s6 2 6 5-2 4-4 4-3 1-3 3M9 16.500v.5',
  chosen: 'M4 16l1-4 8.500-8.500 3 3L8 15zM11.500 5.500l3 3',
  derived: 'M5 4v7h10M12 8l3 3-3 3',
};

/** The mark of where a number comes from; the word stands in the row. */
export function OriginMark({ kind }: { readonly kind: Origin['kind'] }) {
  return (
    <svg class="mark" viewBox="0 0 20 20" aria-hidden="true">
      <path d={MARKS[kind]} />
    </svg>
  );
}

/** The diamond of what is questioned. */
export function QuestionMark() {
  return (
    <svg class="mark" viewBox="0 0 20 20" aria-hidden="true">
      <path d="M10 2l8 8-8 8-8-8zM10 6.500v4M10 13v.5" />
    </svg>
  );
}

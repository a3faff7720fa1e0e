import { useEffect, useState } from 'preact/hooks';
import type { Design, ShownBody } from '../../core/index.ts';
import { viewBench } from '../bench/bench.ts';

/** A kept design's outline, as small as a stamp: told by its look. */
export function SmallOutline({ design }: { readonly design: Design }) {
  const [body, setBody] = useState<ShownBody | null>(null);
  useEffect(() => {
    let isWanted = true;
    void viewBench()
      .body(design)
      .then((shown) => {
        if (isWanted && shown.ok) setBody(shown.value);
      });
    return () => {
      isWanted = false;
    };
  }, [design]);
  if (body === null) return <svg class="small-outline" viewBox="0 0 40 66" aria-hidden="true" />;
  const { widthMm, lengthMm, lines } = body;
  const half = widthMm / 2;
  return (
    <svg
      class="small-outline"
      viewBox={`${-half - 6} -6 ${widthMm + 12} ${lengthMm + 12}`}
      aria-hidden="true"
    >
      {lines
        .filter(({ kind }) => kind === 'edge')
        .map(({ path }) => (
          <path key={path} d={path} />
        ))}
    </svg>
  );
}

import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Checked, Design, ShownOutline } from '../../core/index.ts';
import { quickBench } from '../bench/bench.ts';
import { newestOnly } from '../bench/newestOnly.ts';
import { design, faults, sound } from '../store.ts';
import { words } from '../words/words.ts';
import { sheetPlace } from './sheetPlace.ts';
import { useSize } from './useSize.ts';

/** Whether nothing that is derived can be drawn: the design came so that it contradicts itself. */
export function isNothingSound(): boolean {
  return faults.value.length > 0 && sound.value === null;
}

/** What can be drawn; where the design never could be derived, its outline alone. */
export function OrOutline({ children }: { readonly children: ComponentChildren }) {
  return isNothingSound() ? <OutlineAlone /> : <>{children}</>;
}

/** The outline of a design whose parts cannot be made, as far as it has one. */
export function OutlineAlone() {
  const { ref, size } = useSize<HTMLDivElement>();
  useOutline();
  const shown = outlineAlone.value;
  const place =
    size && shown ? sheetPlace(size, shown.lengthMm, shown.widthMm, size.width < 700 ? 0.5 : 0.45) : null;
  return (
    <div ref={ref} class="sheet">
      {shown && place && (
        <svg width={place.width} height={place.height} role="img" aria-label={words().outlineAlone}>
          <g transform={`translate(${place.centreX} ${place.topY}) scale(${place.pxPerMm})`}>
            <path class="line edge" d={shown.edge.path} vector-effect="non-scaling-stroke" />
            <path
              class="line centre"
              d={`M0 ${-20 / place.pxPerMm}V${shown.lengthMm + 20 / place.pxPerMm}`}
              vector-effect="non-scaling-stroke"
            />
          </g>
        </svg>
      )}
    </div>
  );
}

/** The outline that is shown alone; null while it is not known, or where there is none. */
export const outlineAlone = signal<ShownOutline | null>(null);

function useOutline(): void {
  const [ask] = useState(() =>
    newestOnly(
      async (asked: Design): Promise<Checked<ShownOutline>> => quickBench().outline(asked),
      (answer) => {
        outlineAlone.value = answer.ok ? answer.value : null;
      },
    ),
  );
  useEffect(() => {
    if (design.value !== null) ask(design.value);
  }, [design.value]);
}

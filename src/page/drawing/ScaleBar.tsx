import { print, words } from '../words/words.ts';

/** CSS pixels of a millimetre by the standard's own reckoning: 96 to the inch. */
const CSS_PX_PER_MM = 96 / 25.4;
const BAR_MM = 50;

/** How large the drawing is on this screen. */
export function ScaleBar({ pxPerMm }: { readonly pxPerMm: number }) {
  const width = BAR_MM * pxPerMm;
  return (
    <div class="scale-bar">
      <svg width={width + 2} height="12" aria-hidden="true">
        <path d={`M1 1V11M1 6H${width + 1}M${width + 1} 1V11`} />
      </svg>
      <span>{words().ofLifeSize(print(pxPerMm / CSS_PX_PER_MM, 2))}</span>
    </div>
  );
}

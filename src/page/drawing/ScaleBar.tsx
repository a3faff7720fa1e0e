import { print, words } from '../words/words.ts';
import { BankCard } from './BankCard.tsx';
import { CSS_PX_PER_MM, isLifeSize, isMeasuring, screenPxPerMm, showLifeSize } from './lifeSize.ts';

const BAR_MM = 50;

/** How large the drawing is on this screen, and the way to life size and back. */
export function ScaleBar({ pxPerMm }: { readonly pxPerMm: number }) {
  const width = BAR_MM * pxPerMm;
  const said = words();
  return (
    <>
      <div class="scale-bar">
        <svg width={width + 2} height="12" aria-hidden="true">
          <path d={`M1 1V11M1 6H${width + 1}M${width + 1} 1V11`} />
        </svg>
        <span>{said.ofLifeSize(print(pxPerMm / (screenPxPerMm.value ?? CSS_PX_PER_MM), 2))}</span>
        <button
          type="button"
          class="pale"
          onClick={() => {
            if (isLifeSize.value) isLifeSize.value = false;
            else showLifeSize();
          }}
        >
          {isLifeSize.value ? said.showWhole : said.showLifeSize}
        </button>
      </div>
      {isMeasuring.value && <BankCard />}
    </>
  );
}

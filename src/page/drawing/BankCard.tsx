import { useState } from 'preact/hooks';
import { words } from '../words/words.ts';
import { CSS_PX_PER_MM, isMeasuring, keepScreen, screenPxPerMm } from './lifeSize.ts';

/** mm: a card of the size ID-1 (ISO/IEC 7810, 2019), with its rounded corners. */
const CARD = { width: 85.6, height: 53.98, corner: 3.18 } as const;
/** Screens have from half to three times the standard's pixels. */
const LEAST = 2;
const MOST = 9;

/** A card is laid on the screen and the drawn one made to fit: then a millimetre is known. */
export function BankCard() {
  const [pxPerMm, setPxPerMm] = useState(screenPxPerMm.value ?? CSS_PX_PER_MM);
  const said = words().lifeSize;
  return (
    <div class="bank-card" role="dialog" aria-label={said.ask}>
      <p>{said.ask}</p>
      <svg width={CARD.width * pxPerMm + 2} height={CARD.height * pxPerMm + 2} aria-hidden="true">
        <rect
          x="1"
          y="1"
          width={CARD.width * pxPerMm}
          height={CARD.height * pxPerMm}
          rx={CARD.corner * pxPerMm}
        />
      </svg>
      <input
        type="range"
        min={LEAST}
        max={MOST}
        step="0.005"
        value={pxPerMm}
        aria-label={said.ask}
        onInput={(event) => setPxPerMm(Number(event.currentTarget.value))}
      />
      <div class="answers">
        <button type="button" class="dark" onClick={() => keepScreen(pxPerMm)}>
          {said.fits}
        </button>
        <button
          type="button"
          onClick={() => {
            isMeasuring.value = false;
          }}
        >
          {said.not}
        </button>
      </div>
    </div>
  );
}

import type { ShownTrace } from '../../core/index.ts';
import { said } from '../keeping/saying.ts';
import { photographs, shot } from '../keeping/tracing.ts';
import { print, words } from '../words/words.ts';
import { Told } from './Told.tsx';

/** What the scale rests on, with how far each goes, and the length that follows. */
export function ScaleRows({ shown }: { readonly shown: ShownTrace }) {
  const text = words().see;
  const sheet = photographs.value[shot.value]?.sheet;
  const { sheetBar, edgeHeight } = said.value;
  const hasCard = photographs.value.some((one) => (one.sheet?.cards ?? 0) > 0);
  const heightFrom =
    edgeHeight.trim() !== '' ? text.heightByYou : hasCard ? text.heightByCard : text.heightByViews;
  return (
    <>
      <h2 class="group">{text.scale}</h2>
      <ul class="rows">
        {shown.edgeHeight !== null && (
          <>
            {sheet && (
              <Told
                kind="measured"
                name={text.sheet}
                from={text.marksFound}
                value={text.sheetOf(print(sheet.found, 0), print(sheet.of, 0))}
                beside=""
              />
            )}
            <Told
              kind={sheetBar.trim() === '' ? 'common-practice' : 'measured'}
              name={text.sheetBar}
              from={sheetBar.trim() === '' ? text.barTaken : text.barByYou}
              value={sheetBar.trim() === '' ? print(150) : sheetBar}
              beside=""
            />
            <Told
              kind="measured"
              name={text.edgeHeight}
              from={heightFrom}
              value={{ value: shown.edgeHeight.mm, unit: 'mm', plusMinus: shown.edgeHeight.plusMinusMm }}
            />
          </>
        )}
        <Told
          kind="derived"
          name={text.length}
          from={text.fromThese}
          value={{ value: shown.lengthMm, unit: 'mm', plusMinus: shown.lengthPlusMinusMm }}
        />
        {shown.apart !== null && (
          <Told kind="derived" name={text.apart} value={print(shown.apart.rmsMm, 2)} beside="mm" />
        )}
        <Told kind="derived" name={text.fit} value={print(shown.fitRmsMm, 2)} beside="mm" />
      </ul>
    </>
  );
}

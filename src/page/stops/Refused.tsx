import { photographs, seeingTrouble } from '../keeping/tracing.ts';
import { words } from '../words/words.ts';
import { HowToShoot } from './HowToShoot.tsx';
import { TroubleBox } from './TroubleBox.tsx';

/** Why photographs could not be traced, in sentences; and how to take them so that they can. */
export function Refused() {
  const text = words().see;
  const faults = [...photographs.value.flatMap(({ trouble }) => trouble), ...seeingTrouble.value];
  if (faults.length === 0) return null;
  const isPicture = faults.some(({ code }) => PICTURE_CODES.test(code));
  return (
    <>
      <TroubleBox faults={faults}>
        <p>
          <b>{text.refused}</b>
        </p>
      </TroubleBox>
      {isPicture && (
        <details class="shoot-again" open>
          <summary>{text.shootAgain}</summary>
          <HowToShoot />
        </details>
      )}
    </>
  );
}

/** Faults that a better photograph mends. */
const PICTURE_CODES = /^(sheet|camera|view|trace|picture|fit|axis)\./;

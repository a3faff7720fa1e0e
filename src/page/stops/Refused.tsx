import { trouble } from '../keeping/bring.ts';
import { photographs, seeingTrouble } from '../keeping/tracing.ts';
import { words } from '../words/words.ts';
import { HowToShoot } from './HowToShoot.tsx';
import { TroubleBox } from './TroubleBox.tsx';

/** Why photographs could not be traced, in sentences; and how to take them so that they can. */
export function Refused() {
  const text = words().see;
  const faults = [...photographs.value.flatMap(({ trouble }) => trouble), ...seeingTrouble.value];
  if (faults.length + trouble.value.length === 0) return null;
  const isHints = faults.some(({ code }) => HINTS_CODES.test(code));
  const isPicture = faults.some(({ code }) => PICTURE_CODES.test(code));
  return (
    <>
      <TroubleBox faults={faults}>
        {trouble.value.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {faults.length > 0 && (
          <p>
            <b>{isHints ? text.hintsRefused : text.refused}</b>
          </p>
        )}
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

/** Faults of a file of hints. */
const HINTS_CODES = /^(hints|file)\./;
/** Faults that a better photograph mends. */
const PICTURE_CODES = /^(sheet|camera|view|trace|picture|fit|axis)\./;

import { photographs, seeingTrouble } from '../keeping/tracing.ts';
import { sentenceOf } from '../words/sentences.ts';
import { words } from '../words/words.ts';
import { HowToShoot } from './HowToShoot.tsx';

/** Why photographs could not be traced, in sentences; and how to take them so that they can. */
export function Refused() {
  const text = words().see;
  const faults = [...photographs.value.flatMap(({ trouble }) => trouble), ...seeingTrouble.value];
  if (faults.length === 0) return null;
  const isPicture = faults.some(({ code }) => PICTURE_CODES.test(code));
  return (
    <>
      <div class="trouble" role="alert">
        <p>
          <b>{text.refused}</b>
        </p>
        {faults.map((fault) => (
          <p key={fault.code + fault.at + fault.found}>{sentenceOf(fault)}</p>
        ))}
      </div>
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

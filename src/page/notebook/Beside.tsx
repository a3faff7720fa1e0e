import type { ShownDifference } from '../../core/index.ts';
import { beside, besideTrouble, layAsItCame, layFile, other, takeOff } from '../keeping/beside.ts';
import { askForFiles } from '../keeping/files.ts';
import { done, plate } from '../store.ts';
import { nameOf, print, words } from '../words/words.ts';
import { numberText } from './numberText.ts';

/** Another design laid over the one on the bench, and how they differ, in words and numbers. */
export function Beside() {
  const said = words().beside;
  const shown = beside.value;
  return (
    <section class="plain laid-over">
      <h2 class="group">{said.title}</h2>
      {besideTrouble.value.map((sentence) => (
        <p key={sentence} class="trouble" role="alert">
          {sentence}
        </p>
      ))}
      {other.value === null ? (
        <p>
          <button
            type="button"
            class="linked"
            onClick={() =>
              askForFiles({ accept: '.json,application/json' }, ([file]) => file && layFile(file))
            }
          >
            {said.lay}
          </button>
          {done.value > 0 && (
            <button type="button" class="linked" onClick={layAsItCame}>
              {said.asItCame}
            </button>
          )}
        </p>
      ) : (
        <>
          <p>{said.lies(other.value.name)}</p>
          {shown && (
            <ul aria-live="polite">
              {edges(shown.outside, shown.inside).map((line) => (
                <li key={line}>{line}</li>
              ))}
              <li>{said.heights(words().plates[plate.value], print(shown.heights.rmsMm, 2))}</li>
              {shown.heights.worst.map((place) => (
                <li key={`${place.xMm} ${place.stationMm}`}>{heightLine(place)}</li>
              ))}
            </ul>
          )}
          {shown && shown.numbers.length > 0 && (
            <details>
              <summary>{said.numbers(shown.numbers.length)}</summary>
              <table class="beside-numbers">
                <thead>
                  <tr>
                    <th scope="col">{said.number}</th>
                    <th scope="col">{said.here}</th>
                    <th scope="col">{said.there}</th>
                  </tr>
                </thead>
                <tbody>
                  {shown.numbers.map(({ name, here, there, unit }) => (
                    <tr key={name}>
                      <th scope="row">{nameOf(name)}</th>
                      <td>{numberText({ value: here, unit })}</td>
                      <td>{numberText({ value: there, unit })}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </details>
          )}
          <p>
            <button type="button" class="linked" onClick={takeOff}>
              {said.takeOff}
            </button>
          </p>
        </>
      )}
    </section>
  );
}

function edges(outside: ShownDifference | null, inside: ShownDifference | null): readonly string[] {
  const said = words().beside;
  if (outside === null && inside === null) return [said.alike];
  return [
    ...(outside ? [said.outside(print(outside.offMm, 2), print(outside.stationMm, 0))] : []),
    ...(inside ? [said.inside(print(-inside.offMm, 2), print(inside.stationMm, 0))] : []),
  ];
}

function heightLine({ xMm, stationMm, offMm }: ShownDifference): string {
  const said = words().beside;
  const place = [print(stationMm, 0), print(xMm, 0)] as const;
  return offMm > 0 ? said.higher(print(offMm, 2), ...place) : said.lower(print(-offMm, 2), ...place);
}

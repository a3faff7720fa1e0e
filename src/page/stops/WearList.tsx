import type { ShownTrace, ShownWear } from '../../core/index.ts';
import { wearName } from '../drawing/wearName.ts';
import type { Ruling } from '../keeping/said.ts';
import { said, say } from '../keeping/saying.ts';
import { lookedAt } from '../keeping/tracing.ts';
import { OpenRow } from '../notebook/OpenRow.tsx';
import { OriginMark } from '../notebook/OriginMark.tsx';
import { touched } from '../store.ts';
import { print, words } from '../words/words.ts';
import { Choice } from './Asked.tsx';

/** The wood that was put back, stretch by stretch, each for the maker to overrule; and what was overruled. */
export function WearList({ shown }: { readonly shown: ShownTrace }) {
  const text = words().see;
  const { rulings } = said.value;
  return (
    <>
      <h2 class="group">{text.putBack}</h2>
      {shown.wear.length === 0 && rulings.length === 0 && <p>{text.nothingPutBack}</p>}
      <ul class="rows">
        {shown.wear.map((wear) => (
          <WearRow key={wearName(wear)} wear={wear} />
        ))}
        {rulings.map((ruling) => (
          <RuledRow key={`${ruling.side} ${ruling.fromMm} ${ruling.toMm}`} ruling={ruling} />
        ))}
      </ul>
    </>
  );
}

const TAKES = ['as-found', 'other', 'mean'] as const;

function WearRow({ wear }: { readonly wear: ShownWear }) {
  const text = words().see;
  const name = wearName(wear);
  const isTouched = touched.value === name;
  const place = placeOf(wear);
  const says = { 'as-found': text.leaveWorn, other: text.takeOther, mean: text.takeMean };
  const rule = (take: Ruling['take']) => {
    const half = wear.extentMm / 2;
    const ruling: Ruling = {
      side: wear.side,
      section: wear.section,
      fromMm: Math.max(0, Math.floor(wear.stationMm - half)),
      toMm: Math.ceil(wear.stationMm + half),
      take,
    };
    say(text.says.ruling(place), { rulings: [...said.value.rulings, ruling] });
  };
  return (
    <OpenRow
      margin={<OriginMark kind="derived" />}
      name={place}
      from={
        <span class="origin">{`${text.from[wear.from] ?? wear.from}, ${text.at(print(wear.stationMm, 0))}`}</span>
      }
      value={print(wear.depthMm)}
      beside="mm"
      isOpen={isTouched}
      turn={() => {
        touched.value = isTouched ? null : name;
      }}
      more={
        <div class="rule-over">
          {TAKES.map((take) => (
            <button
              key={take}
              type="button"
              class="pale"
              disabled={lookedAt.value !== null}
              onClick={() => rule(take)}
            >
              {says[take]}
            </button>
          ))}
        </div>
      }
    />
  );
}

function RuledRow({ ruling }: { readonly ruling: Ruling }) {
  const text = words().see;
  const place = placeOf(ruling);
  return (
    <li class="row">
      <span class="margin">
        <OriginMark kind="chosen" />
      </span>
      <p class="row-name">
        <b>{place}</b>
        <span class="origin">{`${text.ruled[ruling.take]}, ${text.at(`${ruling.fromMm}–${ruling.toMm}`)}`}</span>
      </p>
      <p>
        <button
          type="button"
          class="linked"
          disabled={lookedAt.value !== null}
          onClick={() =>
            say(text.without(text.says.ruling(place)), {
              rulings: said.value.rulings.filter((one) => one !== ruling),
            })
          }
        >
          {text.putItBack}
        </button>
      </p>
    </li>
  );
}

function placeOf({ side, section }: Pick<ShownWear, 'side' | 'section'>): string {
  const { sides, sections } = words().see;
  // A ruling that came from a file knows its heights alone.
  return section === '' ? (sides[side] ?? side) : `${sides[side]}, ${sections[section] ?? section}`;
}

const WAYS = ['average', 'bass', 'treble', 'keep'] as const;

/** What becomes of a slow difference between the halves: it is no wear, so the maker may keep it. */
export function Halves() {
  const text = words().see;
  const { keepAsymmetry, follow } = said.value;
  return (
    <div class="begin">
      <Choice
        legend={text.halves}
        names={WAYS}
        chosen={keepAsymmetry ? 'keep' : follow}
        word={(way) => text.halvesWays[way]}
        choose={(way) =>
          say(text.says.halves(text.halvesWays[way]), {
            keepAsymmetry: way === 'keep',
            follow: way === 'keep' ? 'average' : way,
          })
        }
        isUpright
      />
    </div>
  );
}

import { useEffect, useState } from 'preact/hooks';
import { takeUpAgain } from '../keeping/keepPhotographs.ts';
import { dropTold, keepTold, keptTold, picturesOf, type Told } from '../keeping/photographShelf.ts';
import {
  copySteps,
  dropSitting,
  keepSitting,
  keptSittings,
  type Sitting,
  stepsOf,
} from '../keeping/session.ts';
import { putPhotographsAway } from '../keeping/tracing.ts';
import { bringIn, design, stop } from '../store.ts';
import { language, print, words } from '../words/words.ts';
import { SmallOutline } from './SmallOutline.tsx';

/** What was thrown away here, and how it comes back. */
interface Dropped {
  readonly id: string;
  readonly name: string;
  readonly putBack: () => Promise<void>;
}

/** Sittings and photographs that the browser kept, newest first, to go on with; what is thrown away can be taken back. */
export function KeptList() {
  const said = words();
  const [sittings, setSittings] = useState<readonly Sitting[]>([]);
  const [told, setTold] = useState<readonly Told[]>([]);
  const [dropped, setDropped] = useState<readonly Dropped[]>([]);
  const look = async () => {
    setSittings(await keptSittings().catch(() => []));
    setTold((await keptTold().catch(() => [])).filter(({ isSettled }) => !isSettled));
  };
  useEffect(() => {
    void look();
  }, [design.value === null]);
  if (sittings.length + told.length + dropped.length === 0) return null;
  const drop = async (one: Dropped, take: () => Promise<void>) => {
    await take();
    setDropped([...dropped, one]);
    await look();
  };
  return (
    <section>
      <h2 class="group">{said.groups.kept}</h2>
      <ul class="rows">
        {dropped.map((one) => (
          <li key={one.id} class="row">
            <div class="kept-one" role="status">
              <p class="row-name">{said.kept.dropped(one.name)}</p>
              <button
                type="button"
                class="linked"
                onClick={async () => {
                  await one.putBack();
                  setDropped(dropped.filter((other) => other !== one));
                  await look();
                }}
              >
                {said.kept.putBack}
              </button>
            </div>
          </li>
        ))}
        {told.map((one) => (
          <ToldRow
            key={one.id}
            told={one}
            drop={async (name) => {
              const pictures = (await picturesOf(one)) ?? [];
              await drop({ id: one.id, name, putBack: () => keepTold(one, pictures) }, () =>
                dropTold(one.id),
              );
            }}
          />
        ))}
        {sittings.map((sitting) => (
          <SittingRow
            key={sitting.id}
            sitting={sitting}
            drop={async () => {
              const steps = await stepsOf(sitting.id);
              const putBack = async () => {
                await keepSitting(sitting, []);
                await copySteps(sitting.id, steps);
              };
              await drop({ id: sitting.id, name: sitting.design.name, putBack }, () =>
                dropSitting(sitting.id),
              );
            }}
          />
        ))}
      </ul>
    </section>
  );
}

function SittingRow({ sitting, drop }: { readonly sitting: Sitting; readonly drop: () => Promise<void> }) {
  const said = words();
  const { design: kept, savedAs, savedDesign, done } = sitting;
  const where =
    savedAs === null
      ? said.kept.onlyHere
      : savedDesign === JSON.stringify(kept)
        ? said.kept.inFile(savedAs)
        : said.kept.changed(savedAs);
  return (
    <li class="row">
      <div class="kept-one">
        <button
          type="button"
          class="row-name"
          onClick={() => {
            putPhotographsAway();
            void bringIn(kept, sitting).then(() => {
              stop.value = 'outline';
            });
          }}
        >
          <SmallOutline design={kept} />
          <span>
            <b>{said.kept.goOn(kept.name)}</b>
            <span class="origin">
              {said.kept.sitting(said.families[kept.family], print(kept.values.bodyLength?.value ?? 0))}
              {`, ${dateOf(sitting.touchedAt)}`}
            </span>
            <span class="origin">{`${said.kept.steps(done)}, ${where}`}</span>
          </span>
        </button>
        <button
          type="button"
          class="linked small"
          aria-label={said.kept.dropOf(kept.name)}
          onClick={() => void drop()}
        >
          {said.kept.drop}
        </button>
      </div>
    </li>
  );
}

function ToldRow({ told, drop }: { readonly told: Told; readonly drop: (name: string) => Promise<void> }) {
  const said = words();
  const [isGone, setGone] = useState(false);
  const names = told.photographs.map(({ name }) => name).join(', ');
  return (
    <li class="row">
      <div class="kept-one">
        <button
          type="button"
          class="row-name"
          onClick={() => void takeUpAgain(told).then((isThere) => setGone(!isThere))}
        >
          <b>{said.kept.photographs(names)}</b>
          <span class="origin">{`${said.kept.notSettled}, ${dateOf(told.touchedAt)}`}</span>
        </button>
        <button
          type="button"
          class="linked small"
          aria-label={said.kept.dropOf(names)}
          onClick={() => void drop(names)}
        >
          {said.kept.drop}
        </button>
      </div>
      {isGone && <p class="said">{said.kept.gone}</p>}
    </li>
  );
}

/** A day and an hour as one says them. */
function dateOf(ms: number): string {
  return new Date(ms).toLocaleString(language.value === 'en' ? 'en-GB' : language.value, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    hour: '2-digit',
    minute: '2-digit',
  });
}

import { useState } from 'preact/hooks';
import { ArchDrawing } from '../drawing/ArchDrawing.tsx';
import { BodyDrawing } from '../drawing/BodyDrawing.tsx';
import { DrawingSays } from '../drawing/DrawingSays.tsx';
import { HolesDrawing } from '../drawing/HolesDrawing.tsx';
import { OrOutline } from '../drawing/OutlineAlone.tsx';
import { PieceWall } from '../drawing/PieceWall.tsx';
import { SideDrawing } from '../drawing/SideDrawing.tsx';
import { ThicknessDrawing } from '../drawing/ThicknessDrawing.tsx';
import { Beside } from '../notebook/Beside.tsx';
import { type Answer, Leaf } from '../notebook/Leaf.tsx';
import { NumberList } from '../notebook/NumberList.tsx';
import { design, edit, faults, findings, plate, stop, whole } from '../store.ts';
import { isQuestioned } from '../way/stateOf.ts';
import { VALUES_OF_STOP } from '../way/stopNumbers.ts';
import { type NUMBERED_STOPS, STOPS } from '../way/stops.ts';
import { sentenceOf } from '../words/sentences.ts';
import { nameOf, words } from '../words/words.ts';
import { AskedPlaces } from './AskedPlaces.tsx';
import { Contradiction } from './Contradiction.tsx';
import { ProfileList } from './ProfileList.tsx';

type NumberedStop = (typeof NUMBERED_STOPS)[number];

/** A stop of the design: its drawing, its numbers, and the answer that settles it. */
export function NumbersStop({ name }: { readonly name: NumberedStop }) {
  const said = words();
  const [isAll, setAll] = useState(false);
  const groups = VALUES_OF_STOP[name].filter(
    (group) => group.plate === undefined || group.plate === plate.value,
  );
  return (
    <>
      <main class="drawing">
        {name === 'outline' || name === 'form' ? <BodyDrawing /> : <OrOutline>{drawingOf(name)}</OrOutline>}
        <DrawingSays />
      </main>
      <Leaf question={said.questions[name]} lead={leadOf(name)} answers={answersOf(name)}>
        <Contradiction />
        {!isAll && <p class="unit-line">{said.millimetres}</p>}
        {isAll ? (
          <AllNumbers />
        ) : (
          groups.map(({ title, names }) => (
            <NumberList key={title} title={said.groups[title]} names={names} />
          ))
        )}
        {!isAll && name === 'thickness' && <AskedPlaces key={plate.value} />}
        {!isAll && name === 'arch' && <WhatTheLampShows />}
        {name === 'outline' && <FreeOfTrace />}
        {(name === 'arch' || name === 'head') && <ProfileList of={name} />}
        {(name === 'outline' || name === 'form' || name === 'arch') && <Beside />}
        <p>
          <button type="button" class="linked" onClick={() => setAll(!isAll)}>
            {isAll ? said.fewNumbers : said.allNumbers}
          </button>
        </p>
      </Leaf>
    </>
  );
}

function drawingOf(name: Exclude<NumberedStop, 'outline' | 'form'>) {
  if (name === 'arch') return <ArchDrawing />;
  if (name === 'thickness') return <ThicknessDrawing />;
  if (name === 'soundHoles') return <HolesDrawing />;
  if (name === 'neck') return <SideDrawing parts={PARTS.neck ?? []} />;
  return <PieceWall parts={PARTS[name] ?? []} key={name} lead="head-side" />;
}

/** Which pieces hang on the wall of a stop. */
const PARTS: Readonly<Partial<Record<NumberedStop, readonly string[]>>> = {
  head: ['head'],
  neck: ['neck', 'setup', 'bar'],
};

function leadOf(name: NumberedStop): string {
  const { leads, plates } = words();
  if (name === 'arch') return leads.arch(plates[plate.value]);
  if (name === 'thickness') return leads.thickness(plates[plate.value]);
  if (name === 'outline') return isQuestioned(name) ? leads.outlineQuestioned : leads.outline;
  return leads[name];
}

function answersOf(name: NumberedStop): readonly Answer[] {
  const said = words();
  const here = design.value;
  if (here === null) return [];
  const isSettled = here.settled?.includes(name) ?? false;
  const next = STOPS[STOPS.indexOf(name) + 1] ?? 'build';
  const goOn = () => {
    stop.value = next;
  };
  const settle: Answer = isSettled
    ? { says: said.onTo(said.stops[next]), give: goOn }
    : {
        says: said.settle(said.stops[name]),
        isOff: faults.value.length > 0,
        give: () => {
          edit(said.settle(said.stops[name]), { ...here, settled: [...(here.settled ?? []), name] });
          goOn();
        },
      };
  const other = plate.value === 'back' ? 'top' : 'back';
  if (name === 'arch' || name === 'thickness')
    return [
      settle,
      {
        says: said.nowThe(said.plates[other]),
        give: () => {
          plate.value = other;
        },
      },
    ];
  if (!isSettled) return [settle];
  return [
    settle,
    {
      says: said.unsettle,
      give: () =>
        edit(said.unsettle, { ...here, settled: (here.settled ?? []).filter((one) => one !== name) }),
    },
  ];
}

/** A traced outline can be drawn from its numbers instead, which may then be changed. */
function FreeOfTrace() {
  const here = design.value;
  if (here?.outline.kind !== 'traced') return null;
  const said = words();
  return (
    <section class="plain">
      <p>{said.tracedOutline}</p>
      <p>
        <button
          type="button"
          class="linked"
          onClick={() => edit(said.drawFromNumbers, { ...here, outline: { kind: 'drafted' } })}
        >
          {said.drawFromNumbers}
        </button>
      </p>
    </section>
  );
}

function WhatTheLampShows() {
  const said = words();
  const found = findings.value.filter(({ at }) => at.includes(plate.value) || at.startsWith('arch'));
  return (
    <section class="plain">
      <h2 class="group">{said.groups.lamp}</h2>
      {found.length === 0 ? (
        <p>{said.noFaultSeen}</p>
      ) : (
        found.map((one) => <p key={one.code + one.at}>{sentenceOf(one)}</p>)
      )}
    </section>
  );
}

function AllNumbers() {
  const said = words();
  const [sought, seek] = useState('');
  const names = (whole.value?.register ?? []).map(({ name }) => name);
  const found = names.filter((name) =>
    `${name} ${nameOf(name)}`.toLowerCase().includes(sought.toLowerCase()),
  );
  return (
    <>
      <label class="field search">
        {said.searchNumbers}
        <input value={sought} onInput={(event) => seek(event.currentTarget.value)} />
      </label>
      <NumberList title={said.allNumbers} names={found} />
    </>
  );
}

import { useState } from 'preact/hooks';
import { PROFILES_OF } from '../keeping/profileSaid.ts';
import type { KeptProfile } from '../keeping/profileShelf.ts';
import {
  beginProfile,
  givenBy,
  inItsPlace,
  leaveOutProfile,
  openProfile,
  profiles,
  profileTrouble,
  takeProfile,
  throwAway,
} from '../keeping/profiling.ts';
import { design } from '../store.ts';
import { nameOf, words } from '../words/words.ts';
import { TroubleBox } from './TroubleBox.tsx';

interface Dropped {
  readonly name: string;
  readonly putBack: () => Promise<void>;
}

/** Photographs of arches or heads that lie beside the design: which of them counts, and the way to another. */
export function ProfileList({ of }: { readonly of: keyof typeof PROFILES_OF }) {
  const text = words().profile;
  const [dropped, setDropped] = useState<readonly Dropped[]>([]);
  const listed = profiles.value.filter(({ stop }) => stop === of);
  return (
    <section>
      {listed.length + dropped.length > 0 && <h2 class="group">{text.listed}</h2>}
      {profileTrouble.value.length > 0 && <TroubleBox faults={profileTrouble.value} />}
      <ul class="rows">
        {dropped.map((one) => (
          <li key={one.name} class="row">
            <div class="photograph-row" role="status">
              <p class="row-name">{words().kept.dropped(one.name)}</p>
              <button
                type="button"
                class="linked"
                onClick={() => {
                  setDropped(dropped.filter((other) => other !== one));
                  void one.putBack();
                }}
              >
                {words().kept.putBack}
              </button>
            </div>
          </li>
        ))}
        {listed.map((one) => (
          <ProfileRow
            key={one.id}
            one={one}
            drop={() =>
              void throwAway(one).then((putBack) =>
                setDropped([...dropped, { name: one.photograph?.name ?? placeWords(one), putBack }]),
              )
            }
          />
        ))}
      </ul>
      <p class="plain-link">
        <button type="button" class="linked" onClick={() => beginProfile(of)}>
          {text.link[of]}
        </button>
      </p>
    </section>
  );
}

function ProfileRow({ one, drop }: { readonly one: KeptProfile; readonly drop: () => void }) {
  const text = words().profile;
  const given = givenBy(one, design.value);
  const canBeTaken = given.length === 0 && (one.read ?? one.taken) !== null;
  const name = one.photograph?.name ?? placeWords(one);
  const other = canBeTaken ? inItsPlace(one) : null;
  return (
    <li class={given.length > 0 ? 'row in-drawing' : 'row'}>
      <div class="photograph-row">
        <button type="button" class="row-name" onClick={() => openProfile(one.id)}>
          <b>{placeWords(one)}</b>
          <span class="origin">{one.photograph?.name ?? text.noPhotograph}</span>
          <span class="origin">
            {given.length > 0
              ? text.gives(given.map(calledOf).join(', '))
              : canBeTaken
                ? text.notUsed
                : text.notRead}
          </span>
        </button>
        <span class="profile-acts">
          {given.length > 0 && (
            <button
              type="button"
              class="linked small"
              aria-label={`${text.leaveOutThis}: ${name}`}
              onClick={() => void leaveOutProfile(one)}
            >
              {text.leaveOutThis}
            </button>
          )}
          {canBeTaken && (
            <button
              type="button"
              class="linked small"
              aria-label={`${text.takeThis}: ${name}`}
              title={other ? text.takeFor(other.photograph?.name ?? '') : undefined}
              onClick={() => void takeProfile(one)}
            >
              {text.takeThis}
            </button>
          )}
          <button type="button" class="linked small" aria-label={words().kept.dropOf(name)} onClick={drop}>
            {words().kept.drop}
          </button>
        </span>
      </div>
    </li>
  );
}

/** A number as it is told away from its heading. */
function calledOf(name: string): string {
  return name.startsWith('fullness') ? `${words().profile.fullness} ${nameOf(name)}` : nameOf(name);
}

/** Which arch it is, or that it is a head. */
function placeWords({ said: { of, plate, station } }: KeptProfile): string {
  const text = words().profile;
  if (of === 'scroll') return text.kinds[of];
  const at = of === 'cross-arch' ? `, ${words().stations[station] ?? station}` : '';
  return `${words().plates[plate]}, ${text.kinds[of]}${at}`;
}

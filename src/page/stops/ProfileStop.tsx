import { useRef } from 'preact/hooks';

import { ProfileDrawing } from '../drawing/ProfileDrawing.tsx';
import { ARCH_STATIONS, PROFILES_OF, RIGHT_IS } from '../keeping/profileSaid.ts';
import {
  holdProfile,
  isReadingProfile,
  leaveProfile,
  profilePhotograph,
  profileRead,
  profileSaid,
  profileTrouble,
  readProfile,
  sayOfProfile,
  takeReadProfile,
} from '../keeping/profiling.ts';
import { type Answer, Leaf } from '../notebook/Leaf.tsx';
import { sentenceOf } from '../words/sentences.ts';
import { print, words } from '../words/words.ts';
import { Choice, TypedLength } from './Asked.tsx';
import { HowToShoot } from './HowToShoot.tsx';
import { Told } from './Told.tsx';
import { TroubleBox } from './TroubleBox.tsx';

/** An arch or a head is read from a photograph and put into the design. */
export function ProfileStop({ of }: { readonly of: keyof typeof PROFILES_OF }) {
  const text = words().profile;
  const field = useRef<HTMLInputElement>(null);
  const isReading = isReadingProfile.value;
  const choose = () => field.current?.click();
  return (
    <>
      <main class="drawing">
        <ProfileDrawing of={of} />
      </main>
      <Leaf question={text.question[of]} lead={text.lead[of]} answers={answers(choose)}>
        <input
          ref={field}
          hidden
          type="file"
          accept="image/*"
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            if (file) void holdProfile(file);
          }}
        />
        {profileTrouble.value.length > 0 && (
          <>
            <TroubleBox faults={profileTrouble.value} />
            <details class="shoot-again">
              <summary>{words().see.shootAgain}</summary>
              <HowToShoot />
            </details>
          </>
        )}
        {profileRead.value && <AsRead />}
        <div class="begin">
          {of === 'arch' && <ArchAsked />}
          <TypedLength
            id="profile-bar"
            label={text.sheetBar}
            how={words().see.sheetBarHow}
            example="150"
            value={profileSaid.value.sheetBar}
            say={(sheetBar) => sayOfProfile({ sheetBar })}
          />
          {!(of === 'arch' && profileSaid.value.lies === 'drawn') && (
            <TypedLength
              id="profile-height"
              label={text.height[of]}
              how={text.heightHow[of]}
              example={of === 'arch' ? '1' : '20'}
              value={profileSaid.value.height}
              say={(height) => sayOfProfile({ height })}
            />
          )}
          {profilePhotograph.value && (
            <>
              <button type="button" class="pale" disabled={isReading} onClick={choose}>
                {text.another}
              </button>
              <p class="how-to">{profilePhotograph.value.name}</p>
            </>
          )}
        </div>
      </Leaf>
    </>
  );
}

function answers(choose: () => void): readonly Answer[] {
  const text = words().profile;
  const isReading = isReadingProfile.value;
  const leave: Answer = { says: text.leave, isOff: isReading, give: leaveProfile };
  if (profilePhotograph.value === null) return [{ says: text.choose, give: choose }, leave];
  if (profileRead.value) return [{ says: text.take, give: () => void takeReadProfile() }, leave];
  return [
    { says: isReading ? text.reading : text.read, isOff: isReading, give: () => void readProfile() },
    leave,
  ];
}

function ArchAsked() {
  const text = words().profile;
  const { plates, stations } = words();
  const { of, plate, station, lies, rightIs, leaveOut } = profileSaid.value;
  const rights: readonly (keyof typeof text.rights)[] = RIGHT_IS[of === 'long-arch' ? of : 'cross-arch'];
  return (
    <>
      <Choice
        legend={text.of}
        names={PROFILES_OF.arch}
        chosen={of === 'scroll' ? 'cross-arch' : of}
        word={(name) => text.kinds[name]}
        choose={(kind) => sayOfProfile({ of: kind, rightIs: 'unknown' })}
      />
      <Choice
        legend={text.plate}
        names={['back', 'top'] as const}
        chosen={plate}
        word={(name) => plates[name]}
        choose={(name) => sayOfProfile({ plate: name })}
      />
      {of === 'cross-arch' && (
        <Choice
          legend={text.station}
          names={ARCH_STATIONS}
          chosen={station}
          word={(name) => stations[name] ?? name}
          choose={(name) => sayOfProfile({ station: name })}
          isUpright
        />
      )}
      <Choice
        legend={text.how}
        names={['card', 'free', 'drawn'] as const}
        chosen={lies}
        word={(name) => text.hows[name]}
        choose={(name) => sayOfProfile({ lies: name })}
        isUpright
      />
      <Choice
        legend={text.right}
        names={rights}
        chosen={rightIs}
        word={(name) => text.rights[name]}
        choose={(name) => sayOfProfile({ rightIs: name })}
      />
      <label class="choice">
        <input
          type="checkbox"
          checked={leaveOut}
          onChange={(event) => sayOfProfile({ leaveOut: event.currentTarget.checked })}
        />
        {text.leaveOut}
      </label>
    </>
  );
}

/** What was read, in numbers, and what is to be known of it. */
function AsRead() {
  const text = words().profile;
  const read = profileRead.value;
  if (read === null) return null;
  const { points, plusMinus, fit } = read.document;
  return (
    <section>
      <h2 class="group">{text.asRead}</h2>
      <ul class="rows">
        <Told
          kind="measured"
          name={text.points}
          from={`${text.each} ± ${print(plusMinus.point, 2)} mm`}
          value={print(points.length, 0)}
          beside=""
        />
        {fit && (
          <>
            <Told
              kind="derived"
              name={text.rise}
              value={print(fit.rise.value)}
              beside={`± ${print(fit.rise.plusMinus, 2)}`}
            />
            {fit.fullness && (
              <Told
                kind="derived"
                name={text.fullness}
                value={print(fit.fullness.value, 2)}
                beside={`± ${print(fit.fullness.plusMinus, 2)}`}
              />
            )}
            <Told kind="derived" name={text.fit} value={print(fit.rms, 2)} beside="mm" />
          </>
        )}
      </ul>
      {read.findings.length > 0 && (
        <div class="plain">
          <h2 class="group">{words().groups.found}</h2>
          {read.findings.map((one) => (
            <p key={one.code + one.at + one.found} class={one.weight === 'remark' ? '' : 'said'}>
              {sentenceOf(one)}
            </p>
          ))}
        </div>
      )}
    </section>
  );
}

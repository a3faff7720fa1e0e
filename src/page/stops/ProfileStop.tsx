import type { ProfileOutcome } from '../../core/index.ts';
import { ProfileDrawing } from '../drawing/ProfileDrawing.tsx';
import { askForFiles } from '../keeping/files.ts';
import { ARCH_STATIONS, PROFILES_OF, type ProfileSaid, RIGHT_IS } from '../keeping/profileSaid.ts';
import type { KeptProfile } from '../keeping/profileShelf.ts';
import {
  holdProfile,
  inItsPlace,
  isReadingProfile,
  leaveProfile,
  profile,
  profileTrouble,
  readProfile,
  sayOfProfile,
  takeProfile,
} from '../keeping/profiling.ts';
import { type Answer, Leaf } from '../notebook/Leaf.tsx';
import { spreadText } from '../notebook/numberText.ts';
import { sentenceOf } from '../words/sentences.ts';
import { print, words } from '../words/words.ts';
import { Choice, TypedLength } from './Asked.tsx';
import { HowToShoot } from './HowToShoot.tsx';
import { Told } from './Told.tsx';
import { TroubleBox } from './TroubleBox.tsx';

/** An arch or a head is read from a photograph and put into the design. */
export function ProfileStop({ of }: { readonly of: keyof typeof PROFILES_OF }) {
  const text = words().profile;
  const isReading = isReadingProfile.value;
  const choose = () => askForFiles({ accept: 'image/*' }, ([file]) => file && holdProfile(file));
  const asked = profile.value;
  if (asked === null) return null;
  const { said, read, photograph } = asked;
  const other = read && inItsPlace(asked);
  return (
    <>
      <main class="drawing">
        <ProfileDrawing of={of} />
      </main>
      <Leaf question={text.question[of]} lead={text.lead[of]} answers={answers(asked, choose)}>
        {profileTrouble.value.length > 0 && (
          <>
            <TroubleBox faults={profileTrouble.value} />
            <details class="shoot-again">
              <summary>{words().see.shootAgain}</summary>
              <HowToShoot />
            </details>
          </>
        )}
        {other && <p class="said stands">{text.stands(other.photograph?.name ?? '')}</p>}
        {read && <AsRead read={read} />}
        <div class="begin">
          {of === 'arch' && <ArchAsked said={said} />}
          <TypedLength
            id="profile-bar"
            label={text.sheetBar}
            how={words().see.sheetBarHow}
            example="150"
            value={said.sheetBar}
            say={(sheetBar) => sayOfProfile({ sheetBar })}
          />
          {!(of === 'arch' && said.lies === 'drawn') && (
            <TypedLength
              id="profile-height"
              label={text.height[of]}
              how={text.heightHow[of]}
              example={of === 'arch' ? '1' : '20'}
              value={said.height}
              say={(height) => sayOfProfile({ height })}
            />
          )}
          {photograph && (
            <>
              <button type="button" class="pale" disabled={isReading} onClick={choose}>
                {text.another}
              </button>
              <p class="how-to">{photograph.name}</p>
            </>
          )}
        </div>
      </Leaf>
    </>
  );
}

function answers(asked: KeptProfile, choose: () => void): readonly Answer[] {
  const text = words().profile;
  const isReading = isReadingProfile.value;
  const leave: Answer = { says: text.leave, isOff: isReading, give: leaveProfile };
  if (asked.photograph === null) return [{ says: text.choose, give: choose }, leave];
  if (asked.read) {
    const other = inItsPlace(asked);
    const take = () =>
      void takeProfile(asked).then((isDone) => {
        if (isDone) leaveProfile();
      });
    return [
      { says: other ? text.takeFor(other.photograph?.name ?? '') : text.take, give: take },
      other ? { ...leave, says: text.layBeside } : leave,
    ];
  }
  return [
    { says: isReading ? text.reading : text.read, isOff: isReading, give: () => void readProfile() },
    leave,
  ];
}

function ArchAsked({ said }: { readonly said: ProfileSaid }) {
  const text = words().profile;
  const { plates, stations } = words();
  const { of, plate, station, lies, rightIs, leaveOut } = said;
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
function AsRead({ read }: { readonly read: ProfileOutcome }) {
  const text = words().profile;
  const { points, plusMinus, fit } = read.document;
  return (
    <section>
      <h2 class="group">{text.asRead}</h2>
      <ul class="rows">
        <Told
          kind="measured"
          name={text.points}
          from={`${text.each} ${spreadText(plusMinus.point)} mm`}
          value={print(points.length, 0)}
          beside=""
        />
        {fit && (
          <>
            <Told kind="derived" name={text.rise} value={{ ...fit.rise, unit: 'mm' }} />
            {fit.fullness && (
              <Told kind="derived" name={text.fullness} value={{ ...fit.fullness, unit: 'ratio' }} />
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

import { useState } from 'preact/hooks';
import { PieceWall } from '../drawing/PieceWall.tsx';
import { Leaf } from '../notebook/Leaf.tsx';
import { NumberList } from '../notebook/NumberList.tsx';
import { built, markBuilt } from '../store.ts';
import { BUILD_STEPS, type BuildStep } from '../way/buildSteps.ts';
import { dayText, words } from '../words/words.ts';

/** The work at the bench: its steps in order, and what belongs to the one that is at hand. */
export function BuildStop() {
  const said = words();
  const bench = said.bench;
  const next = BUILD_STEPS.find(({ name }) => built.value[name] === undefined) ?? BUILD_STEPS.at(-1);
  const [chosen, choose] = useState<BuildStep['name'] | null>(null);
  const step = BUILD_STEPS.find(({ name }) => name === chosen) ?? (next as BuildStep);
  const { name, says, care } = bench.steps[step.name];
  const isDone = built.value[step.name] !== undefined;
  return (
    <>
      <main class="drawing scrolls build">
        <section class="build-steps">
          <h2>{bench.count(BUILD_STEPS.length)}</h2>
          <p class="lead">{bench.lead}</p>
          <ol>
            {BUILD_STEPS.map((one) => (
              <StepPin key={one.name} step={one} isHere={one === step} onTouch={() => choose(one.name)} />
            ))}
          </ol>
        </section>
        <section class="build-now" aria-live="polite">
          <h2>{name}</h2>
          <ol>
            {says.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
          <p class="care">{care}</p>
          {step.parts.length > 0 && (
            <>
              <h3 class="group">{bench.pieces}</h3>
              <PieceWall key={step.name} parts={step.parts} />
            </>
          )}
        </section>
      </main>
      <Leaf
        question={said.questions.build}
        lead={said.leads.build}
        answers={[
          {
            says: isDone ? bench.notAfterAll : bench.doneToday,
            give: () => {
              markBuilt(step.name, !isDone);
              choose(null);
            },
          },
        ]}
      >
        <NumberList title={bench.measure} names={step.numbers} />
      </Leaf>
    </>
  );
}

function StepPin({
  step,
  isHere,
  onTouch,
}: {
  readonly step: BuildStep;
  readonly isHere: boolean;
  readonly onTouch: () => void;
}) {
  const bench = words().bench;
  const { name, rests } = bench.steps[step.name];
  const day = built.value[step.name];
  const below = [day === undefined ? '' : bench.done(dayText(day)), rests].filter((text) => text !== '');
  return (
    <li class={`build-step${isHere ? ' here' : ''}${rests === '' ? '' : ' rests'}`}>
      <button type="button" aria-current={isHere ? 'step' : undefined} onClick={onTouch}>
        <svg class="pin" viewBox="0 0 20 20" aria-hidden="true">
          <circle cx="10" cy="10" r="7" class={day === undefined ? '' : 'filled'} />
          {day !== undefined && <path class="tick" d="M6.500 10.200l2.500 2.600 4.500-5.300" />}
        </svg>
        <span class="stop-name">{name}</span>
        <span class="small">{below.join(', ')}</span>
      </button>
    </li>
  );
}

import { computed, effect, type ReadonlySignal, signal, untracked } from '@preact/signals';
import type { Checked, Design, Fault, Finding, ShownBody, ShownNumbers } from '../../core/index.ts';
import { newestOnly } from './newestOnly.ts';

/** What benches have answered of one design so far; what is not here yet is not known. */
interface Answers {
  readonly body?: Checked<ShownBody>;
  readonly numbers?: Checked<ShownNumbers>;
  /** With those that are dear to find. */
  readonly allNumbers?: Checked<ShownNumbers>;
  /** The view that the hand is in, as it is drawn while it drags. */
  readonly view?: Checked<unknown>;
  readonly findings?: readonly Finding[];
}

/** What is in sight. Where the design on the table is not known yet, or cannot be derived, it is what was last known. */
interface InSight {
  readonly body: ShownBody | null;
  readonly bodyOf: Design | null;
  readonly numbers: ShownNumbers | null;
  readonly allNumbers: ShownNumbers | null;
  readonly sound: Design | null;
  readonly findings: readonly Finding[];
  readonly faults: readonly Fault[];
  readonly heldFaults: readonly Fault[];
}

const NONE: readonly never[] = [];
const NOTHING: InSight = {
  body: null,
  bodyOf: null,
  numbers: null,
  allNumbers: null,
  sound: null,
  findings: NONE,
  faults: NONE,
  heldFaults: NONE,
};

interface Table {
  /** The design, and what it would be by the hand that drags. */
  readonly design: ReadonlySignal<Design | null>;
  readonly held: ReadonlySignal<Design | null>;
  readonly sitting: ReadonlySignal<string>;
}

interface Benches {
  readonly body: (design: Design) => Promise<Checked<ShownBody>>;
  readonly numbers: (design: Design) => Promise<Checked<ShownNumbers>>;
  readonly allNumbers: (design: Design) => Promise<Checked<ShownNumbers>>;
  readonly findings: (design: Design) => Promise<readonly Finding[]>;
}

/**
 * What benches say of the design on the table. Every answer is kept with the design that it is of, whenever it comes, and what is
 * in sight is read from there as the table or the answers change: so nothing that was said of one design can stay with another.
 */
export function tableAnswers({ design, held, sitting }: Table, benches: Benches) {
  const answers = new WeakMap<Design, Answers>();
  const of = (one: Design | null): Answers => (one && answers.get(one)) ?? {};
  const inSight = signal(NOTHING);

  /** Brings into sight what is known of the design on the table; and of another that was just told, for a hand may drag without rest. */
  const see = (told: Design | null) => {
    const was = inSight.peek();
    const [now, pulled] = [design.peek(), held.peek()];
    inSight.value = {
      ...[told, pulled ?? now].reduce((seen, one) => withKnown(seen, one, of(one)), was),
      findings: of(now).findings ?? was.findings,
      faults: faultsOf(of(now)) ?? was.faults,
      heldFaults: pulled === null ? NONE : (heldFaultsOf(of(pulled)) ?? was.heldFaults),
    };
  };
  effect(() => {
    // What is read here is what it is seen again for.
    void [design.value, held.value];
    untracked(() => see(null));
  });

  const keep = (one: Design, news: Answers) => answers.set(one, { ...of(one), ...news });
  const asker = <Key extends keyof Benches>(key: Key, then: (one: Design) => void = () => undefined) =>
    newestOnly(
      async (asked: { readonly design: Design; readonly sitting: string }) =>
        of(asked.design)[key] ?? benches[key](asked.design),
      (answer, asked) => {
        // Another instrument may have come to the bench.
        if (asked.sitting !== sitting.peek()) return;
        keep(asked.design, { [key]: answer });
        see(asked.design);
        then(asked.design);
      },
    );
  const ask = {
    body: asker('body'),
    numbers: asker('numbers', goOn),
    allNumbers: asker('allNumbers', goOn),
    findings: asker('findings'),
  };

  /** Asks for what is not known yet of the numbers, step by step as long as the design is on the table. */
  function askNumbers(one: Design): void {
    const { numbers, allNumbers, findings } = of(one);
    const asked = { design: one, sitting: sitting.peek() };
    if (numbers === undefined) ask.numbers(asked);
    else if (numbers.ok && allNumbers === undefined) ask.allNumbers(asked);
    else if (allNumbers?.ok && findings === undefined && held.peek() === null) ask.findings(asked);
  }
  function goOn(one: Design): void {
    if (one === (held.peek() ?? design.peek())) askNumbers(one);
  }

  const part = <Key extends keyof InSight>(key: Key) => computed(() => inSight.value[key]);
  const [numbers, allNumbers] = [part('numbers'), part('allNumbers')];
  return {
    /** The last body that could be drawn. */
    body: part('body'),
    /** Whose it is; null where the one that was asked for last could not be drawn. */
    bodyOf: part('bodyOf'),
    /** Dear numbers stay as they were until they are known anew; the first time all are waited for, since who lists what rests on a number must have them all. */
    whole: computed(() =>
      numbers.value && allNumbers.value ? withOlder(numbers.value, allNumbers.value) : null,
    ),
    /** The design as it was when it could last be derived; null where it never could in this sitting. */
    sound: part('sound'),
    findings: part('findings'),
    /** Why the design as it stands cannot be derived; the last sound one stays in sight. */
    faults: part('faults'),
    /** Why what the hand holds cannot be drawn. */
    heldFaults: part('heldFaults'),
    askBody: (one: Design) => {
      if (of(one).body === undefined) ask.body({ design: one, sitting: sitting.peek() });
    },
    askNumbers,
    /** A view of it was drawn, or could not be. */
    keepView: (one: Design, view: Checked<unknown>) => {
      keep(one, { view });
      see(null);
    },
    /** Another instrument comes to the table. */
    forget: () => {
      inSight.value = NOTHING;
    },
  };
}

function withKnown(was: InSight, one: Design | null, { body, numbers, allNumbers }: Answers): InSight {
  const isAll = allNumbers?.ok === true;
  return {
    ...was,
    ...(body?.ok && { body: body.value }),
    ...(body && { bodyOf: body.ok ? one : null }),
    ...(numbers?.ok && { sound: one, numbers: isAll ? allNumbers.value : numbers.value }),
    ...(isAll && { allNumbers: allNumbers.value }),
  };
}

/** Why it cannot be derived; undefined while that is not known. A body alone that can be drawn does not tell. */
function faultsOf({ numbers, allNumbers, body }: Answers): readonly Fault[] | undefined {
  return refusalOf(numbers, allNumbers, body) ?? (numbers && NONE);
}

/** Why it cannot be drawn where the hand is. */
function heldFaultsOf({ view, body }: Answers): readonly Fault[] | undefined {
  return refusalOf(view, body) ?? ((view ?? body) && NONE);
}

function refusalOf(...answered: readonly (Checked<unknown> | undefined)[]): readonly Fault[] | undefined {
  const refused = answered.find((one) => one?.ok === false);
  return refused?.ok === false ? refused.faults : undefined;
}

function withOlder(fresh: ShownNumbers, older: ShownNumbers): ShownNumbers {
  const names = new Set(fresh.register.map(({ name }) => name));
  return {
    ...fresh,
    register: [...fresh.register, ...older.register.filter(({ name }) => !names.has(name))],
  };
}

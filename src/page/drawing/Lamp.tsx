import { useRef } from 'preact/hooks';
import type { LampStand } from '../../core/index.ts';
import { words } from '../words/words.ts';
import { holdsFinger } from './holdsFinger.ts';

/** px: radius of the plan that the lamp is carried over. */
const RADIUS = 60;
/** rad: over the plate at the rim and in the middle. */
const LOWEST = 0.14;
const HIGHEST = 1.35;
const STEP = Math.PI / 24;

/** A small plan with the plate in the middle: carry the lamp round it for its direction, inward and it stands higher. */
export function Lamp({ lamp, set }: { readonly lamp: LampStand; readonly set: (lamp: LampStand) => void }) {
  const plan = useRef<SVGSVGElement>(null);
  const isHeld = useRef(false);
  const far = RADIUS * (1 - (lamp.heightRad - LOWEST) / (HIGHEST - LOWEST));
  const [x, y] = [far * Math.sin(lamp.fromRad), -far * Math.cos(lamp.fromRad)];
  const carry = (event: PointerEvent) => {
    if (!isHeld.current || plan.current === null) return;
    const box = plan.current.getBoundingClientRect();
    const dx = event.clientX - (box.left + box.width / 2);
    const dy = event.clientY - (box.top + box.height / 2);
    const share = Math.min(1, Math.hypot(dx, dy) / RADIUS);
    set({ fromRad: Math.atan2(dx, -dy), heightRad: LOWEST + (1 - share) * (HIGHEST - LOWEST) });
  };
  const nudge = (event: KeyboardEvent) => {
    const turn = { ArrowRight: STEP, ArrowLeft: -STEP }[event.key];
    const rise = { ArrowUp: STEP, ArrowDown: -STEP }[event.key];
    if (turn === undefined && rise === undefined) return;
    event.preventDefault();
    set({
      fromRad: lamp.fromRad + (turn ?? 0),
      heightRad: Math.min(HIGHEST, Math.max(LOWEST, lamp.heightRad + (rise ?? 0))),
    });
  };
  const said = words().lamp;
  return (
    <figure class="lamp">
      <svg
        ref={plan}
        width="150"
        height="150"
        viewBox="-75 -75 150 150"
        role="slider"
        tabindex={0}
        aria-label={said.name}
        aria-valuenow={Math.round((lamp.heightRad * 180) / Math.PI)}
        aria-valuetext={lampWords(lamp)}
        {...holdsFinger}
        onPointerDown={(event) => {
          isHeld.current = true;
          event.currentTarget.setPointerCapture(event.pointerId);
          carry(event);
        }}
        onPointerMove={carry}
        onPointerUp={() => {
          isHeld.current = false;
        }}
        onKeyDown={nudge}
      >
        <circle class="lamp-plan" r={RADIUS} />
        <circle class="lamp-ring" r={RADIUS * 0.66} />
        <circle class="lamp-ring" r={RADIUS * 0.33} />
        <path
          class="lamp-body"
          d="M0-21c8 0 10 5 10 10 0 4-3 6-3 11s5 7 5 12c0 7-6 10-12 10s-12-3-12-10c0-5 5-7 5-12s-3-7-3-11c0-5 2-10 10-10z"
        />
        <circle class="lamp-bulb" cx={x} cy={y} r="11" />
      </svg>
      <figcaption>
        {lampWords(lamp)}
        <span class="small">{said.how}</span>
      </figcaption>
    </figure>
  );
}

function lampWords({ fromRad, heightRad }: LampStand): string {
  const said = words().lamp;
  const high = heightRad < 0.5 ? said.low : heightRad < 0.95 ? said.half : said.high;
  const eighth = Math.round((((fromRad % (2 * Math.PI)) + 2 * Math.PI) / (2 * Math.PI)) * 8) % 8;
  return `${high}, ${said.from[eighth]}.`;
}

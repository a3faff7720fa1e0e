import { words } from '../words/words.ts';

/** An empty bench teaches: three small pictures of how to photograph an instrument. */
export function HowToShoot() {
  const steps = words().bring.howToShoot;
  const pictures = [<Sheet key="sheet" />, <Stand key="stand" />, <Light key="light" />];
  return (
    <div class="how">
      {steps.map(({ name, says }, place) => (
        <figure key={name}>
          <svg viewBox="0 0 220 220" aria-hidden="true">
            {pictures[place]}
          </svg>
          <figcaption>
            <b>{name}</b>
            <span class="small">{says}</span>
          </figcaption>
        </figure>
      ))}
    </div>
  );
}

const BODY =
  'M0-52c22 0 30 14 30 27 0 10-8 16-8 25 0 10 13 17 13 32 0 16-14 22-35 22s-35-6-35-22c0-15 13-22 13-32 0-9-8-15-8-25 0-13 8-27 30-27z';

function Sheet() {
  const squares = Array.from({ length: 9 }, (_, index) => index);
  return (
    <g>
      <rect class="how-paper" x="40" y="20" width="140" height="180" />
      {squares.map((index) => (
        <g key={index}>
          <rect class="how-ink" x={46 + index * 14.6} y={26 + (index % 2) * 6} width="6" height="6" />
          <rect class="how-ink" x={46 + index * 14.6} y={182 + (index % 2) * 6} width="6" height="6" />
          <rect class="how-ink" x={46 + (index % 2) * 6} y={30 + index * 17} width="6" height="6" />
          <rect class="how-ink" x={162 + (index % 2) * 6} y={30 + index * 17} width="6" height="6" />
        </g>
      ))}
      <path class="how-line" d="M75 150V160M75 155H145M145 150V160" />
      <path
        class="how-wood"
        d="M70 166h80v12H70zM80 166v5M90 166v5M100 166v5M110 166v7M120 166v5M130 166v5M140 166v5"
      />
    </g>
  );
}

function Stand() {
  return (
    <g>
      <path class="how-line" d="M20 186H200" />
      <path class="how-wood" d="M70 176c10-10 70-10 80 0v6H70z" />
      <path class="how-line" d="M60 184h100" />
      <rect class="how-ink" x="98" y="22" width="24" height="14" rx="2" />
      <path class="how-line" d="M110 36v6" />
      <path class="how-dash" d="M110 44L64 180M110 44L156 180M110 44V170" />
    </g>
  );
}

function Light() {
  return (
    <g>
      <g transform="translate(110 112)">
        <path class="how-wood" d={BODY} />
      </g>
      <circle class="how-lamp" cx="28" cy="60" r="11" />
      <circle class="how-lamp" cx="192" cy="60" r="11" />
      <path class="how-dash" d="M40 68L74 94M180 68L146 94" />
      <path class="how-line" d="M160 196V166M154 166h12M154 196h12" />
    </g>
  );
}

/** Wood from deep shade to full light, sRGB. */
const SHADE = [70, 44, 22] as const;
const MIDDLE = [193, 146, 93] as const;
const BRIGHT = [250, 235, 203] as const;

/** One channel of bare wood under a share of the most light that a picture shows. */
export function woodTone(share: number, channel: 0 | 1 | 2): number {
  const [from, to, along] =
    share < 0.5
      ? [SHADE[channel], MIDDLE[channel], 2 * share]
      : [MIDDLE[channel], BRIGHT[channel], 2 * share - 1];
  return from + (to - from) * along;
}

/** Paper that does not lie flat: how high it stands along its own x, and where on it a place over the table then is. */

/** Height over its level foot, mm, against the level way from its lower left corner along its x axis, mm. */
export type Rise = (levelMm: number) => number;

/** Paper bent up along a crease across it. */
export function foldedRise(creaseMm: number, angleRad: number): Rise {
  return (level) => Math.max(0, level - creaseMm) * Math.tan(angleRad);
}

/** Paper that curls up more and more from a line across it, to `rimMm` at the level way `rimAtMm`. */
export function curledRise(fromMm: number, rimAtMm: number, rimMm: number): Rise {
  return (level) => rimMm * (Math.max(0, level - fromMm) / (rimAtMm - fromMm)) ** 2;
}

const STEP_MM = 0.1;

/** The way along risen paper against the level way, and back; paper neither stretches nor shrinks. */
export function alongRise(rise: Rise, lengthMm: number) {
  const count = Math.ceil(lengthMm / STEP_MM) + 1;
  const ways = new Float64Array(count);
  for (let place = 1; place < count; place++) {
    const climb = rise(place * STEP_MM) - rise((place - 1) * STEP_MM);
    ways[place] = ways[place - 1]! + Math.hypot(STEP_MM, climb);
  }
  const alongOf = (levelMm: number): number => {
    if (levelMm <= 0) return levelMm;
    const place = Math.min(count - 2, Math.floor(levelMm / STEP_MM));
    const [low, high] = [ways[place]!, ways[place + 1]!];
    return low + (levelMm / STEP_MM - place) * (high - low);
  };
  const levelOf = (alongMm: number): number => {
    let [low, high] = [Math.min(0, alongMm), Math.max(0, alongMm)];
    for (let step = 0; step < 50; step++) {
      const middle = (low + high) / 2;
      if (alongOf(middle) < alongMm) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  return { alongOf, levelOf };
}

/** What is said of single places that a thickness is asked for. */
export const placesEn = {
  title: 'thickness at single places',
  none: 'None yet. Ask for what was measured on an original: the map passes through it, on both halves.',
  name: (number: number) => `place ${number}`,
  where: (across: string, up: string) => `${across} from the centre line, ${up} from the lower end`,
  label: (number: number, across: string, up: string) =>
    `thickness at place ${number}, ${across} from the centre line, ${up} from the lower end`,
  says: (number: number, thickness: string) => `thickness at place ${number} ${thickness}`,
  without: (number: number) => `without place ${number}`,
  drop: 'take it away',
  fields: { across: 'from the centre line', up: 'from the lower end', thickness: 'thickness there' },
  ask: 'Ask for it',
};

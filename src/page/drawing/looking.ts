import { signal } from '@preact/signals';

/** How an arch is looked at: drawn on the paper, held in the hand, or as a picture of its own. */
export const looking = signal<'paper' | 'hand' | 'picture'>('paper');

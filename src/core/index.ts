/** The public face of the library: the verbs of `work` and the types that go in and come out of them. */
export type { Design, Family } from './design/index.ts';

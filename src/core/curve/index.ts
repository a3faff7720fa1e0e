export type { Chain, Vertex } from './chain.ts';
export type { HalfOutline } from './halfOutline.ts';

export { type ArchedShape, archedShape, SURFACE_MM } from './archedShape.ts';
export { type Board } from './board.ts';
export { type EdgedShape, edgedShape, type UnderRound, underRound } from './edgedShape.ts';
export { type HollowedShape, hollowedShape, INSIDE_MM } from './hollowedShape.ts';
export { instrumentSolids, type NamedSolid } from './instrumentSolids.ts';
export { type Mesh, meshBox, meshVolume } from './mesh.ts';
export { meshFlaws } from './meshFlaws.ts';
export { INSIDE_CHORD_MM, PLATE_CHORD_MM, plateSolid } from './plateSolid.ts';
export { prism } from './prism.ts';

export { existing, readBytes, readJson, unwritable, writeWhole } from './node/files.ts';
export { type PackFile, sha256, writePack } from './node/packFolder.ts';

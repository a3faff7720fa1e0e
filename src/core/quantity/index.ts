export {
  chosen,
  commonPractice,
  derivedFrom,
  fromMemory,
  measured,
  originText,
  published,
} from './origin.ts';
export { type LengthOptions, type LengthReading, parseLength } from './parseLength.ts';
export { type LengthUnit, printLength } from './printLength.ts';
export { printSpread, spreadDecimals } from './printSpread.ts';
export { isSameQuantity, type Origin, type Quantity, type RegisterEntry, type Unit } from './quantity.ts';
export { dependentsOf, dependsOn, makeRegister, type Register, registerText } from './register.ts';

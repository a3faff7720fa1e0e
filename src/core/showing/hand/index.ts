export { HAND_STUFF, type HandBody, type HandMarks, type HandNet, handBody } from './handBody.ts';
export {
  type HandHold,
  type HandLight,
  type HandPicture,
  handLamp,
  handPicture,
  seesTop,
} from './handPicture.ts';

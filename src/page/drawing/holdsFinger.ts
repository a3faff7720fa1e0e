/**
 * For whatever moves with the finger that is on it. Without this a browser may take a quick pull for a flick of the page, and the
 * next tap, for up to a third of a second, for the wish to stop the flick: the tap never clicks. `touch-action` alone does not help.
 */
export const holdsFinger = {
  onTouchMove: (event: TouchEvent) => {
    if (event.cancelable) event.preventDefault();
  },
};

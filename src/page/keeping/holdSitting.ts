/** Lets go of the sitting that this page holds. */
let letGo: () => void = () => undefined;

/**
 * Takes a sitting for this page alone, until it takes another or is closed; false where another page has it. A browser that
 * knows no locks gives it to everyone.
 */
export async function holdSitting(id: string): Promise<boolean> {
  const { locks } = navigator as { readonly locks?: LockManager };
  if (locks === undefined) return true;
  return new Promise((settle) => {
    void locks
      .request(`garland-${id}`, { ifAvailable: true }, async (lock) => {
        if (lock === null) {
          settle(false);
          return;
        }
        letGo();
        await new Promise<void>((done) => {
          letGo = done;
          settle(true);
        });
      })
      .catch(() => settle(true));
  });
}

/**
 * A page that comes from a server can be installed and goes on without it. One opened from disk is whole already: nothing of
 * this is asked for there.
 */
export function letInstall(): void {
  if (!/^https?:$/.test(location.protocol) || !('serviceWorker' in navigator)) return;
  const link = document.createElement('link');
  link.rel = 'manifest';
  link.href = './garland.webmanifest';
  document.head.append(link);
  // A browser may refuse, in a private window for one: then the page works as long as its server does.
  navigator.serviceWorker.register('./service.js').catch(() => undefined);
}

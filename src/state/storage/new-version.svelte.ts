// Whether a newer version of the page is there: fetched and waiting, or already in use by another tab. Taking it loads the page
// anew, after everything on it is kept.

export class NewVersion {
  /** `waiting`: it can be taken. `in-use`: another tab has taken it, and this page is older than what it would load. */
  state: 'none' | 'waiting' | 'in-use' = $state('none');
  #waiting: ServiceWorker | null = null;
  #isTaking = false;

  /** Returns what stops watching. */
  start(): () => void {
    if (!('serviceWorker' in navigator)) return () => {};
    const { serviceWorker } = navigator;
    // the first version that takes hold of a page replaces none
    let hadOne = serviceWorker.controller !== null;
    const replaced = (): void => {
      if (this.#isTaking) location.reload();
      else if (hadOne) this.state = 'in-use';
      hadOne = true;
    };
    serviceWorker.addEventListener('controllerchange', replaced);
    // a page from the disk has none, and asking is refused
    if (location.protocol !== 'file:')
      void serviceWorker.ready.then((registration) => {
        this.#watch(registration);
      });
    return () => serviceWorker.removeEventListener('controllerchange', replaced);
  }

  /** `keep` writes what is on the page. */
  async take(keep: () => Promise<void>): Promise<void> {
    await keep();
    if (this.state === 'in-use' || this.#waiting === null) return location.reload();
    this.#isTaking = true;
    this.#waiting.postMessage('take over');
  }

  #watch(registration: ServiceWorkerRegistration): void {
    const look = (): void => {
      if (registration.waiting === null || navigator.serviceWorker.controller === null) return;
      this.#waiting = registration.waiting;
      if (this.state === 'none') this.state = 'waiting';
    };
    look();
    registration.addEventListener('updatefound', () =>
      registration.installing?.addEventListener('statechange', look),
    );
  }
}

/** One answer to many events: editors write, rename and delete in one go, and a checkout changes hundreds of files. */
export interface Pauses {
  /** Milliseconds without an event, after which a burst counts as over. */
  readonly quiet: number;
  /** A burst that goes on longer is answered in between. */
  readonly most: number;
}

/** Never works twice at once: what comes during the work is answered after it. */
export class Bursts {
  readonly #work: () => Promise<void>;
  readonly #pauses: Pauses;
  #timer: NodeJS.Timeout | undefined;
  #began: number | undefined;
  #isWorking = false;
  #isClosed = false;

  constructor(work: () => Promise<void>, pauses: Pauses) {
    this.#work = work;
    this.#pauses = pauses;
  }

  event(): void {
    if (this.#isClosed) return;
    this.#began ??= Date.now();
    this.#wait(this.#began);
  }

  close(): void {
    this.#isClosed = true;
    clearTimeout(this.#timer);
  }

  #wait(began: number): void {
    if (this.#isWorking) return;
    const left = began + this.#pauses.most - Date.now();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#answer(), Math.max(0, Math.min(this.#pauses.quiet, left)));
  }

  async #answer(): Promise<void> {
    this.#began = undefined;
    this.#isWorking = true;
    try {
      await this.#work();
    } finally {
      this.#isWorking = false;
      if (this.#began !== undefined && !this.#isClosed) this.#wait(this.#began);
    }
  }
}

/**
 * Tells that something changed in a folder, not what. On Linux the system watches single folders, so each gets a watch of its own;
 * when a name came or went they are set anew, as a folder may be new, or another one under an old name. Elsewhere the system
 * watches a folder with all that is in it.
 */
import { type FSWatcher, readdirSync, watch } from "node:fs";
import { platform } from "node:os";
import { join } from "node:path";

export class FolderWatch {
  readonly #folder: string;
  readonly #changed: () => void;
  readonly #isRecursive: boolean;
  #watches: FSWatcher[] = [];
  #isStale = true;

  /** Nothing is told before the first renewal. */
  constructor(folder: string, changed: () => void, isRecursive: boolean = platform() !== "linux") {
    this.#folder = folder;
    this.#changed = changed;
    this.#isRecursive = isRecursive;
  }

  /**
   * To be called before the folder is read: whatever changes from then on is told. Throws when the folder is not there, or when
   * the system has no more watches to give.
   */
  renew(): void {
    if (!this.#isStale) return;
    const paths = this.#isRecursive ? [this.#folder] : foldersIn(this.#folder);
    const old = this.#watches;
    // The new ones are set before the old ones go, so that nothing is missed between them.
    this.#watches = paths.flatMap((path) => ignoreMissing(() => this.#watch(path), []));
    this.#isStale = false;
    for (const one of old) one.close();
  }

  close(): void {
    for (const one of this.#watches) one.close();
    this.#watches = [];
    this.#isStale = true;
  }

  #watch(path: string): FSWatcher[] {
    const told = (event: string): void => {
      if (event === "rename") this.#isStale ||= !this.#isRecursive;
      this.#changed();
    };
    // An error is told like a change: the next renewal says what is wrong.
    const failed = (): void => {
      this.#isStale = true;
      this.#changed();
    };
    return [watch(path, { recursive: this.#isRecursive, persistent: false }, told).on("error", failed)];
  }
}

/** The folder itself first. Hidden ones hold no data; one that goes at this moment holds none either. */
function foldersIn(folder: string): string[] {
  const inside = readdirSync(folder, { withFileTypes: true }).filter(
    (entry) => entry.isDirectory() && !entry.name.startsWith("."),
  );
  return [
    folder,
    ...inside.flatMap((entry) => ignoreMissing(() => foldersIn(join(folder, entry.name)), [] as string[])),
  ];
}

function ignoreMissing<T>(look: () => T, otherwise: T): T {
  try {
    return look();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return otherwise;
    throw error;
  }
}

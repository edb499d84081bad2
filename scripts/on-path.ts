/** Programs that may be on this machine. */
import { delimiter, join } from "node:path";

/** Where each of these names would lie on PATH, folder by folder in its order. */
export function onPath(names: readonly string[], env: NodeJS.ProcessEnv): string[] {
  const folders = (env.PATH ?? "").split(delimiter).filter(Boolean);
  return folders.flatMap((folder) => names.map((name) => join(folder, name)));
}

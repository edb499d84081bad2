/** What tests may know of ensure-install.mjs, which has to be plain JavaScript. */
export interface Installation {
  /** When the last finished installation was, in ms; undefined: never. */
  installed: number | undefined;
  /** When package-lock.json changed last; undefined: there is none. */
  wanted: number | undefined;
  /** The major version of the Node in node_modules; undefined: none that runs. */
  node: number | undefined;
}
export function decide(installation: Installation): string | undefined;
export function look(root: string): Installation;
export function installCommand(
  root: string,
  env: Record<string, string | undefined>,
  platform?: string,
): { file: string; args: string[]; shell: boolean };

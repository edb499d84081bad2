/** The part of Eleventy's programmatic interface that the build uses; the package brings no types. */
declare module "@11ty/eleventy" {
  export interface Config {
    addGlobalData(name: string, value: unknown): void;
  }
  export interface WrittenPage {
    readonly outputPath: string | false;
  }
  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: { configPath: string; quietMode: boolean; config(config: Config): void },
    );
    disableLogger(): void;
    write(): Promise<[copied: unknown, pages: (WrittenPage | undefined)[]]>;
  }
}

declare module "@11ty/eleventy-plugin-rss" {
  /** A date as Atom writes it (RFC 3339). */
  export function dateToRfc3339(date: Date): string;
  const plugin: (config: unknown) => void;
  export default plugin;
}

/**
 * One page of the site, made when it is asked for, from the same templates as the whole site. Eleventy always makes all pages of
 * a template, so one among thousands would cost thousands; of what Eleventy does, the templates use only this much.
 */
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Site } from "../../site/site.ts";

const PAGES = join(import.meta.dirname, "../../site/pages");

type Given = Readonly<Record<string, unknown>>;

export interface Template {
  readonly data: {
    /** The file of the page inside the site. */
    readonly permalink: string | ((given: Given) => string);
    /** Where there are many pages: where the list of them is found, and what the template calls one of it. */
    readonly pagination?: { readonly data: string; readonly size: 1; readonly alias: string };
  };
  render(given: Given): string;
}

export class Templates {
  readonly #all: ReadonlyMap<string, Template>;
  /** By the first step of an address: the template that made the last page there. */
  readonly #last = new Map<string, Template>();
  /** By site and template: what the template is given for each file. */
  readonly #made = new WeakMap<Site, Map<Template, ReadonlyMap<string, Given>>>();

  /** By the names of their files. */
  constructor(all: ReadonlyMap<string, Template>) {
    this.#all = all;
  }

  static async open(): Promise<Templates> {
    const names = (await readdir(PAGES)).filter((name) => name.endsWith(".11ty.ts")).sort();
    const load = async (name: string): Promise<[string, Template]> => [
      name.replace(".11ty.ts", ""),
      await import(pathToFileURL(join(PAGES, name)).href),
    ];
    return new Templates(new Map(await Promise.all(names.map(load))));
  }

  /** The text of a file, "/records/index.html"; nothing where no template makes such a file. */
  render(site: Site, file: string): string | undefined {
    const [template, given] = this.#find(site, file) ?? [];
    return template && given && template.render(given);
  }

  has(site: Site, file: string): boolean {
    return this.#find(site, file) !== undefined;
  }

  /** To know what pages a template has it must make its lists. So the likely one is tried first: the last one there, or one of that name. */
  #find(site: Site, file: string): [Template, Given] | undefined {
    const first = file.split("/")[1] ?? "";
    const likely = this.#last.get(first) ?? [...this.#all].find(([name]) => first.startsWith(name))?.[1];
    for (const template of [...(likely ? [likely] : []), ...this.#all.values()]) {
      const given = this.#filesOf(template, site).get(file);
      if (!given) continue;
      this.#last.set(first, template);
      return [template, given];
    }
    return undefined;
  }

  #filesOf(template: Template, site: Site): ReadonlyMap<string, Given> {
    const made = this.#made.get(site) ?? new Map<Template, ReadonlyMap<string, Given>>();
    this.#made.set(site, made);
    const files = made.get(template) ?? filesOf(template, site);
    made.set(template, files);
    return files;
  }
}

function filesOf({ data }: Template, site: Site): Map<string, Given> {
  const { permalink, pagination } = data;
  const common: Given = { ...data, site };
  const all = pagination
    ? listAt(common, pagination.data).map((it) => ({ ...common, [pagination.alias]: it }))
    : [common];
  return new Map(all.map((given) => [typeof permalink === "string" ? permalink : permalink(given), given]));
}

/** "site.records" is the list of records of the site. */
function listAt(given: Given, path: string): readonly unknown[] {
  const found = path.split(".").reduce<unknown>((at, step) => (at as Given | undefined)?.[step], given);
  if (!Array.isArray(found)) throw new Error(`a template pages through ${path}, which is no list`);
  return found;
}

/** npm run schemas: writes the JSON Schemas for editors and a description of every check into schemas/. Tests hold them to the code. */
import { mkdir, writeFile } from "node:fs/promises";
import { rulesDocument } from "../src/build/data/show-rules.ts";
import { editorSchemas } from "../src/build/schemas.ts";

await mkdir("schemas", { recursive: true });
for (const [name, schema] of editorSchemas())
  await writeFile(`schemas/${name}`, `${JSON.stringify(schema, null, 2)}\n`);
await writeFile("schemas/checks.md", rulesDocument());

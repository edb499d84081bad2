/** npm run schemas: writes the JSON Schemas for editors into schemas/. A test holds them to the code. */
import { mkdir, writeFile } from "node:fs/promises";
import { editorSchemas } from "../src/build/schemas.ts";

await mkdir("schemas", { recursive: true });
for (const [name, schema] of editorSchemas())
  await writeFile(`schemas/${name}`, `${JSON.stringify(schema, null, 2)}\n`);

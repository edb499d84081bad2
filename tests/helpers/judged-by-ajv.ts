/** A published JSON Schema as an outside judge. Source: Ajv, JSON Schema 2020-12. */
import { Ajv2020 } from "ajv/dist/2020.js";

/** What is wrong with a value, fault by fault; nothing when the schema holds. */
export type Judge = (value: unknown) => string[];

export function judgedBy(schema: object): Judge {
  const ajv = new Ajv2020({
    allErrors: true,
    strict: true,
    // These two are matters of taste, and the generator's taste is another.
    allowUnionTypes: true,
    strictRequired: false,
    formats: { uri: (text: string) => URL.canParse(text) },
  });
  const holds = ajv.compile(schema);
  return (value) =>
    holds(value) ? [] : (holds.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

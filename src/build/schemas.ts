/** JSON Schemas, generated from the same shapes that the checks and the answers use. */
import { z } from "zod";
import { batchQuestion, QUESTIONS } from "../engine/answers/questions.ts";
import { carShape } from "../engine/answers/shapes/car.ts";
import { vocabularyShape } from "../engine/ask/vocabulary-shape.ts";
import { graphDocument } from "../engine/graph/document.ts";
import { FILE_KINDS, type FileKind } from "../engine/records/file-kinds.ts";
import { findingsDocument } from "./data/findings-shape.ts";
import { manifestShape } from "./publish/manifest-shape.ts";

/** For editors: file name to schema, one for each kind of file in a data folder. */
export function editorSchemas(): Map<string, object> {
  return new Map(
    Object.entries(FILE_KINDS).map(([name, { shape, body }]: [string, FileKind]) => {
      const schema = toSchema(shape, "input");
      // The text below the facts is no field of the YAML that an editor completes.
      return [`${name}.json`, body === undefined ? schema : without(schema, body)];
    }),
  );
}

/** For programs: what the published documents and the answers look like. */
export function answerSchemas(): Map<string, object> {
  return new Map([
    ...Object.entries(QUESTIONS).map(([name, { answer }]): [string, object] => [
      `answer-${name}.json`,
      toSchema(answer, "output"),
    ]),
    ["question.json", toSchema(batchQuestion, "input")],
    ["car.json", toSchema(carShape, "input")],
    ["graph.json", toSchema(graphDocument, "output")],
    ["vocabulary.json", toSchema(vocabularyShape, "output")],
    ["manifest.json", toSchema(manifestShape, "output")],
    ["findings.json", toSchema(findingsDocument, "output")],
  ]);
}

function toSchema(shape: z.ZodType, io: "input" | "output"): object {
  return z.toJSONSchema(shape, { io, target: "draft-2020-12" });
}

function without(schema: object, field: string): object {
  const { properties, required, ...rest } = schema as { properties: Record<string, object>; required?: string[] };
  const { [field]: _, ...kept } = properties;
  return { ...rest, properties: kept, required: required?.filter((name) => name !== field) };
}

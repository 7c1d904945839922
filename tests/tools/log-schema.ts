/** The JSON Schema (draft 2020-12) of a log file, made from the schema that the app itself reads with. */
import { toJsonSchema } from "@valibot/to-json-schema";
import type { Statement } from "../../grammar/statement.ts";
import { isEntryStatement } from "../../src/log/event.ts";
import { documentSchema } from "../../src/log/transfer.ts";

/** Where it is published: beside the app. */
export const LOG_SCHEMA_FILE = "public/pegscribe-log.schema.json";

export function logSchema(): object {
  const { $schema, ...schema } = toJsonSchema(documentSchema, {
    target: "draft-2020-12",
    typeMode: "input",
    // JSON holds finite numbers only, and a transformation changes a value’s type alone here.
    ignoreActions: ["finite", "transform"],
    overrideAction: ({ valibotAction, jsonSchema }) => {
      if (valibotAction.type === "check") return entriesOnly(jsonSchema);
      // Patterns of a JSON Schema are read as with the flag "u", and carry none themselves.
      return "requirement" in valibotAction && valibotAction.requirement instanceof RegExp
        ? { ...jsonSchema, pattern: valibotAction.requirement.source }
        : undefined;
    },
  });
  return {
    $schema,
    title: "Pegscribe log",
    description:
      "Events as they were said, typed or touched. Weights in grams, lengths in millimetres, temperatures in degrees Celsius, times in milliseconds since the epoch.",
    ...schema,
  };
}

type JsonSchema = ReturnType<typeof toJsonSchema>;

/** The one check in the schema: corrections and questions are no entries. */
function entriesOnly(statements: JsonSchema): JsonSchema {
  const isEntry = (one: unknown) => {
    const { properties } = one as { properties: { kind: { const: Statement["kind"] } } };
    return isEntryStatement({ kind: properties.kind.const } as Statement);
  };
  const { anyOf, oneOf, ...rest } = statements;
  return {
    ...rest,
    ...(anyOf && { anyOf: anyOf.filter(isEntry) }),
    ...(oneOf && { oneOf: oneOf.filter(isEntry) }),
  };
}

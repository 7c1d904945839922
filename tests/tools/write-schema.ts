/** Writes the JSON Schema that is published beside the app; to be run after the log's schema changed. */
import { writeFileSync } from "node:fs";
import { LOG_SCHEMA_FILE, logSchema } from "./log-schema.ts";

writeFileSync(LOG_SCHEMA_FILE, JSON.stringify(logSchema()));

import { build } from "vite";

/** A module and all that it imports as one script, which leaves what it exports under a name. */
export async function pageScript(entry: string, name: string): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: "error",
    build: { write: false, lib: { entry, name, formats: ["iife"] } },
  });
  const [script] = [built].flat().flatMap((one) => ("output" in one ? one.output : []));
  if (script?.type !== "chunk") throw new Error(`There is no script of ${name}.`);
  return script.code;
}

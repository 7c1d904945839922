import type { Plugin } from "vite";

const FEELER = /@stdlib\/assert-has-generator-support\/lib\/main\.js$/;

/**
 * The distribution functions feel for generators by `eval`, which the page's policy refuses and the
 * browser then complains of. Every browser that runs the rest of the app has them.
 */
export const noEval: Plugin = {
  name: "no-eval",
  apply: "build",
  load: (id) => (FEELER.test(id) ? "module.exports = () => true;" : null),
};

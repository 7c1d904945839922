/** All that makes a log of an earlier version, to be sent to a page as one script. */
export { makeV1 } from "../../browser/store-v1.ts";
export { makeV2 } from "../../browser/store-v2.ts";
export { makeV3 } from "../../browser/store-v3.ts";

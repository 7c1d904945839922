/** Which warnings are spoken, and how early that of a net comes. */
import * as v from "valibot";

/** The chance of a net over its limit that is borne in silence; choices of our own. */
export const NET_RISKS = { early: 0.1, usual: 0.3, late: 0.4 } as const;

export const warningsSchema = v.object({
  /** When a net is warned of as near its limit; passing it is a broken rule. */
  nets: v.picklist(["early", "usual", "late", "off"]),
  /** Limits of line, bait, nets and times. */
  rules: v.boolean(),
  /** The fishing has gone quiet, or come on. */
  pace: v.boolean(),
  /** The rig in use has more shot than its float carries. */
  float: v.boolean(),
});

export type Warnings = v.InferOutput<typeof warningsSchema>;

export const ALL_WARNINGS: Warnings = { nets: "usual", rules: true, pace: true, float: true };

/** Which warnings are spoken. */
export const warningSettingsWords = {
  title: "Warnings",
  about: "Each is spoken once for its cause.",
  nets: "A net near its limit",
  netLevels: { early: "Early", usual: "Usual", late: "Late", off: "Off" },
  netHint: "Early bears a chance of 1 in 10 that the net is over, usual 3 in 10, late 4 in 10.",
  rules: "A rule that is broken, and the end of time",
  pace: "Gone quiet, or come on",
  paceHint: "At ten fish an hour about one steady session in twenty is called quiet without cause.",
  float: "A rig that sinks",
};

/**
 * What to look out for before fishing. Each names whose advice it is; it was read in 2026, is no
 * substitute for theirs, and theirs may have changed.
 */
export const cautionWords = {
  title: "Look round first",
  cautions: [
    {
      of: "Power lines",
      advice:
        "A pole conducts, and electricity jumps. Stay 30 m or more from overhead lines, and further where the network operator says so. Carry the pole level.",
      source: "Energy Networks Association, advice for anglers",
    },
    {
      of: "Lightning",
      advice:
        "At the first thunder put the pole down and take shelter. Wait 30 minutes after the last.",
      source: "US National Weather Service",
    },
    {
      of: "Water",
      advice:
        "It is deep, and below 15 °C it is cold. Fish with company, or tell someone where you are. If you fall in, float first.",
      source: "RNLI and RLSS UK",
    },
    {
      of: "Fish",
      advice:
        "Wet hands and mat, mind the hook. Knotless keepnets of legal size, short times in them, less in heat.",
      source: "Environment Agency, byelaws and advice",
    },
  ],
  source: (source: string) => `Source: ${source}`,
  last: "The fishery’s rules, the byelaws, your rod licence and local advice come first. The weights and warnings here are an aid, never the last word.",
} as const;

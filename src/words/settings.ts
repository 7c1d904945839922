/** How the phone serves the angler. */
export const settingsWords = {
  title: "This phone",
  about: "Kept on this phone, for every session.",
  talking: {
    title: "Units and voice",
    weights: "Weights",
    weightStyles: { "lb-oz": "Pounds and ounces", kg: "Kilos" },
    lengths: "Lengths",
    lengthStyles: { cm: "Centimetres", in: "Inches" },
    talkback: "How it talks back",
    levels: { tones: "Tones only", short: "Short", full: "In full" },
    callWord: "Call word",
    callWordHint:
      "For noisy company: only what starts with this word counts. Empty switches it off.",
  },
} as const;

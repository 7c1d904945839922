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
  layout: {
    title: "Hand and light",
    hand: "The thumb that touches",
    hands: { right: "Right", left: "Left" },
    lights: "Colours",
    lightNames: { system: "As the phone", light: "Light", dark: "Dark" },
    lightsHint: "In bright sun the light ones are the easier to read.",
  },
  keeping: {
    title: "How safe the log is",
    states: {
      unknown: "The browser has not said yet whether it keeps the log for good.",
      kept: "The browser has promised to keep the log, even when room gets short. Only you can clear it, in the browser’s settings.",
      "may-go":
        "The browser has not promised to keep the log: it may clear it when room gets short. A home screen icon, or using the app more, mostly earns the promise.",
    },
    ask: "Ask it to keep the log",
    safari:
      "Safari clears what a website stored after seven days of use in which the site was not visited; an app on the home screen is spared.",
    export: "The log in a file is yours whatever the browser does:",
    exportLink: "save it under Files",
  },
  homeScreen: {
    title: "On the home screen",
    there: "The app is on the home screen. It starts from there without a signal, and full screen.",
    offered: "From there it starts without a signal, full screen, and its log is safer.",
    button: "Put it on the home screen",
    byMenu:
      "In the browser’s menu, or its share menu, choose “Add to home screen” or “Install”. From there it starts without a signal, full screen, and its log is safer.",
  },
  checks: {
    title: "Microphone and voice",
    about: "Try both before the first cast; it takes less than a minute.",
    guide: "Try them now",
    refused:
      "If the microphone is refused: open the browser’s settings for this page (the sign beside the address), allow the microphone, then come back and start listening. An app on the home screen has its permission in the phone’s own settings.",
  },
} as const;

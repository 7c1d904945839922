/** What each trouble of hearing means, and what can be done about it, one sentence each. */
export const troubleSentences = {
  "not-allowed": {
    what: "The microphone is not open to this page.",
    remedy:
      "Allow the microphone in the browser's settings for this page, then tap to listen again.",
  },
  "service-off": {
    what: "Speech recognition is switched off on this device.",
    remedy: "Turn on dictation or the voice assistant in the device's settings, then tap again.",
  },
  "no-microphone": {
    what: "No sound is coming from a microphone.",
    remedy: "Plug the headset in again or end the call that is using the microphone.",
  },
  network: {
    what: "The browser's recogniser cannot reach its service.",
    remedy: "Listening comes back by itself with the signal; until then, entries can be typed.",
  },
  "no-speech": {
    what: "Nothing was said for a while.",
    remedy: "Just speak; listening goes on.",
  },
  language: {
    what: "The recogniser has no English here.",
    remedy: "Add English to the device's speech languages, or type the entries.",
  },
  busy: {
    what: "The recogniser is busy with something else.",
    remedy: "It is tried again by itself; closing other pages or apps that listen helps.",
  },
  aborted: {
    what: "Something else took the microphone.",
    remedy: "It is tried again by itself; closing other pages or apps that listen helps.",
  },
  stalled: {
    what: "The recogniser stopped answering.",
    remedy: "It is tried again by itself; if that goes on, close and open the page.",
  },
  unsupported: {
    what: "This browser has no speech recognition.",
    remedy: "Type the same phrases into the field, or open the page in another browser.",
  },
  "not-kept": {
    what: "The ears inside the app are not on this phone yet.",
    remedy:
      "Fetch them in Set-up, under Listening, while there is a signal; until then, entries can be typed.",
  },
} as const;

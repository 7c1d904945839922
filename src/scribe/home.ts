import { signal } from "@preact/signals";
import { findSynthesis } from "../speech/voice.ts";
import type { Attendant } from "./attendant.ts";
import type { Desks } from "./desks.ts";
import { HomeScreen } from "./home-screen.ts";
import type { SmallStore } from "./small-store.ts";
import { StorageCare } from "./storage-care.ts";

interface HomeOptions {
  small: SmallStore;
  desks: Desks;
  attend: () => Promise<Attendant>;
}

/** The phone that the app lives on: what it keeps, where it starts from, and first steps on it. */
export function makeHome({ small, desks, attend }: HomeOptions) {
  const care = new StorageCare({
    isGiven: async () => navigator.storage?.persisted?.(),
    ask: () => desks.own.store.persist(),
  });
  const screen = new HomeScreen(window);
  const isNew = signal(small.get("guide") === undefined);
  return {
    storage: care.state,
    askToKeep: () => care.ask(),
    homeScreen: screen.state,
    putOnHomeScreen: () => screen.take(),
    isNew,
    practise: () => desks.practise(),
    stopPractising() {
      small.set("guide", "seen");
      isNew.value = false;
      desks.stopSample();
    },
    async tryVoice(words: string) {
      (await attend()).say(words);
      return findSynthesis() !== undefined;
    },
  };
}

import { computed, type ReadonlySignal } from "@preact/signals";
import { lasts } from "../log/lasts.ts";
import { AtStake } from "./at-stake.ts";
import type { Desks } from "./desks.ts";
import { goingOver } from "./going-over.ts";
import { NewVersion } from "./new-version.ts";
import type { Hearing } from "./news.ts";

interface UpdateOptions {
  desks: Desks;
  hearing: ReadonlySignal<Hearing>;
  /** Whether a deleted session can still be put back, which a page that is loaded again forgets. */
  canPutBack(): boolean;
}

/** When a new version of the app is offered, and when it is gone over to unasked. */
export function makeUpdates({ desks, hearing, canPutBack }: UpdateOptions) {
  const { own, current } = desks;
  const version = new NewVersion();
  // The angler's own session may run on behind a sample; what is only in memory would be lost.
  const isAtStake = computed(
    () =>
      [current.value, own].some(({ session }) => lasts(session.value)) ||
      own.keeping.value.unsaved > 0,
  );
  const atStake = new AtStake(isAtStake);
  return {
    isOffered: computed(() => version.isWaiting.value && !atStake.anywhere.value),
    /** Looks at what other tabs are at; to be called now and then. */
    async look() {
      if (version.isWaiting.value) await atStake.look();
    },
    /** Loads the page again if another tab has taken a new version, and nothing is lost by it. */
    goOver: goingOver({
      isTaken: version.isTaken,
      isBusy: () =>
        isAtStake.value || current.value !== own || isAtWork(hearing.value) || canPutBack(),
      stored: () => own.keeper.retry(),
    }),
    watch: () => version.watch("./sw.js"),
    take: () => version.take(),
  };
}

const isAtWork = ({ is }: Hearing) => !["off", "refused", "unavailable"].includes(is);

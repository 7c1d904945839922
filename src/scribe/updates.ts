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
  /** Whether loading the page again would be noticed by nobody. */
  isUntouched(): boolean;
}

export type Updates = ReturnType<typeof makeUpdates>;

/** When a new version of the app is offered, and when it is gone over to unasked. */
export function makeUpdates({ desks, hearing, canPutBack, isUntouched }: UpdateOptions) {
  const { own, current } = desks;
  const version = new NewVersion();
  // The angler's own session may run on behind a sample; what is only in memory would be lost.
  const isAtStake = computed(
    () =>
      [current.value, own].some(({ session }) => lasts(session.value)) ||
      own.keeping.value.unsaved > 0,
  );
  const atStake = new AtStake(isAtStake);
  const goOver = goingOver({
    isTaken: version.isTaken,
    isBusy: () =>
      isAtStake.value || current.value !== own || isAtWork(hearing.value) || canPutBack(),
    stored: () => own.keeper.retry(),
  });
  return {
    isOffered: computed(() => version.isWaiting.value && !atStake.anywhere.value),
    /** Looks at what other tabs are at, and have taken; to be called now and then. */
    look() {
      if (version.isWaiting.value) void atStake.look();
      if (isUntouched()) void goOver();
    },
    watch() {
      // The screen that is asked for may be among the files that are gone.
      addEventListener("hashchange", goOver);
      return version.watch("./sw.js");
    },
    take: () => version.take(),
  };
}

const isAtWork = ({ is }: Hearing) => !["off", "refused", "unavailable"].includes(is);

/** Which events still count, once withdrawals and the withdrawals of withdrawals are settled. */
import type { EventBody, LogEvent } from "./event.ts";

export type EventOf<K extends EventBody["kind"]> = LogEvent & { body: { kind: K } };

const isWithdrawal = (event: LogEvent): event is EventOf<"withdraw"> =>
  event.body.kind === "withdraw";

/**
 * A withdrawal counts unless one that counts withdraws it, so undo and redo may follow each other
 * without end. Withdrawals that only withdraw each other in a ring count for nothing: in doubt
 * nothing is taken away.
 * @param events every event, in any order
 * @returns the withdrawals that count, by the id of each event they take back, in the given order
 */
export function withdrawalsThatCount(
  events: readonly LogEvent[],
): ReadonlyMap<string, readonly EventOf<"withdraw">[]> {
  const withdrawals = events.filter(isWithdrawal);
  const counting = settle(withdrawals);
  const byTarget = new Map<string, EventOf<"withdraw">[]>();
  for (const withdrawal of withdrawals.filter((one) => counting.has(one.id))) {
    for (const target of new Set(withdrawal.body.targets)) {
      const list = byTarget.get(target);
      if (list) list.push(withdrawal);
      else byTarget.set(target, [withdrawal]);
    }
  }
  return byTarget;
}

/** Works from the withdrawals nobody withdraws inward; without recursion, as chains grow long. */
function settle(withdrawals: readonly EventOf<"withdraw">[]): ReadonlySet<string> {
  const byId = new Map(withdrawals.map((one) => [one.id, one]));
  const against = new Map<string, number>();
  for (const one of withdrawals) {
    for (const id of new Set(one.body.targets)) against.set(id, (against.get(id) ?? 0) + 1);
  }

  const counts = new Map<string, boolean>();
  const decided: EventOf<"withdraw">[] = [];
  const decide = (one: EventOf<"withdraw">, does: boolean) => {
    counts.set(one.id, does);
    decided.push(one);
  };
  for (const one of withdrawals) if (!against.has(one.id)) decide(one, true);
  for (let one = decided.pop(); one; one = decided.pop()) {
    for (const id of new Set(one.body.targets)) {
      const target = byId.get(id);
      if (!target || counts.has(id)) continue;
      if (counts.get(one.id)) decide(target, false);
      else {
        const left = (against.get(id) ?? 0) - 1;
        against.set(id, left);
        if (left === 0) decide(target, true);
      }
    }
  }
  return new Set(withdrawals.map((one) => one.id).filter((id) => counts.get(id)));
}

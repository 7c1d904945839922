import type { Signal } from "@preact/signals";
import { useId } from "preact/hooks";
import type { Digest } from "../../scribe/season/digest.ts";
import { monthOf, type Query } from "../../scribe/season/query.ts";
import type { Option } from "../../ui/choices.tsx";
import { sessionsWords } from "../../words/sessions.ts";
import { Card } from "../summary/card.tsx";

const words = sessionsWords.find;

interface FindProps {
  digests: readonly Digest[];
  query: Signal<Query>;
}

const METHODS = ["match", "practice", "coaching"] as const;

/** Narrows the list and the sums down; only what there is can be asked for. */
export function Find({ digests, query }: FindProps) {
  const { water, month, method } = query.value;
  const ask = (part: { [K in keyof Query]?: Query[K] | undefined }) => {
    const asked = Object.entries({ ...query.value, ...part }).filter(
      ([, value]) => value !== undefined,
    );
    query.value = Object.fromEntries(asked);
  };
  const waters = unique(digests.flatMap(({ plan }) => plan.water ?? [])).sort();
  const months = unique(digests.map(monthOf)).sort((one, next) => one - next);
  const methods = METHODS.filter((one) => digests.some(({ plan }) => plan.method === one));
  return (
    <Card title={words.title}>
      <div class="find">
        <Pick
          label={words.water}
          options={waters.map((value) => ({ value, name: value }))}
          value={water}
          onPick={(value) => ask({ water: value })}
        />
        <Pick
          label={words.month}
          options={months.map((value) => ({
            value: String(value),
            name: sessionsWords.months[value] ?? "",
          }))}
          value={month === undefined ? undefined : String(month)}
          onPick={(value) => ask({ month: value === undefined ? undefined : Number(value) })}
        />
        <Pick
          label={words.method}
          options={methods.map((value) => ({ value, name: sessionsWords.methods[value] }))}
          value={method}
          onPick={(value) => ask({ method: METHODS.find((one) => one === value) })}
        />
      </div>
    </Card>
  );
}

interface PickProps {
  label: string;
  options: readonly Option<string>[];
  value: string | undefined;
  onPick: (value: string | undefined) => void;
}

function Pick({ label, options, value, onPick }: PickProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        class="input"
        value={value ?? ""}
        onChange={(event) => onPick(event.currentTarget.value || undefined)}
      >
        <option value="">{words.any}</option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.name}
          </option>
        ))}
      </select>
    </div>
  );
}

const unique = <T,>(values: readonly T[]): T[] => [...new Set(values)];

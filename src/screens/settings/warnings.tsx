import { Choices, Tick } from "../../ui/choices.tsx";
import { warningSettingsWords as words } from "../../words/warning-settings.ts";
import type { App, Settings } from "../app.ts";
import { optionsOf } from "./options.ts";

const SWITCHES = ["rules", "pace", "float"] as const;

/** Which warnings are spoken, and how early that of a net comes. */
export function WarningsCard({ app }: { app: App }) {
  const { warnings } = app.settings.value;
  const set = (part: Partial<Settings["warnings"]>) =>
    app.setSettings({ warnings: { ...warnings, ...part } });
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <p>{words.about}</p>
      <Choices
        label={words.nets}
        options={optionsOf(words.netLevels)}
        value={warnings.nets}
        onChange={(nets) => set({ nets })}
      />
      <p>{words.netHint}</p>
      {SWITCHES.map((name) => (
        <Tick
          key={name}
          label={words[name]}
          value={warnings[name]}
          onChange={(value) => set({ [name]: value })}
        />
      ))}
      <p>{words.paceHint}</p>
    </section>
  );
}

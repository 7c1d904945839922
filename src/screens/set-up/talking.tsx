import { Choices } from "../../ui/choices.tsx";
import { TextField } from "../../ui/text-field.tsx";
import type { App } from "../app.ts";

const WEIGHTS = [
  { value: "lb-oz", name: "Pounds and ounces" },
  { value: "kg", name: "Kilos" },
] as const;

const LENGTHS = [
  { value: "cm", name: "Centimetres" },
  { value: "in", name: "Inches" },
] as const;

const LEVELS = [
  { value: "tones", name: "Tones only" },
  { value: "short", name: "Short" },
  { value: "full", name: "In full" },
] as const;

/** Units, and how the phone talks and listens; kept on this device. */
export function Talking({ app }: { app: App }) {
  const { weight, length, talkback, callWord } = app.settings.value;
  return (
    <section class="ticket">
      <h2>On this device</h2>
      <Choices
        label="Weights"
        options={WEIGHTS}
        value={weight}
        onChange={(value) => app.setSettings({ weight: value })}
      />
      <Choices
        label="Lengths"
        options={LENGTHS}
        value={length}
        onChange={(value) => app.setSettings({ length: value })}
      />
      <Choices
        label="How it talks back"
        options={LEVELS}
        value={talkback}
        onChange={(value) => app.setSettings({ talkback: value })}
      />
      <TextField
        label="Call word"
        value={callWord ?? ""}
        onSave={(word) => app.setSettings({ callWord: word || undefined })}
        hint="For noisy company: only what starts with this word counts. Empty switches it off."
      />
    </section>
  );
}

import type { EntryStatement } from "../../log/event.ts";
import { Choices, Tick } from "../../ui/choices.tsx";
import { Stepper } from "../../ui/stepper.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import type { Field } from "./fields.ts";
import { NameField } from "./name-field.tsx";
import { steppingOf } from "./steppers.ts";
import { lengthStyleOf, weightStyleOf } from "./words.ts";

interface FieldControlProps {
  app: App;
  field: Field;
  statement: EntryStatement;
  /** Called with undefined to take the field away; `name` is its own where it is left out. */
  onChange: (value: unknown, name?: string) => void;
}

/** One field of an entry, set by touch. */
export function FieldControl({ app, field, statement, onChange }: FieldControlProps) {
  const { label, isNeeded } = field;
  const value: unknown = (statement as Readonly<Record<string, unknown>>)[field.name];
  switch (field.is) {
    case "text":
      return (
        <TextField
          label={label}
          value={typeof value === "string" ? value : ""}
          onSave={(text) => onChange(text || (isNeeded ? "" : undefined))}
        />
      );
    case "tick":
      return (
        <Tick label={label} value={value === true} onChange={(is) => onChange(is || undefined)} />
      );
    case "name":
      return (
        <NameField
          app={app}
          label={label}
          of={field.of}
          value={typeof value === "string" ? value : undefined}
          onChange={onChange}
        />
      );
    case "unit": {
      const unit = "unit" in statement ? statement.unit : undefined;
      return (
        <Choices<string | undefined>
          label={label}
          options={field.options}
          value={unit?.[field.of]}
          onChange={(said) => onChange({ ...unit, [field.of]: said }, "unit")}
        />
      );
    }
    case "choice": {
      const notSaid = { value: undefined, name: reviewWords.editor.notSaid };
      return (
        <Choices
          label={label}
          options={isNeeded ? field.options : [...field.options, notSaid]}
          value={typeof value === "string" ? value : undefined}
          onChange={onChange}
        />
      );
    }
    default:
      return (
        <QuantityControl
          app={app}
          field={field}
          statement={statement}
          value={typeof value === "number" ? value : undefined}
          onChange={onChange}
        />
      );
  }
}

interface QuantityControlProps extends FieldControlProps {
  value: number | undefined;
}

function QuantityControl({ app, field, statement, value, onChange }: QuantityControlProps) {
  const settings = app.settings.value;
  const stepping = steppingOf(field.is, {
    weight: weightStyleOf(statement, settings.weight),
    length: lengthStyleOf(statement, settings.length),
  });
  if (!stepping) return null;
  return (
    <Stepper
      label={field.label}
      value={value}
      onChange={onChange}
      {...stepping}
      {...(!field.isNeeded && { onClear: () => onChange(undefined) })}
    />
  );
}

/** One session in the form that is wanted: shown first, then handed over. */
import "./pass-on.css";
import { useComputed } from "@preact/signals";
import { useMemo, useState } from "preact/hooks";
import { type Allowed, NOTHING_ALLOWED } from "../../share/allowed.ts";
import { summarise } from "../../share/summary.ts";
import { Choices, Tick } from "../../ui/choices.tsx";
import { passOnWords as words } from "../../words/pass-on.ts";
import type { App } from "../app.ts";
import { LinkForm } from "./link-form.tsx";
import type { Passed } from "./passed.ts";
import { PictureForm } from "./picture-form.tsx";
import { PrintForm } from "./print-form.tsx";
import { Sheet } from "./sheet.tsx";
import { TextForm } from "./text-form.tsx";

const FORMS = { text: TextForm, picture: PictureForm, link: LinkForm, print: PrintForm } as const;
type FormName = keyof typeof FORMS;

const OPTIONS = (Object.keys(FORMS) as FormName[]).map((value) => ({
  value,
  name: words.forms[value],
}));

const SWITCHES = ["water", "peg", "notes"] as const satisfies readonly (keyof Allowed)[];

const MS_PER_MINUTE = 60_000;

export function PassOn({ app }: { app: App }) {
  const [form, setForm] = useState<FormName>("text");
  const [allowed, setAllowed] = useState<Allowed>(NOTHING_ALLOWED);
  const session = app.session.value;
  const { weight, length } = app.settings.value;
  // Times are told to the minute: a new picture every second would only warm the phone.
  const now = useComputed(() => Math.ceil(app.now.value / MS_PER_MINUTE) * MS_PER_MINUTE).value;
  const passed = useMemo(
    (): Passed => ({
      session,
      summary: summarise(session, now),
      now,
      styles: { weight, length },
      allowed,
    }),
    [session, now, weight, length, allowed],
  );
  const Form = FORMS[form];
  return (
    <section class="ticket" aria-labelledby="pass-on">
      <h2 id="pass-on">{words.title}</h2>
      <p>{words.about}</p>
      <div class="choices">
        {SWITCHES.map((what) => (
          <Tick
            key={what}
            label={words[what]}
            value={allowed[what]}
            onChange={(is) => setAllowed({ ...allowed, [what]: is })}
          />
        ))}
      </div>
      <Choices label={words.as} options={OPTIONS} value={form} onChange={setForm} />
      <Form passed={passed} />
      <Sheet passed={passed} />
      <a class="button" href="#files">
        {words.files}
      </a>
    </section>
  );
}

/** One walk through a session in order, from which everything about it follows. */
import { addFish, emptyNet, NOTHING_CAUGHT } from "./catch.ts";
import type { LogEvent, Plan } from "./event.ts";
import { comparePlaces, type Place } from "./order.ts";
import { advance, notStarted } from "./progress.ts";
import type { Revision } from "./revision.ts";
import type { Entry, HeardLine, Net, Session, SetUp } from "./session.ts";
import { changeTackle, noTackle } from "./set-up.ts";
import type { Steps } from "./undo.ts";

type TakenRevision = Revision & Required<Pick<Revision, "statement">>;
type TakenBack = TakenRevision & Required<Pick<Revision, "withdrawnBy">>;

export class Walk {
  readonly #id: string;
  readonly #steps: Steps;
  readonly #entries: Entry[] = [];
  readonly #heardLines: HeardLine[] = [];
  readonly #nets = new Map<number, Net>([[1, emptyNet(1)]]);
  #last: Place | undefined;
  #progress = notStarted();
  #tackle = noTackle();
  #net = 1;
  #plan: Plan = {};
  #caught = NOTHING_CAUGHT;
  #lastFishAt: number | undefined;
  #reminder: Session["reminder"];
  #withdrawn: { entry: Entry; by: LogEvent }[] = [];
  #takenBack: readonly Entry[] | undefined;

  /** @param steps the corrections and undoings of the session, which no step changes */
  constructor(id: string, steps: Steps) {
    this.#id = id;
    this.#steps = steps;
  }

  /** Whether this is the place to go on: nothing walked so far comes after it. */
  isNext(place: Place): boolean {
    return this.#last === undefined || comparePlaces(this.#last, place) < 0;
  }

  /** Takes the next revision, in a time that does not grow with the session. */
  step(revision: Revision): void {
    this.#last = revision;
    if (isTakenBack(revision)) this.#setAside(revision);
    else if (isTaken(revision)) this.#take(revision);
    else if (!revision.withdrawnBy) this.#note(revision.event);
  }

  #take(revision: TakenRevision): void {
    const { statement, at } = revision;
    this.#progress = advance(this.#progress, statement, at);
    if (statement.kind === "change") {
      this.#tackle = changeTackle(this.#tackle, statement, this.#plan.rigs ?? []);
    }
    if (statement.kind === "net") this.#openNet(statement.number ?? this.#net + 1);
    if (statement.kind === "remind") this.#remind(statement.everyMs, statement.about, at);
    const entry = toEntry(revision, this.#tackle.setUp, this.#net);
    if (statement.kind === "fish") {
      entry.fishNumber = this.#caught.count + 1;
      this.#caught = addFish(this.#caught, statement);
      this.#nets.set(this.#net, addFish(this.#netOf(this.#net), statement));
      this.#lastFishAt = at;
    }
    this.#entries.push(entry);
  }

  #setAside(revision: TakenBack): void {
    const entry = toEntry(revision, this.#tackle.setUp, this.#net);
    this.#withdrawn.push({ entry, by: revision.withdrawnBy });
    this.#takenBack = undefined;
  }

  #note({ id, at, heard, body }: LogEvent): void {
    if (body.kind === "heard" && heard) this.#heardLines.push({ id, at, heard });
    if (body.kind === "plan") this.#plan = replan(this.#plan, body.plan);
    if (body.kind === "weigh") {
      const net = this.#netOf(body.net);
      const weighedBy = [...(net.weighedBy ?? []), id];
      this.#nets.set(body.net, { ...net, weighedG: body.weightG, weighedBy });
    }
  }

  #netOf(number: number): Net {
    return this.#nets.get(number) ?? emptyNet(number);
  }

  #openNet(number: number): void {
    this.#net = number;
    this.#nets.set(number, this.#netOf(number));
  }

  #remind(everyMs: number, about: string | undefined, since: number): void {
    if (everyMs === 0) this.#reminder = undefined;
    else this.#reminder = { everyMs, since, ...(about === undefined ? {} : { about }) };
  }

  #inOrderTaken(): readonly Entry[] {
    this.#takenBack ??= this.#withdrawn
      .sort((a, b) => comparePlaces(a.by, b.by))
      .map(({ entry }) => entry);
    return this.#takenBack;
  }

  /** The session so far. Its lists grow with the walk: copying them would make each step dearer. */
  session(): Session {
    return {
      id: this.#id,
      ...this.#progress,
      plan: this.#plan,
      setUp: this.#tackle.setUp,
      net: this.#net,
      nets: [...this.#nets.values()].sort((a, b) => a.number - b.number),
      entries: this.#entries,
      heardLines: this.#heardLines,
      withdrawn: this.#inOrderTaken(),
      ...this.#steps,
      ...this.#caught,
      ...(this.#reminder && { reminder: this.#reminder }),
      ...(this.#lastFishAt !== undefined && { lastFishAt: this.#lastFishAt }),
    };
  }
}

const isTaken = (revision: Revision): revision is TakenRevision => revision.statement !== undefined;

const isTakenBack = (revision: Revision): revision is TakenBack =>
  isTaken(revision) && revision.withdrawnBy !== undefined;

function toEntry(revision: TakenRevision, setUp: SetUp, net: number): Entry {
  const { id, at, statement, verdict, event, history } = revision;
  const { heard, group } = event;
  return {
    id,
    at,
    statement,
    verdict,
    setUp,
    net,
    history,
    ...(heard && { heard }),
    ...(group !== undefined && { group }),
  };
}

/** A later plan replaces the fields it names; null clears one. */
function replan(plan: Plan, later: Plan): Plan {
  const fields = Object.entries({ ...plan, ...later });
  return Object.fromEntries(fields.filter(([, value]) => value !== null && value !== undefined));
}

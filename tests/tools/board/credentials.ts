/**
 * Who may do what on a board, as signed statements (NATS JWTs) that the server checks by itself.
 * Chosen over users and passwords in the configuration because they end at a stated time without
 * anybody reloading anything, and because every server of a cluster holds them with the same file.
 */
import {
  createAccount,
  createOperator,
  createUser,
  encodeAccount,
  encodeOperator,
  encodeUser,
  fromSeed,
  type KeyPair,
} from "@nats-io/jwt";
import type { Invitation } from "../../../src/board/invitation.ts";
import {
  inboxOf,
  isForWatching,
  readingSubjects,
  seatSubjects,
} from "../../../src/board/subjects.ts";

/** What a server's configuration needs of the keys; the signing keys themselves are not in it. */
export interface Trust {
  operatorJwt: string;
  system: { key: string; jwt: string };
  account: { key: string; jwt: string };
}

export interface Credential {
  jwt: string;
  seed: string;
}

/** Makes credentials for one board's account. */
export class Issuer {
  readonly trust: Trust;
  readonly #account: KeyPair;

  private constructor(trust: Trust, account: KeyPair) {
    this.trust = trust;
    this.#account = account;
  }

  /**
   * @param mostBytes room on disk for the board's stream
   * @param seed the account's key, of an earlier opening: what it signed then stays good. The
   * operator only vouches for the account to the server, and may be another each time.
   */
  static async open(mostBytes: number, seed?: string): Promise<Issuer> {
    const account = seed ? fromSeed(new TextEncoder().encode(seed)) : createAccount();
    const [operator, system] = [createOperator(), createAccount()];
    const signer = { signer: operator };
    const limits = {
      ...{ conn: -1, leaf: -1, subs: -1, data: -1, payload: -1, imports: -1, exports: -1 },
      ...{ wildcards: true, mem_storage: 0, disk_storage: mostBytes, streams: 1, consumer: -1 },
    };
    const trust = {
      operatorJwt: await encodeOperator("pegscribe", operator, {
        system_account: system.getPublicKey(),
      }),
      system: {
        key: system.getPublicKey(),
        jwt: await encodeAccount("system", system, {}, signer),
      },
      account: {
        key: account.getPublicKey(),
        jwt: await encodeAccount("board", account, { limits }, signer),
      },
    };
    return new Issuer(trust, account);
  }

  /** What the account signs with: whoever has it can make invitations. */
  get seed(): string {
    return new TextDecoder().decode(this.#account.getSeed());
  }

  /** May do anything in the board's account: makes the stream. Never handed out. */
  keeper(): Promise<Credential> {
    return this.#issue("keeper", {});
  }

  /**
   * May read the board and write as one seat, or as none with a name for watching.
   * @param until milliseconds since the epoch
   */
  async seat(place: Pick<Invitation, "address" | "board" | "seat">, until: number) {
    const { board, seat } = place;
    const writing = isForWatching(seat) ? [] : [seatSubjects(board, seat)];
    const pub = { allow: [...writing, ...readingSubjects(board)] };
    const rights = { pub, sub: { allow: [`${inboxOf(seat)}.>`] } };
    return { ...place, ...(await this.#issue(seat, rights, until)) } satisfies Invitation;
  }

  async #issue(name: string, rights: object, until?: number): Promise<Credential> {
    const user = createUser();
    const ends = until === undefined ? {} : { exp: Math.floor(until / 1000) };
    const jwt = await encodeUser(name, user, this.#account, rights, ends);
    return { jwt, seed: new TextDecoder().decode(user.getSeed()) };
  }
}

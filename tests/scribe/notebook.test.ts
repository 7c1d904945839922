import { expect, test } from "vitest";
import { note } from "../../src/scribe/notebook.ts";
import { KilledPhone } from "./killed-phone.ts";

const fish = () => note({ kind: "entry", statement: { kind: "fish" } }, "log");

test("a session that is opened again shows what is stored of it and what is only in memory", async () => {
  const phone = new KilledPhone();
  const desks = await phone.started();
  const { own } = desks;
  const { id } = own.notebook.peek();
  await own.notebook.peek().write([fish()]);
  phone.store.failing = "quota";
  await own.notebook.peek().write([fish()]);
  desks.openSession("another");
  await own.notebook.peek().write([fish(), fish()]);
  expect(own.session.value.count).toBe(2);
  desks.openSession(id);
  await own.notebook.peek().ready;
  expect(own.session.value.count).toBe(1);
  phone.store.failing = undefined;
  await own.keeper.retry();
  expect(own.session.value.count).toBe(2);
  own.keeper.close();
});

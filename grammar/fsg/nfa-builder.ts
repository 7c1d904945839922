/** Builds the automaton of a JSGF tree piece by piece (Thompson 1968). */
import { VOID } from "../jsgf/sample.ts";
import { JsgfError, type Node } from "../jsgf/syntax.ts";
import type { Dfa, Nfa, NfaArc } from "./automaton.ts";

export class NfaBuilder {
  readonly #arcs: NfaArc[][] = [[]];
  readonly #ruleOf: (name: string) => Dfa;

  /** @param ruleOf the automaton of a rule that a tree names */
  constructor(ruleOf: (name: string) => Dfa) {
    this.#ruleOf = ruleOf;
  }

  build(node: Node): Nfa {
    const final = this.#state();
    this.#add(node, 0, final);
    return { arcs: this.#arcs, final };
  }

  #state(): number {
    return this.#arcs.push([]) - 1;
  }

  #arc(from: number, arc: NfaArc): void {
    this.#arcs[from]?.push(arc);
  }

  #add(node: Node, from: number, to: number): void {
    switch (node.type) {
      case "word":
        this.#arc(from, { word: node.word.toLowerCase(), to });
        break;
      case "rule":
        if (node.name !== VOID) this.#addRule(this.#ruleOf(node.name), from, to);
        break;
      case "choice":
        for (const item of node.items) this.#add(item, from, to);
        break;
      case "sequence":
        this.#addSequence(node.items, from, to);
        break;
      case "optional":
        this.#add(node.item, from, to);
        this.#arc(from, { to });
        break;
      case "repeat":
        this.#addRepeat(node, from, to);
    }
  }

  #addSequence(items: readonly Node[], from: number, to: number): void {
    let at = from;
    for (const [index, item] of items.entries()) {
      const next = index === items.length - 1 ? to : this.#state();
      this.#add(item, at, next);
      at = next;
    }
    if (items.length === 0) throw new JsgfError("an empty sequence");
  }

  /** States of its own on both sides, so that the loop can't be entered from outside it. */
  #addRepeat({ item, atLeast }: Node & { type: "repeat" }, from: number, to: number): void {
    const [before, after] = [this.#state(), this.#state()];
    this.#arc(from, { to: before });
    this.#add(item, before, after);
    this.#arc(after, { to: before });
    this.#arc(after, { to });
    if (atLeast === 0) this.#arc(from, { to });
  }

  #addRule(rule: Dfa, from: number, to: number): void {
    const copies = rule.arcs.map(() => this.#state());
    const copyOf = (state: number) => copies[state] as number;
    this.#arc(from, { to: copyOf(0) });
    for (const [state, arcs] of rule.arcs.entries())
      for (const [word, next] of arcs) this.#arc(copyOf(state), { word, to: copyOf(next) });
    for (const state of rule.finals) this.#arc(copyOf(state), { to });
  }
}

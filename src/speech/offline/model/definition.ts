/**
 * The model's list of phones in context, in the Sphinx decoders' binary format ("BMDF", described
 * in the head of such a file): which triphones there are, and which sounds (senones) each is a row of.
 */

/** Where in a word a phone stands, in the format's own order. */
export const POSITIONS = ["inside", "begins", "ends", "single"] as const;
export type Position = (typeof POSITIONS)[number];

/** Phones are named by their place in `ModelDefinition.phones`. */
export interface Triphone {
  position: Position;
  base: number;
  left: number;
  right: number;
  /** Place in `ModelDefinition.sequences`. */
  sequence: number;
  transitions: number;
}

export interface ModelDefinition {
  /** Names in alphabetical order, as the decoder searches them. */
  phones: readonly { name: string; isFiller: boolean; sequence: number; transitions: number }[];
  triphones: readonly Triphone[];
  /** Rows of senones; those of phones out of context come first. */
  sequences: readonly (readonly number[])[];
  senones: number;
  plainSenones: number;
  transitionMatrices: number;
}

const MAGIC = "BMDF";
const VERSION = 1;
const COUNTS = 10;
const NODE_BYTES = 8;
const ENTRY_BYTES = 12;
const padded = (bytes: number): number => (bytes + 3) & ~3;

/** Throws for bytes that do not begin as the format does. */
export function parseDefinition(bytes: Uint8Array): ModelDefinition {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const text = new TextDecoder("latin1");
  if (text.decode(bytes.subarray(0, 4)) !== MAGIC) throw new Error("No list of phones.");
  let at = 12 + view.getInt32(8, true);
  const count = (index: number) => view.getInt32(at + 4 * index, true);
  const [plain, all, states, sequenceCount, nodes] = [0, 1, 2, 6, 8].map(count) as number[];
  const [plainSenones, senones, transitionMatrices] = [3, 4, 5].map(count) as number[];
  at += 4 * COUNTS;
  const names = text.decode(bytes.subarray(at)).split("\0", plain);
  at += padded(names.join("\0").length + 1) + NODE_BYTES * (nodes as number);
  const entry = (index: number) => {
    const from = at + ENTRY_BYTES * index;
    const [position, base, left, right] = bytes.subarray(from + 8, from + 12);
    const [sequence, transitions] = [view.getInt32(from, true), view.getInt32(from + 4, true)];
    return { position, base, left, right, sequence, transitions };
  };
  const phones = names.map((name, index) => {
    const { sequence, transitions, position } = entry(index);
    return { name, isFiller: position !== 0, sequence, transitions };
  });
  const triphones = range(plain as number, all as number).map((index) => {
    const { position, ...rest } = entry(index);
    return { ...rest, position: POSITIONS[position as number] } as Triphone;
  });
  at += ENTRY_BYTES * (all as number) + 4;
  const sequences = range(0, sequenceCount as number).map((row) =>
    range(0, states as number).map((state) =>
      view.getUint16(at + 2 * ((states as number) * row + state), true),
    ),
  );
  return {
    phones,
    triphones,
    sequences,
    senones,
    plainSenones,
    transitionMatrices,
  } as ModelDefinition;
}

const range = (from: number, to: number): number[] =>
  Array.from({ length: to - from }, (_, index) => from + index);

/** A node of the tree in which the decoder looks triphones up: by position, base, left and right. */
interface Node {
  context: number;
  down: Node[];
  /** The phone at a leaf. */
  phone: number;
}

export function printDefinition(definition: ModelDefinition): Uint8Array {
  const { phones, triphones, sequences } = definition;
  const states = sequences[0]?.length ?? 0;
  const names = phones.map(({ name }) => `${name}\0`).join("");
  const nodes = layers(treeOf(definition));
  const head = 12 + 4 * COUNTS;
  const rows = head + padded(names.length) + NODE_BYTES * nodes.length;
  const tail = rows + ENTRY_BYTES * (phones.length + triphones.length);
  const bytes = new Uint8Array(padded(tail + 4 + 2 * states * sequences.length));
  const view = new DataView(bytes.buffer);
  bytes.set(latin(MAGIC));
  const silence = phones.findIndex(({ name }) => name === "SIL");
  const counts = [phones.length, phones.length + triphones.length, states];
  counts.push(definition.plainSenones, definition.senones, definition.transitionMatrices);
  counts.push(sequences.length, 3, nodes.length, silence);
  for (const [index, value] of [VERSION, 0, ...counts].entries())
    view.setInt32(4 + 4 * index, value, true);
  bytes.set(latin(names), head);
  writeTree(view, head + padded(names.length), nodes);
  const write = (index: number, sequence: number, transitions: number, marks: number[]) => {
    const at = rows + ENTRY_BYTES * index;
    view.setInt32(at, sequence, true);
    view.setInt32(at + 4, transitions, true);
    bytes.set(marks, at + 8);
  };
  for (const [index, { sequence, transitions, isFiller }] of phones.entries())
    write(index, sequence, transitions, [Number(isFiller), 0, 0, 0]);
  for (const [index, { position, base, left, right, sequence, transitions }] of triphones.entries())
    write(phones.length + index, sequence, transitions, [
      POSITIONS.indexOf(position),
      base,
      left,
      right,
    ]);
  view.setInt32(tail, states * sequences.length, true);
  for (const [index, senone] of sequences.flat().entries())
    view.setUint16(tail + 4 + 2 * index, senone, true);
  return bytes;
}

const latin = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

function treeOf({ phones, triphones }: ModelDefinition): Node[] {
  const roots: Node[] = [];
  for (const [index, { position, base, left, right }] of triphones.entries()) {
    let among = roots;
    for (const context of [POSITIONS.indexOf(position), base, left, right]) {
      const known = among.find((one) => one.context === context);
      const node = known ?? { context, down: [], phone: phones.length + index };
      if (!known) among.push(node);
      among = node.down;
    }
  }
  return roots;
}

/** Level by level, so that the nodes below one stand side by side. */
function layers(roots: Node[]): Node[] {
  const all: Node[] = [...roots];
  for (const node of all) all.push(...node.down);
  return all;
}

function writeTree(view: DataView, from: number, nodes: readonly Node[]): void {
  const places = new Map(nodes.map((node, place) => [node, place]));
  for (const [place, { context, down, phone }] of nodes.entries()) {
    const at = from + NODE_BYTES * place;
    view.setInt16(at, context, true);
    view.setInt16(at + 2, down.length, true);
    view.setInt32(at + 4, down[0] ? (places.get(down[0]) as number) : phone, true);
  }
}

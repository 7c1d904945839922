/** Something from outside that is not taken; the message is a sentence for the angler. */
export class Refusal extends Error {
  override readonly name = "Refusal";
}

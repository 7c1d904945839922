/** How the decoder finds a phone in context, or what comes nearest to it. */
import { type ModelDefinition, POSITIONS, type Triphone } from "./definition.ts";

export type Sound = Pick<Triphone, "position" | "base" | "left" | "right">;

const keyOf = ({ position, base, left, right }: Sound): string =>
  `${position} ${base} ${left} ${right}`;

/**
 * The triphone itself, else the same at another place in a word, else with silence about a word's
 * ends; undefined where only the phone out of context is left.
 */
export function nearest({
  phones,
  triphones,
}: ModelDefinition): (sound: Sound) => Triphone | undefined {
  const silence = phones.findIndex(({ name }) => name === "SIL");
  const byKey = new Map(triphones.map((triphone) => [keyOf(triphone), triphone]));
  const anywhere = (sound: Sound): Triphone | undefined =>
    [sound.position, ...POSITIONS]
      .map((position) => byKey.get(keyOf({ ...sound, position })))
      .find((found) => found !== undefined);
  return (sound) => {
    const { position } = sound;
    const left = position === "begins" || position === "single" ? silence : sound.left;
    const right = position === "ends" || position === "single" ? silence : sound.right;
    return anywhere(sound) ?? anywhere({ ...sound, left, right });
  };
}

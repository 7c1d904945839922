/** The least that an app of this kind is made of: one signal and one button. */
import { signal } from "@preact/signals";
import { h, render } from "preact";

const count = signal(0);
const add = () => {
  count.value += 1;
};
const Button = () => h("button", { type: "button", onClick: add }, `Start ${count.value}`);

const root = document.getElementById("app");
if (root) render(h(Button, {}), root);

/** What a phone is told of the app that it puts on its home screen. Source: W3C, "Web Application Manifest". */
import type { ManifestOptions } from "vite-plugin-pwa";
import { appWords } from "../../../src/words/app.ts";
import { SCREENSHOTS } from "./screenshots.ts";

const icon = (size: number) => ({ sizes: `${size}x${size}`, type: "image/png" });

export const manifest: Partial<ManifestOptions> = {
  // Who it is, wherever it starts: addresses are those of the folder that it lies in.
  id: "./",
  start_url: "./",
  scope: "./",
  name: appWords.name,
  short_name: appWords.name,
  description: appWords.description,
  lang: appWords.language,
  dir: "ltr",
  categories: ["sports", "utilities"],
  display: "standalone",
  orientation: "any",
  background_color: "#fff8e7",
  theme_color: "#0b3b3c",
  icons: [
    { src: "icon.svg", sizes: "any", type: "image/svg+xml" },
    { src: "icon-192.png", ...icon(192) },
    { src: "icon-512.png", ...icon(512) },
    { src: "icon-maskable-192.png", ...icon(192), purpose: "maskable" },
    { src: "icon-maskable-512.png", ...icon(512), purpose: "maskable" },
  ],
  shortcuts: (["review", "summary", "set-up"] as const).map((screen) => ({
    name: appWords.screens[screen].name,
    description: appWords.screens[screen].about,
    url: `./#${screen}`,
    icons: [{ src: "icon-192.png", ...icon(192) }],
  })),
  screenshots: SCREENSHOTS.map(({ file, form, label, width, height }) => ({
    src: file,
    sizes: `${width}x${height}`,
    type: "image/png",
    form_factor: form,
    label,
  })),
};

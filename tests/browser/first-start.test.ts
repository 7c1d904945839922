import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, inject, test } from "vitest";
import { appInBrowser } from "./app-in-browser.ts";

const app = appInBrowser("/some/folder/");

/** A page that keeps what the browser complains of: refused by the policy, missing, thrown. */
async function openPage(): Promise<{ page: Page; complaints: string[] }> {
  const page = await app.browser.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  return { page, complaints };
}

test("opens from a folder deep in a site, with nothing refused, missing or thrown", async () => {
  const { page, complaints } = await openPage();
  await page.goto(app.url);
  await page.getByText("Pegscribe").first().waitFor();
  expect(complaints).toEqual([]);
  await page.close();
});

test("asks nobody but its own server for anything", async () => {
  const { page } = await openPage();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(app.url, { waitUntil: "networkidle" });
  expect(asked.length).toBeGreaterThan(1);
  expect(asked.filter((url) => !url.startsWith(app.url) && !/^(data|blob):/.test(url))).toEqual([]);
  await page.close();
});

test("refuses a script written into the page", async () => {
  const { page, complaints } = await openPage();
  await page.goto(app.url);
  const ran = await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "document.title = 'taken over'";
    document.head.append(script);
    return document.title;
  });
  expect(ran).toContain("Pegscribe");
  expect(complaints.join()).toContain("Content Security Policy");
  await page.close();
});

const builtFile = (name: string) => readFileSync(join(inject("appFolder"), name));

test("the built page carries a policy that lets nothing strange run, and nothing out unasked", () => {
  const [, policy = ""] =
    /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(
      builtFile("index.html").toString().replaceAll("&#39;", "'"),
    ) ?? [];
  const rules = new Map(
    policy.split("; ").map((rule) => [rule.split(" ")[0], rule.split(" ").slice(1).join(" ")]),
  );
  expect(rules.get("default-src")).toBe("'self'");
  expect(rules.get("script-src")).toBe("'self' 'wasm-unsafe-eval'");
  expect(rules.get("style-src")).toBe("'self'");
  for (const nowhere of ["frame-src", "object-src", "base-uri", "form-action"]) {
    expect([nowhere, rules.get(nowhere)]).toEqual([nowhere, "'none'"]);
  }
  expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*(?!:)/);
});

/** What is looked for in a page, each sent to it as text: nothing here may draw on anything outside. */

/** Words that are broken over lines, cut off, or beside the screen; and a page that scrolls at all: only the screen in it does. */
export function cutWords(): string[] {
  const faults: string[] = [];
  const main = document.querySelector("main");
  if (main && main.scrollWidth > main.clientWidth) faults.push("the screen scrolls sideways");
  if (document.documentElement.scrollWidth > innerWidth) faults.push("the page scrolls sideways");
  if (document.documentElement.scrollHeight > innerHeight) faults.push("the page scrolls down");
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const node = walker.currentNode;
    const parent = node.parentElement;
    if (!parent || parent.closest(".for-ears, script, svg, option, noscript")) continue;
    for (const { 0: word, index } of (node.textContent ?? "").matchAll(/[^\s-–]+-?/g)) {
      const range = document.createRange();
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      const boxes = [...range.getClientRects()].filter(({ width }) => width > 0);
      const tops = new Set(boxes.map(({ top }) => Math.round(top)));
      if (tops.size > 1) faults.push(`broken: ${word}`);
      if (boxes.some(({ left, right }) => left < -1 || right > innerWidth + 1))
        faults.push(`beside the screen: ${word}`);
    }
    const style = getComputedStyle(parent);
    if (style.overflowX !== "visible" && parent.scrollWidth > parent.clientWidth + 1)
      faults.push(`cut off: ${parent.textContent}`);
  }
  return faults;
}

/** What can be touched and is narrower or lower than 48 px; links within a sentence aside. */
export function smallTargets(): string[] {
  const targets = document.querySelectorAll<HTMLElement>(
    "button, select, summary, input:not([type=radio], [type=checkbox]), label.choice, nav a, a[class]",
  );
  return [...targets]
    .map((target) => ({ target, box: target.getBoundingClientRect() }))
    .filter(({ box }) => box.width > 0 && (box.width < 47.5 || box.height < 47.5))
    .map(({ target, box }) => {
      const size = `${Math.round(box.width)} × ${Math.round(box.height)}`;
      return `${size}: ${target.outerHTML.slice(0, 120)}`;
    });
}

/** Control characters and halves of letters have no place in an XML document (XML 1.0, 2.2). */
const NO_XML = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu;

/** A drawing as a document of its own, without what would keep it from being read again. */
export const svgDocument = (svg: SVGSVGElement): string =>
  new XMLSerializer().serializeToString(svg).replace(NO_XML, "");

/**
 * A drawing as a PNG, as many pixels wide and high as it says of itself.
 * @throws Error where the browser can't
 */
export async function toPng(svg: SVGSVGElement, name: string): Promise<File> {
  const image = new Image();
  const source = new Blob([svgDocument(svg)], { type: "image/svg+xml" });
  image.src = URL.createObjectURL(source);
  try {
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = Number(svg.getAttribute("width"));
    canvas.height = Number(svg.getAttribute("height"));
    canvas.getContext("2d")?.drawImage(image, 0, 0);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
    if (!blob) throw new Error("The browser made no picture.");
    return new File([blob], name, { type: "image/png" });
  } finally {
    URL.revokeObjectURL(image.src);
  }
}

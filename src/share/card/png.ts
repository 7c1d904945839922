/**
 * A drawing as a PNG, as many pixels wide and high as it says of itself.
 * @throws Error where the browser can't
 */
export async function toPng(svg: SVGSVGElement, name: string): Promise<File> {
  const image = new Image();
  const source = new Blob([new XMLSerializer().serializeToString(svg)], { type: "image/svg+xml" });
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

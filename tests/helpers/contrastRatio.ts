/** Linear light of the three channels of a color such as "#1c5b9e", 0 to 1. Source: IEC 61966-2-1. */
export function linearRgb(color: string): number[] {
  return [1, 3, 5].map((at) => {
    const coded = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return coded <= 0.04045 ? coded / 12.92 : ((coded + 0.055) / 1.055) ** 2.4;
  });
}

function luminance(color: string): number {
  const [red = 0, green = 0, blue = 0] = linearRgb(color);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio of two colors, 1 to 21. Source: WCAG 2.2, definition of contrast ratio. */
export function contrastRatio(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

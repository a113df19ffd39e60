export const CHROMIUM_SWITCHES: string[];
export function findChromium(): string | undefined;
export function findOrInstallChromium(): string;

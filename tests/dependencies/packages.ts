import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const fileAt = (name: string) =>
  readFileSync(fileURLToPath(new URL(`../../${name}`, import.meta.url)), 'utf8');

/** A package as package-lock.json (version 3) names it. */
export interface LockedPackage {
  readonly version?: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
}

interface Lock {
  readonly lockfileVersion: number;
  readonly packages: Readonly<Record<string, LockedPackage>>;
}

/** What package.json asks for, by name. */
export function askedFor(): Record<string, string> {
  const { dependencies, devDependencies } = JSON.parse(fileAt('package.json'));
  return { ...dependencies, ...devDependencies };
}

/** All packages that an installation brings, by their folder. */
export function lockedPackages(): ReadonlyMap<string, LockedPackage> {
  const { packages }: Lock = JSON.parse(fileAt('package-lock.json'));
  return new Map(Object.entries(packages).filter(([folder]) => folder !== ''));
}

/** Name of a package by its folder in the lock file. */
export const nameOf = (folder: string): string => folder.slice(folder.lastIndexOf('node_modules/') + 13);

/** What the program is made of comes as it was named, and nothing of it runs when it is installed but what is allowed. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectRoot } from '../../src/project-root.ts';

interface Locked {
  readonly integrity?: string;
  readonly hasInstallScript?: true;
  readonly dev?: true;
  readonly optional?: true;
  readonly version: string;
}

const read = (name: string): unknown => JSON.parse(readFileSync(join(projectRoot, name), 'utf8'));
const { packages } = read('package-lock.json') as { readonly packages: Readonly<Record<string, Locked>> };
const own = read('package.json') as {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly allowScripts: Readonly<Record<string, boolean>>;
};
const locked = Object.entries(packages).filter(([path]) => path !== '');
const nameOf = (path: string): string => path.replace(/^.*node_modules\//, '');

describe('every package', () => {
  test('is locked with a digest of its own', () => {
    expect(locked.length).toBeGreaterThan(100);
    const without = locked.filter(([, { integrity = '' }]) => !/^sha512-[A-Za-z0-9+/]{86}==$/.test(integrity));
    expect(without.map(([path]) => path)).toEqual([]);
  });

  test('that is asked for is asked for in one version', () => {
    const asked = Object.entries({ ...own.dependencies, ...own.devDependencies });
    expect(asked.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
    for (const [name, version] of asked) expect(packages[`node_modules/${name}`]?.version).toBe(version);
  });

  test('that runs a script when it is installed is on the list, and nobody else is', () => {
    const running = locked.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => nameOf(path));
    const allowed = Object.keys(own.allowScripts).filter((name) => own.allowScripts[name]);
    expect([...new Set(running)]).toEqual(allowed);
  });
});

test('what it is made of is told in CycloneDX', { timeout: 120_000 }, () => {
  const told = execFileSync('npm', ['run', '--silent', 'sbom'], { cwd: projectRoot, encoding: 'utf8' });
  const { bomFormat, components } = JSON.parse(told) as { bomFormat: string; components: readonly Component[] };
  expect(bomFormat).toBe('CycloneDX');
  const namesOf = (some: readonly Component[]): readonly string[] =>
    some.map(({ name, group }) => (group === undefined ? name : `${group}/${name}`));
  const running = namesOf(components.filter((one) => !isForDevelopment(one)));
  const building = namesOf(components.filter(isForDevelopment));
  expect(Object.keys(own.dependencies).filter((name) => !running.includes(name))).toEqual([]);
  expect(building).toContain('vitest');
});

interface Component {
  readonly name: string;
  readonly group?: string;
  readonly properties?: readonly { readonly name: string; readonly value: string }[];
}

const isForDevelopment = ({ properties = [] }: Component): boolean =>
  properties.some(({ name, value }) => name === 'cdx:npm:package:development' && value === 'true');

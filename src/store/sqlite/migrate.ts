/** Brings a database file to the schema of this version: numbered files, each whole or not at all, forwards only. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Database } from 'better-sqlite3';
import { projectRoot } from '../../project-root.ts';
import { StoreMistake } from '../contract.ts';

export const migrationsFolder = pathToFileURL(join(projectRoot, 'src/store/sqlite/migrations/'));

/** "Tea9" in ASCII: tells our files from other SQLite files. */
const applicationId = 0x54656139;

interface Migration {
  readonly number: number;
  readonly sql: string;
}

/** Throws StoreMistake when the file is of a newer version, or not ours. */
export function migrate(db: Database, folder: URL = migrationsFolder): void {
  const migrations = readMigrations(folder);
  const latest = migrations.length;
  const version = db.pragma('user_version', { simple: true }) as number;
  const owner = db.pragma('application_id', { simple: true }) as number;
  if (owner !== applicationId && (owner !== 0 || version !== 0 || hasTables(db))) {
    throw new StoreMistake(`${db.name} is a database of another program; choose another folder`);
  }
  if (version > latest) {
    throw new StoreMistake(
      `${db.name} was written by a newer version of Ninthpour (schema ${version}, this one knows ${latest}); ` +
        'start the newer version, or restore a backup made before the upgrade',
    );
  }
  for (const migration of migrations.slice(version)) apply(db, migration);
}

function apply(db: Database, { number, sql }: Migration): void {
  db.transaction(() => {
    // Another process may have come first between our look and our lock.
    if ((db.pragma('user_version', { simple: true }) as number) >= number) return;
    db.exec(sql);
    db.pragma(`application_id = ${applicationId}`);
    db.pragma(`user_version = ${number}`);
  }).immediate();
}

function readMigrations(folder: URL): readonly Migration[] {
  const names = readdirSync(folder).filter((name) => name.endsWith('.sql'));
  return names.toSorted().map((name, i) => {
    const number = Number(/^(\d{3})-[a-z-]+\.sql$/.exec(name)?.[1]);
    if (number !== i + 1) throw new Error(`${name}: migrations are numbered 001, 002, … without a gap`);
    return { number, sql: readFileSync(new URL(name, folder), 'utf8') };
  });
}

function hasTables(db: Database): boolean {
  return db.prepare('SELECT 1 FROM sqlite_schema LIMIT 1').get() !== undefined;
}

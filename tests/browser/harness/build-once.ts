import type { TestProject } from 'vitest/node';
import { builtSite } from './built-site.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** The folder of the built app. */
    site: string;
    /** Each page on all tablets, not on one in turn. */
    everyTablet: boolean;
  }
}

/** Before the first file of a run: the app is built once, and all files test the same build. */
export default async function buildOnce(project: TestProject): Promise<void> {
  project.provide('site', await builtSite());
  project.provide('everyTablet', project.name === 'tablets');
}

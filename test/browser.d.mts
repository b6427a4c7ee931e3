export function findBrowser(): string | undefined;
export function ensureBrowser(): string | undefined;
export const LAUNCH_ARGS: string[];

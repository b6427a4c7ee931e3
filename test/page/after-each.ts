// After each test in a browser nothing of it is left open.

import { afterEach } from 'vitest';
import { closePages } from './shared-browser.ts';

afterEach(({ task }) => closePages(task.result?.state === 'fail'));

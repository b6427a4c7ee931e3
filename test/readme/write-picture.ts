// npm run picture: writes the README's stepped picture anew.

import { writeFileSync } from 'node:fs';
import { frames, picture } from './steps.ts';

writeFileSync('static/steps.svg', picture(frames()));

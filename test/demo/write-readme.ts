import { writeReadme } from './readme.ts';

await writeReadme();

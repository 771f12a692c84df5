import { writePages } from './pages.ts';

await writePages();

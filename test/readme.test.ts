import { expect, it } from 'vitest';
import { readmeText } from './demo/readme.ts';

it('shows in the README what the commands really print (npm run readme writes it anew)', async () => {
  const { is, ought } = await readmeText();
  expect(is).toBe(ought);
});

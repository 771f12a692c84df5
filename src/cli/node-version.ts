/** Whether this Node.js will do. Asked before anything is loaded that an old one could not run. */
import type { Problem } from '../base/problem.ts';

const oldestNode = 20;

/** Undefined when this version of Node.js (`process.versions.node`) will do. */
export function nodeVersionProblem(version: string): Problem | undefined {
  if (Number(version.split('.')[0]) >= oldestNode) return undefined;
  return {
    message: `this is Node.js ${version}, and Node.js ${oldestNode} or newer is needed`,
    advice: `Install Node.js ${oldestNode} or newer.`,
  };
}

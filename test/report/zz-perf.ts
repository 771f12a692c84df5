import * as s from '/work/main/test/report/text-sample.ts';
import { reportText } from '/work/main/src/report/text.ts';
import { reportMarkdown } from '/work/main/src/report/markdown.ts';
const j = await s.judged(s.mainFiles, s.unitsTidied);
const time = (n: string, f: () => string) => { const t=performance.now(); const l=f().length; console.log(n, Math.round(performance.now()-t)+' ms', l); };
for (const n of [1000, 5000, 10000]) {
  const m = {...j, findings: Array.from({length:n},()=>j.findings[0]!), changes: Array.from({length:n},()=>j.changes[0]!), headroom: Array.from({length:n},()=>({before: undefined, after: j.headroom[0]!.after}))};
  time('text '+n, () => reportText(m,{width:100,colour:true}));
  time('md '+n, () => reportMarkdown(m));
  time('cut '+n, () => reportMarkdown(m,{limit:65536}));
}
for (const n of [1e4, 1e5, 1e6]) for (const c of ['x','x ','\u202e','`','測', '`a ']) {
  const m = {...j, findings: [{...j.findings[0]!, message: c.repeat(n), advice: c.repeat(n)}], reasons:[c.repeat(n)]};
  time('long text '+n+' '+JSON.stringify(c), () => reportText(m,{width:100,colour:true}));
  time('long md '+n, () => reportMarkdown(m));
}

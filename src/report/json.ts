// placeholder until the real report lands
import type { Judgement } from '../policy/judgement.ts';
import { showMoney } from '../price/money.ts';

export const reportJson = (judgement: Judgement): string => {
  const cost =
    judgement.verdict === 'not judged'
      ? null
      : {
          ...judgement.cost,
          before: showMoney(judgement.cost.before, 'EUR'),
          after: showMoney(judgement.cost.after, 'EUR'),
          difference: showMoney(judgement.cost.difference, 'EUR'),
        };
  return JSON.stringify(
    { problems: [], ...judgement, cost },
    (_key, value: unknown) =>
      typeof value === 'bigint' ? value.toString() : value instanceof Set ? [...value] : value,
    2,
  );
};

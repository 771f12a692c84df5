/** The surveys that an estate's servers would have, as they are kept and read again. */
import type { Estate } from '../../src/estate/estate.ts';
import { readGathered } from '../../src/survey/gathered.ts';
import { readSurvey, type Survey } from '../../src/survey/survey.ts';
import { surveyAsText, surveyOf } from '../../src/survey/survey-of.ts';
import { documentOf, valueIn } from '../estate/builder.ts';
import { playServers } from './player.ts';

export const playedSurveys = (estate: Estate): readonly Survey[] =>
  playServers(estate, { isOld: false, isBare: false, hasBootPartition: false }).map(({ server, text }) => {
    const { survey } = valueIn(surveyOf(valueIn(readGathered(Buffer.from(text), server)), server));
    return valueIn(readSurvey(documentOf(surveyAsText(survey), `surveys/${server}.json`)));
  });

import { useEffect, useState, useSyncExternalStore } from 'react';
import type { Yard } from '../../core/yard.ts';
import { type Answer, type Ask, Question } from './Question.ts';

/** The answer about the yard and job in hand, kept fresh for as long as the part that shows it stands on the page. */
export function useAnswer<T>(ask: Ask<T>, yard: Yard, jobId: string): Answer<T> {
  const [question] = useState(() => new Question(ask));
  useEffect(() => question.want(yard, jobId), [question, yard, jobId]);
  useEffect(() => () => question.close(), [question]);
  return useSyncExternalStore(question.subscribe, question.snapshot);
}

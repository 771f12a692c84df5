/** The blocks and fields that every section is put together from. */
import type { Place } from '../../base/problem.ts';
import type { RevisionPlace } from '../../change/place.ts';
import type { Block, Cell, Column, Entry, Field } from './model.ts';

export const sentence = (text: string): Block => ({ kind: 'sentence', text });

export const entries = (of: readonly Entry[]): Block => ({ kind: 'entries', entries: of });

export const table = (columns: readonly Column[], rows: readonly (readonly Cell[])[]): Block => ({
  kind: 'table',
  table: { columns, rows },
});

export const words = (title: string): Column => ({ title, holds: 'words' });

export const figures = (title: string): Column => ({ title, holds: 'figures' });

export const line = (label: string, text: string): Field => ({ label, form: 'text', text });

export const advice = (label: string, text: string): Field => ({ label, form: 'advice', text });

export const at = (place: Place, note = '', label = 'at'): Field => ({ label, form: 'place', place, note });

/** A place of main says so; one of the branch needs no word. */
export const atRevision = (place: RevisionPlace): Field =>
  at(place, place.revision === 'base' ? 'on main' : '');

import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { DeskModel } from './model/model.ts';

export const DeskContext = createContext<DeskModel | null>(null);

/** The model of the desk that a component stands on. */
export function useDesk(): DeskModel {
  const model = useContext(DeskContext);
  if (!model) throw new Error('A component of the desk was used outside of one.');
  return model;
}

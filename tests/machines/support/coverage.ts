import { getAdjacencyMap, getStateNodes } from '@xstate/graph';
import {
  getMicrosteps,
  type AnyMachineSnapshot,
  type AnyStateMachine,
  type AnyStateNode,
  type EventObject,
  type TransitionDefinition,
} from 'xstate';

type Taken = TransitionDefinition<never, never>;

/** `#bake.bulk.look bulkReady[0]`: a transition by its state, its event and its place among rivals. */
const nameOf = (node: AnyStateNode, event: string, index: number): string =>
  `${node.id} ${event || 'always'}[${index}]`;

/** Every transition that a machine's definition holds, by its name. */
export const transitionsOf = (machine: AnyStateMachine): ReadonlyMap<Taken, string> =>
  new Map(
    [machine.root, ...getStateNodes(machine)].flatMap((node) => [
      ...[...node.transitions].flatMap(([event, taken]) =>
        taken.map((one, i) => [one as Taken, nameOf(node, event, i)] as const),
      ),
      ...(node.always ?? []).map((one, i) => [one as Taken, nameOf(node, '', i)] as const),
    ]),
  );

/** Every stage a machine's definition holds: its states without inner ones. */
export const stagesOf = (machine: AnyStateMachine): readonly string[] =>
  getStateNodes(machine)
    .filter((node) => node.type === 'atomic' || node.type === 'final')
    .map((node) => node.path.join('.'));

export interface Step<S, E> {
  readonly from: S;
  readonly event: E;
  readonly to: S;
  /** Whether anything answered to the event. */
  readonly taken: boolean;
}

/**
 * All steps there are, breadth first from the given states, each state once by its key; and the
 * names of the transitions they took.
 */
export const explore = <S extends AnyMachineSnapshot, E extends EventObject>(
  machine: AnyStateMachine,
  {
    from,
    events,
    key,
  }: {
    readonly from: readonly S[];
    readonly events: (state: S) => readonly E[];
    readonly key: (state: S) => string;
  },
): { readonly steps: readonly Step<S, E>[]; readonly taken: ReadonlySet<string> } => {
  const names = transitionsOf(machine);
  const taken = new Set<string>();
  const steps: Step<S, E>[] = [];
  for (const fromState of from) {
    const map = getAdjacencyMap(machine, {
      fromState,
      events: events as (state: AnyMachineSnapshot) => readonly E[],
      serializeState: (state) => key(state as unknown as S) as never,
      serializeEvent: (event) => JSON.stringify(event) as never,
      limit: 100_000,
    });
    for (const { state, transitions } of Object.values(map)) {
      for (const { event, state: to } of Object.values<{ event: E; state: S }>(transitions)) {
        const chosen = machine.getTransitionData(state, event as never);
        chosen.forEach((one) => taken.add(names.get(one as unknown as Taken) ?? 'unknown'));
        // What `always` goes on to is seen between the small steps.
        const states = getMicrosteps(machine, state, event as never).map(([small]) => small);
        for (const small of states.slice(0, -1)) {
          for (const node of small._nodes) {
            const next = (node.always ?? []).find((one) =>
              states.some((later) =>
                one.target?.every((target) => later._nodes.includes(target as never)),
              ),
            );
            if (next) taken.add(names.get(next as unknown as Taken) ?? 'unknown');
          }
        }
        steps.push({
          from: state as unknown as S,
          event: event as unknown as E,
          to: to as unknown as S,
          taken: chosen.length > 0,
        });
      }
    }
  }
  return { steps, taken };
};

import {
  createActor,
  type AnyActorLogic,
  type ActorScope,
  type AnyStateMachine,
  type SnapshotFrom,
} from 'xstate';

/** What a transition asks to be done: only its name and its data, never run here. */
export interface Action {
  readonly type: string;
  readonly params?: unknown;
}

type Scope = ActorScope<never, never>;

/** The surroundings of each machine, made once: our machines reach for nothing in them. */
const scopes = new WeakMap<AnyStateMachine, Scope>();

const nothing = (): void => undefined;

const scopeOf = (machine: AnyStateMachine): Scope => {
  const known = scopes.get(machine);
  if (known) return known;
  const self = createActor(machine as AnyActorLogic) as unknown as Scope['self'];
  const scope: Scope = {
    self,
    id: '',
    sessionId: '',
    system: (self as unknown as { readonly system: Scope['system'] }).system,
    logger: nothing,
    defer: nothing,
    emit: nothing,
    stopChild: nothing,
    actionExecutor: nothing,
  };
  scopes.set(machine, scope);
  return scope;
};

/**
 * One event into one machine: the snapshot it leads to and what it asks to be done. The same as
 * the library's own `transition`, which for every event makes a whole actor and walks it to its
 * initial state: more than half the time of folding a long log.
 */
export const pureStep = <M extends AnyStateMachine>(
  machine: M,
  snapshot: SnapshotFrom<M>,
  event: { readonly type: string },
): readonly [SnapshotFrom<M>, readonly Action[]] => {
  const actions: Action[] = [];
  const scope: Scope = {
    ...scopeOf(machine),
    actionExecutor: (action) => void actions.push(action),
  };
  const next = machine.transition(snapshot as never, event as never, scope as never);
  return [next as SnapshotFrom<M>, actions];
};

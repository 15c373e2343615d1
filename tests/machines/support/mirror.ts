import type { Reading } from '../../../src/core/records/fact.ts';
import type { StarterDeed } from '../../../src/core/records/starter.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import {
  advance,
  copyOf,
  emptyModel,
  endOf,
  measure,
  pendingCalls,
  placesOf,
  press,
  ringingCall,
  settle,
  waits,
  type Model,
  type ModelBake,
  type Press,
} from './model.ts';
import { tend } from './model-starter.ts';

/** What is done, as the model understands it. */
export type Done =
  | ({ readonly kind: 'press' } & Press)
  | { readonly kind: 'start'; readonly bake: string; readonly place: ModelBake }
  | {
      readonly kind: 'reading';
      readonly by: 'hand' | 'probe';
      readonly bake: string;
      readonly reading: Reading;
    }
  | { readonly kind: 'correct'; readonly target: string; readonly reading: Reading }
  | { readonly kind: 'heard'; readonly call: string }
  | { readonly kind: 'snoozed'; readonly call: string; readonly until: Instant }
  | { readonly kind: 'takeBack'; readonly target: string }
  | ({ readonly kind: 'starter' } & StarterDeed);

/** A deed that stands: what was before it, and the ends of waits that it brought. */
export interface Standing {
  readonly id: string;
  readonly at: Instant;
  readonly done: Done;
  readonly before: Model;
  readonly ends: readonly { readonly who: string; readonly stage: string; readonly at: Instant }[];
}

const isCandidate = ({ done }: Standing): boolean =>
  ['press', 'start', 'starter'].includes(done.kind) ||
  (done.kind === 'reading' && done.by === 'hand');

/** A dough's rise is no levain's, and a piece's weight no loaf's. */
const sameKind = (a: Reading, b: Reading): boolean =>
  a.what === b.what && ('of' in a ? a.of : null) === ('of' in b ? b.of : null);

/** The model of the whole log: where things stand, and the deeds that stand, each with its before. */
export class Mirror {
  model: Model = emptyModel();
  stack: Standing[] = [];

  /** The deed that a take-back withdraws, if any. */
  get latest(): string | null {
    const { quiet } = this.model;
    const isPutOff = ({ done }: Standing): boolean =>
      done.kind === 'snoozed' && quiet[done.call] === done.until;
    return this.stack.findLast((one) => isCandidate(one) || isPutOff(one))?.id ?? null;
  }

  /** Does something; false where nothing should answer to it, and then nothing has changed. */
  do(id: string, at: Instant, done: Done): boolean {
    if (done.kind === 'takeBack') return this.takeBack(id, at, done);
    const { model, stack } = this;
    this.model = copyOf(model);
    if (this.fold(id, at, done, null)) return true;
    [this.model, this.stack] = [model, stack];
    return false;
  }

  /** Everything is as it was at `there`, and time goes on; nothing before can be taken back. */
  jump(there: Model, at: Instant): void {
    this.model = copyOf(there);
    this.stack = [];
    settle(this.model);
    advance(this.model, at);
  }

  private takeBack(id: string, at: Instant, done: Extract<Done, { kind: 'takeBack' }>): boolean {
    if (done.target !== this.latest) return false;
    const index = this.stack.findIndex((standing) => standing.id === done.target);
    const later = this.stack.slice(index + 1);
    this.model = copyOf(this.stack[index]!.before);
    this.stack = this.stack.slice(0, index);
    for (const { id: other, at: then, done: did, ends } of later) {
      if (did.kind === 'correct' && did.target === done.target) continue;
      this.fold(other, then, did, ends);
    }
    return this.fold(id, at, done, null);
  }

  /** One deed on the model. `ends` are those its fact carries; null: they are reckoned now. */
  private fold(id: string, at: Instant, done: Done, ends: Standing['ends'] | null): boolean {
    const before = copyOf(this.model);
    advance(this.model, at);
    if (!this.act(done, at)) return false;
    settle(this.model);
    const brought = ends ?? this.reckon(done, at);
    for (const end of brought) {
      const place = end.who === 'oven' ? this.model.oven : this.model.bakes[end.who];
      if (place?.stage === end.stage) place.deadline = end.at;
    }
    settle(this.model);
    advance(this.model, at);
    this.stack = [...this.stack, { id, at, done, before, ends: brought }];
    return true;
  }

  private reckon(done: Done, at: Instant): Standing['ends'] {
    const { model } = this;
    const measured = this.measured(done);
    return placesOf(model).flatMap(([who, place]) => {
      if (!waits(place) || (place.deadline !== null && who !== measured)) return [];
      const end = endOf(place, model.bakes[who]?.celsius ?? 24);
      return [{ who, stage: place.stage, at: who === measured ? Math.max(at, end) : end }];
    });
  }

  private reading(id: string) {
    const found = this.stack.find((standing) => standing.id === id)?.done;
    return found?.kind === 'reading' ? found : null;
  }

  private measured(done: Done): string | null {
    if (done.kind === 'reading') return done.bake;
    return done.kind === 'correct' ? (this.reading(done.target)?.bake ?? null) : null;
  }

  private act(done: Done, at: Instant): boolean {
    const { model } = this;
    switch (done.kind) {
      case 'press':
        return press(model, done, at);
      case 'start':
        return this.start(done, at);
      case 'reading':
        return measure(model, done.bake, done.reading, at);
      case 'correct':
        return this.correct(done);
      case 'starter':
        return tend(model.starter, done, at);
      case 'heard':
        return this.silence(done.call);
      case 'snoozed': {
        const call = pendingCalls(model).find(({ id }) => id === done.call);
        const times = model.times[done.call] ?? 0;
        const long = done.until - at;
        if (!call || call.mute || call.kind === 'hot' || (model.quiet[done.call] ?? null) !== null)
          return false;
        if (times >= 2 || long <= 0 || long > 2 * MINUTE) return false;
        model.quiet[done.call] = done.until;
        model.times[done.call] = times + 1;
        return true;
      }
      case 'takeBack':
        model.quiet = {};
        return true;
    }
  }

  private start({ bake, place }: Extract<Done, { kind: 'start' }>, at: Instant): boolean {
    const { bakes, load, out } = this.model;
    const known = [...Object.values(bakes).flatMap(({ loaves }) => loaves), ...load, ...out];
    const own = new Set(place.loaves).size === place.loaves.length && place.loaves.length > 0;
    if (bake === 'oven' || bake in bakes || !own) return false;
    if (place.loaves.some((loaf) => known.includes(loaf))) return false;
    bakes[bake] = { ...structuredClone(place), since: at };
    return true;
  }

  private correct({ target, reading }: Extract<Done, { kind: 'correct' }>): boolean {
    const old = this.reading(target);
    if (old === null || !sameKind(old.reading, reading) || !this.model.bakes[old.bake]) {
      return false;
    }
    const newest = this.stack.findLast(
      ({ done }) =>
        done.kind === 'reading' && done.bake === old.bake && sameKind(done.reading, reading),
    );
    if (newest?.id === target && reading.what === 'doughTemperature') {
      this.model.bakes[old.bake]!.celsius = reading.celsius;
    }
    return true;
  }

  private silence(call: string): boolean {
    const { quiet } = this.model;
    const rings = pendingCalls(this.model).some(
      ({ id, mute }) => id === call && !mute && !(id in quiet),
    );
    if (rings) quiet[call] = null;
    return rings;
  }

  get ringing(): string | null {
    return ringingCall(this.model)?.id ?? null;
  }
}

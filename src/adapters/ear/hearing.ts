import type { Stop } from '../../../machines/ports.ts';
import { decide } from '../../core/ear/decide.ts';
import type { Heard } from '../../core/ear/heard.ts';
import type { Cut } from '../../core/ear/listener.ts';
import { louder } from '../../core/ear/louder.ts';
import type { EarEngine, Saying } from '../../core/ear/person.ts';
import type { Begun, SayingEngine } from './engine.ts';
import { hearPort } from './heard-port.ts';
import type { FromThread, ToThread } from './messages.ts';

export interface HearingParts {
  /** The engine, fetched where it is not here; null where it cannot be had. */
  readonly engine: (which: EarEngine) => Promise<SayingEngine | null>;
  readonly tell: (told: FromThread) => void;
}

/** Who is asked for a phrase and does not begin in this time says nothing, s. Judgement. */
const BEGINS_WITHIN = 8;
/** A phrase that is not there after this time does not come: a radio talks, s. Judgement. */
const MOST = 20;
/** So much silence ends what was said till now, s. */
const SILENCE = 1;

type Asked<K extends ToThread['kind']> = Extract<ToThread, { readonly kind: K }>;

/** What becomes of what is heard for one question. */
interface Made {
  /** What is said may end so. */
  pauses?(sound: Float32Array<ArrayBuffer>): void;
  cut(cut: Cut): void;
  moment(seconds: number, speaks: boolean): void;
  readonly enough: Stop;
}

/** What the ear's thread does with what it is asked. Sound is looked at as it comes, and none is kept. */
export function makeHearing({ engine, tell }: HearingParts): (asked: ToThread) => void {
  /** The question that has the microphone, if any. */
  let mine: { readonly turn: number; readonly shut: Stop; enough: Stop } | null = null;

  const shut = (): void => {
    mine?.shut();
    mine = null;
  };
  const failed = (turn: number, error: unknown): void =>
    tell({ turn, kind: 'failed', message: error instanceof Error ? error.message : String(error) });

  /** Opens its port once its engine is here. */
  const hear = (
    { turn, port, rate }: Asked<'listen' | 'take'>,
    which: EarEngine,
    make: (its: SayingEngine, told: typeof tell, silence: Stop) => Made,
  ): void => {
    shut();
    const told: typeof tell = (what) => {
      if (mine !== me) return;
      if (what.kind === 'taken') shut();
      tell(what);
    };
    const nothing = (): void => told({ turn, kind: 'taken', sayings: null });
    const me = { turn, shut: () => port.close(), enough: nothing };
    mine = me;
    let isOpen = false;
    let speaks = false;
    const open = (its: SayingEngine | null): void => {
      if (its === null) throw new Error('its engine is not here');
      if (mine !== me) return;
      const made = make(its, told, () => sound.silence(SILENCE));
      const sound = hearPort(
        { port, rate },
        {
          speaks(now) {
            speaks = now;
            told({ turn, kind: 'told', told: { kind: 'speaks', speaks } });
          },
          room: (db) => told({ turn, kind: 'told', told: { kind: 'room', db } }),
          pauses: (sound) => made.pauses?.(sound),
          cut: made.cut,
          moment(seconds) {
            if (!isOpen) told({ turn, kind: 'told', told: { kind: 'open' } });
            isOpen = true;
            made.moment(seconds, speaks);
          },
        },
      );
      Object.assign(me, { shut: sound.close, enough: made.enough });
    };
    engine(which)
      .then(open)
      .catch((error: unknown) => failed(turn, error));
  };

  const listen = (asked: Asked<'listen'>): void => {
    const { turn, ask } = asked;
    hear(asked, ask.engine, (its, told) => {
      let last = ask.people[0]?.id ?? null;
      let begun: Begun | null = null;
      let work = Promise.resolve();
      /** One after the other, as it was heard. */
      const next = (todo: () => Promise<void>): void => {
        work = work.then(todo).catch((error: unknown) => failed(turn, error));
      };
      const understand = async (cut: Cut): Promise<Heard> => {
        const { room, long } = cut;
        if (long) return { phrase: null, why: 'long' };
        return decide({ ...ask, saying: await its.saying(cut, begun), room, long, last });
      };
      return {
        pauses: (sound) =>
          next(async () => {
            begun = (await its.ahead?.(sound, begun)) ?? null;
          }),
        cut: (cut) =>
          next(async () => {
            const heard = await understand(cut);
            begun = null;
            if (heard.phrase !== null) last = heard.person;
            told({ turn, kind: 'told', told: { kind: 'said', heard } });
          }),
        moment: () => undefined,
        enough: () => undefined,
      };
    });
  };

  const take = (asked: Asked<'take'>): void => {
    const { turn } = asked;
    hear(asked, asked.engine, (its, told, silence) => {
      let isSaid = false;
      const end = (sayings: readonly Saying[] | null): void =>
        told({ turn, kind: 'taken', sayings });
      const both = async (cut: Cut): Promise<readonly Saying[]> => [
        await its.saying(cut),
        await its.saying({ ...cut, sound: louder(cut.sound, turn) }),
      ];
      return {
        cut(cut) {
          // Who talks is not taken for a phrase, and may go on to say it.
          if (isSaid || cut.long) return;
          isSaid = true;
          both(cut).then(end, (error: unknown) => failed(turn, error));
        },
        moment(seconds, speaks) {
          if (isSaid || (speaks && seconds < MOST) || seconds < BEGINS_WITHIN) return;
          isSaid = true;
          end(null);
        },
        enough() {
          silence();
          if (isSaid) return;
          isSaid = true;
          end(null);
        },
      };
    });
  };

  return (asked) => {
    switch (asked.kind) {
      case 'fetch':
        return void engine(asked.engine).then(
          (found) => tell({ turn: asked.turn, kind: 'fetched', here: found !== null }),
          (error: unknown) => failed(asked.turn, error),
        );
      case 'listen':
        return listen(asked);
      case 'take':
        return take(asked);
      case 'enough':
        return mine?.turn === asked.turn ? mine.enough() : undefined;
      case 'shut':
        return mine?.turn === asked.turn ? shut() : undefined;
    }
  };
}

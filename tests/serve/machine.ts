/** A machine on which what is wanted appears once the command that `works` has run. */
export function machine(canApt: boolean, works: RegExp | null) {
  const ran: string[] = [];
  const said: string[] = [];
  let there = false;
  const world = {
    canApt,
    run: (command: string, ...args: string[]) => {
      ran.push([command, ...args].join(' '));
      there ||= works?.test(ran.at(-1) ?? '') ?? false;
      return there;
    },
    say: (sentence: string) => void said.push(sentence),
  };
  return { world, ran, said, there: () => there };
}

/**
 * Whether a regular expression takes time in proportion to its input, whatever the input is: the same test as in
 * the literature (Weber and Seidl, "On the degree of ambiguity of finite automata", 1991; Wüstholz et al., "Static
 * detection of DoS vulnerabilities in programs that use regular expressions", 2017). A backtracking matcher is slow
 * where one text can be read in many ways, so a pattern is refused
 *
 * - when a loop can read a text in two ways (exponential: `(?:\d\d?)*`, `(a+)+`),
 * - when two loops can share a text between them (quadratic: `\s*,?\s*`),
 * - when it is looked for at every place of a text and a loop can begin at each of them (quadratic: `\s+$`).
 *
 * It errs on the strict side: a repeat of more than four times counts as a loop in the first two, a look to the
 * side may hold no loop, and a reference back is refused.
 */
import { type AST, parseRegExpLiteral } from '@eslint-community/regexpp';

/** Repeats up to here are written out; beyond, the most is taken for any number. */
const WRITTEN_OUT = 4;

/** Signs that stand for their kind; those that a pattern names, and their neighbours, come in addition. */
const KINDS = 'aZqéßЖ中05_ -.,:;/|()[]{}<>"\'&=+*#?!@%$^~`\\\t\n\r\u00a0\u2028♭♯°△𝄫\u0301😀\u0000';

interface State {
  /** Signs that lead on, as indices into the alphabet, with where they lead. */
  readonly reads: { readonly signs: ReadonlySet<number>; readonly to: number }[];
  /** Ways on that read nothing; `sure` ones ask nothing of the text either. */
  readonly skips: { readonly to: number; readonly sure: boolean }[];
}

class Refused extends Error {}

/** How the automaton is built: for the loops among themselves, or for the search at every place. */
type Purpose = 'within' | 'search';

class Automaton {
  readonly states: State[] = [];
  readonly #alphabet: readonly string[];
  readonly #flags: string;
  readonly #purpose: Purpose;

  constructor(alphabet: readonly string[], flags: string, purpose: Purpose) {
    this.#alphabet = alphabet;
    this.#flags = flags;
    this.#purpose = purpose;
  }

  state(): number {
    return this.states.push({ reads: [], skips: [] }) - 1;
  }

  skip(from: number, to: number, sure = true): void {
    this.states[from]?.skips.push({ to, sure });
  }

  alternatives(all: readonly AST.Alternative[], from: number): number {
    const end = this.state();
    for (const alternative of all) {
      let at = this.state();
      this.skip(from, at);
      for (const element of alternative.elements) at = this.element(element, at);
      this.skip(at, end);
    }
    return end;
  }

  element(element: AST.Element, from: number): number {
    switch (element.type) {
      case 'Character':
      case 'CharacterSet':
      case 'CharacterClass':
      case 'ExpressionCharacterClass':
        return this.sign(element.raw, from);
      case 'Group':
      case 'CapturingGroup':
        return this.alternatives(element.alternatives, from);
      case 'Quantifier':
        return this.repeat(element, from);
      case 'Assertion':
        return this.assertion(element, from);
      case 'Backreference':
        throw new Refused('a reference back');
    }
  }

  sign(raw: string, from: number): number {
    const pattern = new RegExp(`^(?:${raw})$`, this.#flags);
    const signs = new Set<number>();
    this.#alphabet.forEach((sign, index) => {
      if (pattern.test(sign)) signs.add(index);
    });
    const to = this.state();
    this.states[from]?.reads.push({ signs, to });
    return to;
  }

  repeat({ element, min, max }: AST.Quantifier, from: number): number {
    const bounded = max <= WRITTEN_OUT || (this.#purpose === 'search' && Number.isFinite(max));
    let at = from;
    const written = Math.min(min, WRITTEN_OUT);
    for (let time = 0; time < written; time += 1) at = this.element(element, at);
    const end = this.state();
    if (bounded) {
      for (let time = written; time < Math.min(max, WRITTEN_OUT); time += 1) {
        this.skip(at, end);
        at = this.element(element, at);
      }
      this.skip(at, end);
      return end;
    }
    if (canBeEmpty(element)) throw new Refused('a loop over what may be empty');
    const turn = this.state();
    this.skip(at, turn);
    this.skip(this.element(element, turn), turn);
    this.skip(turn, end);
    return end;
  }

  assertion(assertion: AST.Assertion, from: number): number {
    const to = this.state();
    if (assertion.kind === 'lookahead' || assertion.kind === 'lookbehind') {
      if (hasLoop(assertion)) throw new Refused('a loop in a look to the side');
      refuseAmbiguity(build(assertion.alternatives, this.#alphabet, this.#flags, 'within'));
    }
    // What stands at the beginning is not looked for again at other places.
    const isBeginning = assertion.kind === 'start' && !this.#flags.includes('m');
    if (!(isBeginning && this.#purpose === 'search')) this.skip(from, to, false);
    return to;
  }
}

const canBeEmpty = (element: AST.Element): boolean => {
  switch (element.type) {
    case 'Group':
    case 'CapturingGroup':
      return element.alternatives.some(({ elements }) => elements.every(canBeEmpty));
    case 'Quantifier':
      return element.min === 0 || canBeEmpty(element.element);
    case 'Assertion':
      return true;
    default:
      return false;
  }
};

function hasLoop(node: AST.Element | AST.Alternative): boolean {
  if (node.type === 'Quantifier') return !Number.isFinite(node.max) || hasLoop(node.element);
  if ('alternatives' in node) return node.alternatives.some(hasLoop);
  return node.type === 'Alternative' && node.elements.some(hasLoop);
}

/** An automaton whose every step reads a sign. */
interface Steps {
  readonly start: number;
  /** From each state: the signs, the state they lead to, and in how many ways (two stand for more). */
  readonly ways: readonly (readonly Way[])[];
  /** States from which the whole is read, with no more asked: from here no matcher goes back. */
  readonly done: ReadonlySet<number>;
}

interface Way {
  readonly signs: ReadonlySet<number>;
  readonly to: number;
  readonly count: number;
}

function build(
  alternatives: readonly AST.Alternative[],
  alphabet: readonly string[],
  flags: string,
  purpose: Purpose,
): Steps {
  const automaton = new Automaton(alphabet, flags, purpose);
  const start = automaton.state();
  const end = automaton.alternatives(alternatives, start);
  const { states } = automaton;
  /** How many ways lead to each state without reading. */
  const closure = (from: number, sureOnly: boolean): ReadonlyMap<number, number> => {
    const ways = new Map<number, number>();
    const walk = (state: number): void => {
      const count = ways.get(state) ?? 0;
      if (count >= 2) return;
      ways.set(state, count + 1);
      for (const { to, sure } of states[state]?.skips ?? []) if (sure || !sureOnly) walk(to);
    };
    walk(from);
    return ways;
  };
  const ways = states.map((_, from) => {
    const counted = new Map<string, Way>();
    for (const [through, times] of closure(from, false)) {
      for (const { signs, to } of states[through]?.reads ?? []) {
        const key = `${through} ${to}`;
        counted.set(key, { signs, to, count: times + (counted.get(key)?.count ?? 0) });
      }
    }
    return [...counted.values()];
  });
  const done = new Set(states.flatMap((_, from) => (closure(from, true).has(end) ? [from] : [])));
  return { start, ways, done };
}

const meet = (one: ReadonlySet<number>, other: ReadonlySet<number>): boolean =>
  [...one].some((sign) => other.has(sign));

/** Every state's own loop: the states that it can reach and that reach it. */
function loopsOf({ ways }: Steps): readonly (ReadonlySet<number> | null)[] {
  const reached = ways.map((_, from) => {
    const seen = new Set<number>();
    const next = [from];
    for (let at = next.pop(); at !== undefined; at = next.pop()) {
      for (const { to, signs } of ways[at] ?? []) {
        if (signs.size > 0 && !seen.has(to)) {
          seen.add(to);
          next.push(to);
        }
      }
    }
    return seen;
  });
  return reached.map((seen, from) =>
    seen.has(from) ? new Set([...seen].filter((to) => reached[to]?.has(from))) : null,
  );
}

/** Whether one tuple of states leads to another when all read the same text. */
function leads(
  { ways }: Steps,
  from: readonly number[],
  to: readonly number[],
  stays: readonly (ReadonlySet<number> | null)[],
): boolean {
  const goal = to.join(' ');
  const seen = new Set<string>();
  const next: (readonly number[])[] = [from];
  for (let at = next.pop(); at !== undefined; at = next.pop()) {
    let partly: { readonly states: readonly number[]; readonly signs: ReadonlySet<number> | null }[] = [
      { states: [], signs: null },
    ];
    at.forEach((state, index) => {
      partly = partly.flatMap(({ states, signs }) =>
        (ways[state] ?? []).flatMap((way) => {
          if (stays[index] && !stays[index].has(way.to)) return [];
          const both = signs === null ? way.signs : new Set([...signs].filter((sign) => way.signs.has(sign)));
          return both.size > 0 ? [{ states: [...states, way.to], signs: both }] : [];
        }),
      );
    });
    for (const { states } of partly) {
      const key = states.join(' ');
      if (key === goal) return true;
      if (!seen.has(key)) {
        seen.add(key);
        next.push(states);
      }
    }
  }
  return false;
}

/** @throws Refused where a loop reads a text in two ways, or two loops share one */
function refuseAmbiguity(steps: Steps): void {
  const loops = loopsOf(steps);
  steps.ways.forEach((ways, from) => {
    const loop = loops[from];
    if (!loop) return;
    const inside = ways.filter(({ to }) => loop.has(to));
    inside.forEach((one, index) => {
      if (one.count > 1) throw new Refused('a loop in a loop');
      for (const other of inside.slice(index + 1)) {
        if (!meet(one.signs, other.signs)) continue;
        if (one.to === other.to || leads(steps, [one.to, other.to], [from, from], [loop, loop]))
          throw new Refused('a loop that can read a text in two ways');
      }
    });
  });
  steps.ways.forEach((_, first) => {
    const one = loops[first];
    if (!one) return;
    steps.ways.forEach((__, second) => {
      const other = loops[second];
      if (!other || first === second || steps.done.has(second)) return;
      if (leads(steps, [first, first, second], [first, second, second], [one, null, other]))
        throw new Refused('two loops that can share a text between them');
    });
  });
}

/** @throws Refused where a loop can begin at every place of the text that it reads */
function refuseSearch(steps: Steps): void {
  loopsOf(steps).forEach((loop, state) => {
    if (!loop || steps.done.has(state)) return;
    if (leads(steps, [steps.start, state], [state, state], [null, loop]))
      throw new Refused('a loop that is begun again at every place of a text');
  });
}

function alphabetOf(source: string): readonly string[] {
  const named = [...source].flatMap((sign) => {
    const code = sign.codePointAt(0) ?? 0;
    return [code - 1, code, code + 1].filter((each) => each >= 0).map((each) => String.fromCodePoint(each));
  });
  return [...new Set([...KINDS, ...named])];
}

/** Why a pattern, written as it stands in the source, may take more than linear time; null where it does not. */
export function whyNotLinear(literal: string): string | null {
  const { pattern, flags } = parseRegExpLiteral(literal);
  const alphabet = alphabetOf(pattern.raw);
  const reading = flags.raw.replace(/[gyd]/g, '');
  try {
    refuseAmbiguity(build(pattern.alternatives, alphabet, reading, 'within'));
    refuseSearch(build(pattern.alternatives, alphabet, reading, 'search'));
    return null;
  } catch (fault) {
    if (fault instanceof Refused) return fault.message;
    throw fault;
  }
}

import type { Command, CommanderError } from 'commander';
import type { Fault } from '../core/index.ts';

/**
 * What the parser of words would not take, as a fault like any other: which word, what is wrong, what to do. Fault:
 * `option.unknown`. Null where it only showed help.
 */
export function wrongWords(error: CommanderError, program: Command, words: readonly string[]): Fault | null {
  const command = program.commands.find((one) => one.name() === words[0]);
  const name = command ? `garland ${command.name()}` : 'garland';
  const [named = '', like = ''] = [...error.message.matchAll(/'([^']+)'|Did you mean ([^?]+)\?/g)].map(
    ([, quoted, meant]) => quoted ?? meant ?? '',
  );
  const [word = ''] = named.split(' ');
  const lists = `what ${name} --help lists${like ? `, such as ${like}` : ''}`;
  const itsValue = (flags: string): string => {
    const described = command?.options.find((one) => one.flags === flags)?.description.split(';')[0];
    return `its ${flags.replace(/^.*<(.*)>$/, '$1')}: ${described ?? 'a word after it'}`;
  };
  const wrong = (at: string, found: string, need: string, remedy: string): Fault => ({
    code: 'option.unknown',
    at,
    found,
    need,
    remedy,
  });
  switch (error.code) {
    case 'commander.missingMandatoryOptionValue':
      return wrong(word, 'it is not given', itsValue(named), `add ${named}`);
    case 'commander.optionMissingArgument':
      return wrong(word, 'nothing stands after it', itsValue(named), `write ${named}`);
    case 'commander.missingArgument':
      return wrong(
        name,
        `no ${word} is named`,
        `one: ${argumentSays(command, word)}`,
        `write ${name} ${word.toUpperCase()}`,
      );
    case 'commander.unknownOption':
      return wrong(
        word,
        `an option that ${name} does not know`,
        lists,
        like ? `write ${like}, or leave it out` : 'leave it out',
      );
    case 'commander.unknownCommand':
      return wrong(
        word,
        'no command of Garland',
        lists,
        like ? `write garland ${like}` : 'choose one of them',
      );
    case 'commander.excessArguments':
      return wrong(
        name,
        'more words than it has a use for',
        `what ${name} --help lists`,
        'leave the others out, or put a name with spaces in quotes',
      );
    default:
      return null;
  }
}

function argumentSays(command: Command | undefined, word: string): string {
  return command?.registeredArguments.find((one) => one.name() === word)?.description ?? word;
}

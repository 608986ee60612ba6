import { expect, it } from 'vitest';
import { tasksInTurn } from '../../src/app/inTurn.ts';

it('a task starts when the one before has ended, well or badly', async () => {
  const inTurn = tasksInTurn();
  const log: string[] = [];
  const task = (name: string, fails: boolean) => async () => {
    log.push(`${name} starts`);
    await Promise.resolve();
    log.push(`${name} ends`);
    if (fails) throw new Error(name);
    return name;
  };
  const first = inTurn(task('first', true));
  const second = inTurn(task('second', false));
  await expect(first).rejects.toThrow('first');
  expect(await second).toBe('second');
  expect(log).toEqual(['first starts', 'first ends', 'second starts', 'second ends']);
});

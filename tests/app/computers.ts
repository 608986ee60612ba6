/** What a keeper starts in place of a worker: it is asked, answers when it is told to, and can be ended. */
export function standInComputers<Question, Answer>() {
  const computers: { readonly questions: Question[]; ended: boolean }[] = [];
  let last: (given: Answer) => void = () => {};
  return {
    /** Every one that was started, the first one first. */
    computers,
    start(hear: (given: Answer) => void) {
      const computer = { questions: [] as Question[], ended: false };
      computers.push(computer);
      last = hear;
      return {
        ask: (question: Question) => computer.questions.push(question),
        end: () => {
          computer.ended = true;
        },
      };
    },
    /** What was asked last. */
    asked: () => computers.at(-1)?.questions.at(-1),
    /** The answer of the one that was started last. */
    answer: (given: Answer) => last(given),
  };
}

// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.ask;

import java.util.List;

/**
 * A question with a few answers, or a notice with one.
 *
 * @param id what is asked, for tests: {@code unsaved}, {@code changedMeanwhile}
 * @param title what it is about, a few words
 * @param sentence what happened and what the person can do
 * @param details lines to look through, often none
 * @param answers in the order of their buttons; the first by which nothing is lost is proposed, the last is what closing the dialog means
 */
public record Question(String id, Tone tone, String title, String sentence, List<String> details, List<Answer> answers) {

    /** How it is meant. */
    public enum Tone {
        NOTE, QUESTION, WARNING, FAULT
    }

    /** One of the answers. @param label what stands on its button, with a mnemonic @param loses whether something is lost by it */
    public record Answer(String id, String label, boolean loses) {

        public Answer(String id, String label) {
            this(id, label, false);
        }

        /** {@return an answer by which something is lost, so that it is never the proposed one} */
        public static Answer losing(String id, String label) {
            return new Answer(id, label, true);
        }
    }

    public Question {
        details = List.copyOf(details);
        answers = List.copyOf(answers);
        if (answers.isEmpty()) {
            throw new IllegalArgumentException("The question \"" + id + "\" can only be answered when there is an answer");
        }
    }

    /** {@return a question} */
    public static Question of(String id, Tone tone, String title, String sentence, Answer... answers) {
        return new Question(id, tone, title, sentence, List.of(), List.of(answers));
    }

    /** {@return the answer that Enter gives} */
    public Answer proposed() {
        return answers.stream().filter(answer -> !answer.loses()).findFirst().orElse(answers.getLast());
    }

    /** {@return the same with lines to look through} */
    public Question with(List<String> lines) {
        return new Question(id, tone, title, sentence, lines, answers);
    }
}

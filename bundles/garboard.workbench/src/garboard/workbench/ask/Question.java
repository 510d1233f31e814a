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
 * @param answers the proposed one first; the last is what closing the dialog means
 */
public record Question(String id, Tone tone, String title, String sentence, List<String> details, List<Answer> answers) {

    /** How it is meant. */
    public enum Tone {
        NOTE, QUESTION, WARNING, FAULT
    }

    /** One of the answers. @param label what stands on its button, with a mnemonic */
    public record Answer(String id, String label) {
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

    /** {@return the same with lines to look through} */
    public Question with(List<String> lines) {
        return new Question(id, tone, title, sentence, lines, answers);
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.console;

/** A command cannot do what was asked, for a reason that one sentence tells the person at the keyboard. Exit code 2. */
final class CommandFailure extends Exception {

    private static final long serialVersionUID = 1L;

    CommandFailure(String sentence) {
        super(sentence);
    }

    CommandFailure(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}

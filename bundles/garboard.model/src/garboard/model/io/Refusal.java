// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

/** Ends the parsing of a file that is no record; carries the sentence up through the parser. */
final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int line;

    /**
     * @param line   the line where parsing stood, below 1 when not known
     * @param reason goes on a sentence that begins with the name of the file
     */
    Refusal(int line, String reason) {
        super(reason);
        this.line = line;
    }

    int line() {
        return line;
    }
}

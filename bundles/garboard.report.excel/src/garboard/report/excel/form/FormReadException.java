// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.util.List;

/** A form cannot be read, or has mistakes; then nothing of it was taken over. */
public final class FormReadException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<FormMistake> mistakes;

    FormReadException(String sentence, Throwable cause) {
        super(sentence, cause);
        this.mistakes = List.of();
    }

    FormReadException(String sentence) {
        this(sentence, (Throwable) null);
    }

    FormReadException(List<FormMistake> mistakes) {
        super((mistakes.size() == 1 ? "One entry of the form cannot be read: " : mistakes.size() + " entries of the form cannot be read; the first: ")
            + mistakes.getFirst());
        this.mistakes = List.copyOf(mistakes);
    }

    /** All mistakes, in the order of the sheets; empty when the file as a whole cannot be read. */
    public List<FormMistake> mistakes() {
        return mistakes;
    }
}

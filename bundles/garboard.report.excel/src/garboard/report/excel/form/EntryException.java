// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

/** An entry is no value of its field; the message tells what was found and what would be right. */
final class EntryException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    EntryException(String message) {
        super(message);
    }

    EntryException(RuntimeException refused) {
        super(refused.getMessage(), refused);
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.physics;

/**
 * Where a formula or figure comes from.
 *
 * @param citation work and place in it, such as {@code 33 CFR 183.610, Table}; for common practice the words {@code common practice}
 * @param status how sure we are of it
 * @param note what a reader has to know besides, such as figures that disagree; may be empty
 */
public record Source(String citation, Status status, String note) {

    public Source {
        if (citation.isBlank()) {
            throw new IllegalArgumentException("a source without citation");
        }
    }

    public static Source retrieved(String citation) {
        return new Source(citation, Status.RETRIEVED, "");
    }

    public static Source quoted(String citation) {
        return new Source(citation, Status.QUOTED, "");
    }

    public static Source fromMemory(String citation) {
        return new Source(citation, Status.FROM_MEMORY, "");
    }

    public static Source commonPractice() {
        return new Source("common practice", Status.COMMON_PRACTICE, "");
    }

    /** @param how from what it follows, such as {@code rotation of the boat's axes} */
    public static Source derived(String how) {
        return new Source(how, Status.DERIVED, "");
    }

    /** The same source with a note. */
    public Source noting(String words) {
        return new Source(citation, status, words);
    }

    /** For a reader, such as {@code 33 CFR 183.610 (text read)}. */
    @Override
    public String toString() {
        String sure = citation.equals(status.label()) ? citation : citation + " (" + status.label() + ")";
        return note.isEmpty() ? sure : sure + "; " + note;
    }
}

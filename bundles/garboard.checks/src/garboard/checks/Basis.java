// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.Objects;

/**
 * Where a rule comes from, and how sure we are of its text.
 *
 * @param kind what kind of authority stands behind the rule
 * @param citation the section, clause, chapter or page; for common practice the words "common practice"
 * @param status how the text or figure reached us
 * @param otherFigures published figures that disagree with the one used, or an empty text
 */
public record Basis(Kind kind, String citation, Status status, String otherFigures) {

    /** The kind of authority behind a rule. Only a regulation is beyond a maker's limit and beyond acceptance. */
    public enum Kind {
        REGULATION("regulation"), STANDARD("standard"), HANDBOOK("handbook"), TRADE_PRESS("trade press"),
        COMMON_PRACTICE("common practice"), DERIVED("derived");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** How sure we are of the text: printed beside each citation so that a remembered figure never looks like a read one. */
    public enum Status {
        RETRIEVED("text read"), QUOTED("quoted by a third party"), FROM_MEMORY("from memory"),
        COMMON_PRACTICE("common practice"), DERIVED("derived here");

        private final String label;

        Status(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public Basis {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(status, "status");
        Objects.requireNonNull(otherFigures, "otherFigures");
        if (citation == null || citation.isBlank()) {
            throw new IllegalArgumentException("A basis needs a citation; common practice says so in words");
        }
    }

    public static Basis regulation(String citation, Status status) {
        return new Basis(Kind.REGULATION, citation, status, "");
    }

    public static Basis standard(String citation, Status status) {
        return new Basis(Kind.STANDARD, citation, status, "");
    }

    public static Basis handbook(String citation, Status status) {
        return new Basis(Kind.HANDBOOK, citation, status, "");
    }

    public static Basis tradePress(String citation) {
        return new Basis(Kind.TRADE_PRESS, citation, Status.QUOTED, "");
    }

    public static Basis commonPractice() {
        return new Basis(Kind.COMMON_PRACTICE, "common practice", Status.COMMON_PRACTICE, "");
    }

    /** Follows from physics or geometry alone; {@code how} says from what. */
    public static Basis derived(String how) {
        return new Basis(Kind.DERIVED, how, Status.DERIVED, "");
    }

    /** The same basis, naming the published figures that disagree with the one used. */
    public Basis othersSay(String figures) {
        return new Basis(kind, citation, status, figures);
    }

    /** Whether this is law where it applies: neither a maker's figure nor a person's acceptance replaces it. */
    public boolean isRegulation() {
        return kind == Kind.REGULATION;
    }

    /** For example {@code 33 CFR 183.630 (regulation, text read)}. */
    @Override
    public String toString() {
        return kind == Kind.COMMON_PRACTICE ? citation
                : citation + " (" + kind.label() + (kind == Kind.DERIVED ? "" : ", " + status.label()) + ")";
    }
}

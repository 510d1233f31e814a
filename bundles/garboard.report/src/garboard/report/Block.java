// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;
import java.util.Objects;

/** What a sheet is made of. */
public sealed interface Block permits Block.Heading, Block.Paragraph, Block.KeyValues, Block.SignatureLines, Block.PageBreak, Table,
        Picture, PictureRow, ChartRow {

    /** A heading inside a sheet; it stays with what follows it. */
    record Heading(String text) implements Block {
        public Heading {
            Objects.requireNonNull(text, "text");
        }
    }

    /** How a paragraph looks. */
    enum Style {
        /** Running text. */
        BODY,
        /** Small print. */
        NOTE,
        /** The one sentence that matters. */
        OUTCOME,
        /** A caution: framed, never small. */
        CAUTION,
        /** The lead of a caution. */
        CAUTION_LEAD
    }

    /** A paragraph; line breaks in the text are kept. */
    record Paragraph(String text, Style style) implements Block {
        public Paragraph {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(style, "style");
        }
    }

    /** Pairs of a label and what stands for it, two pairs to a line. */
    record KeyValues(List<Entry> entries) implements Block {
        public KeyValues {
            entries = List.copyOf(entries);
        }
    }

    /** One pair. */
    record Entry(String label, Cell value) {
        public static Entry of(String label, String value) {
            return new Entry(label, Cell.text(value));
        }
    }

    /**
     * Lines for people to sign on; they stay on one page.
     *
     * @param statement what stands above all of them
     */
    record SignatureLines(String statement, List<Signatory> signatories) implements Block {
        public SignatureLines {
            signatories = List.copyOf(signatories);
        }
    }

    /**
     * One who signs.
     *
     * @param role as what
     * @param name and licence, or an empty text to be filled in by hand
     * @param placeAndDate or an empty text to be filled in by hand
     * @param statement what the signature stands for
     */
    record Signatory(String role, String name, String placeAndDate, String statement) {
    }

    /** What follows begins on a new page. */
    record PageBreak() implements Block {
    }

    static Paragraph body(String text) {
        return new Paragraph(text, Style.BODY);
    }

    static Paragraph note(String text) {
        return new Paragraph(text, Style.NOTE);
    }
}

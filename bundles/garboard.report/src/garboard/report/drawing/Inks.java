// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

/** The colours of a drawing. What a drawing tells, it tells by shapes and words as well, so that any set will do. */
@FunctionalInterface
public interface Inks {

    /** Dark on white; standings are told by their marks alone, so that a copy in black loses nothing. */
    Inks PAPER = ink -> switch (ink) {
        case INK, CHECK_BROKE, FALLS_SHORT, BORDERLINE, CANNOT_TELL, ACCEPTED, MEETS, CHOSEN -> 0x1A1A1A;
        case FAINT -> 0x5F666B;
        case PALE -> 0xB9C0C5;
        case WATER -> 0x1F5F8B;
        case SEA -> 0xF1F5F8;
        case FUEL -> 0x7A5B12;
        case EXHAUST -> 0x4A4F53;
        case EMBER -> 0x9A4B2E;
        case BLANK -> 0xFFFFFF;
    };

    /** {@return red, green and blue, eight bits each} */
    int rgb(Ink ink);
}

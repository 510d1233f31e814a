// SPDX-License-Identifier: EPL-2.0
package garboard.session.photo;

import java.awt.geom.AffineTransform;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;

/**
 * What a camera notes in a JPEG file beside the picture: how it was held, and the day. Tags and types as in Exif 2.3 (JEITA CP-3451C),
 * sections 4.5.4 and 4.6. What cannot be read is taken for not noted.
 *
 * @param orientation 1 to 8 as in tag 0x0112; 1 is upright
 */
record Exif(int orientation, Optional<LocalDate> takenOn) {

    static final Exif NONE = new Exif(1, Optional.empty());

    private static final int APP1 = 0xe1;
    private static final int START_OF_SCAN = 0xda;
    private static final int ORIENTATION = 0x0112;
    private static final int DATE_TIME = 0x0132;
    private static final int EXIF_PART = 0x8769;
    private static final int DATE_TIME_ORIGINAL = 0x9003;
    private static final int ENTRY = 12;
    private static final int DATE = 10;
    private static final byte[] HEADER = {'E', 'x', 'i', 'f', 0, 0};
    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("uuuu:MM:dd", Locale.ROOT);

    static Exif of(byte[] jpeg) {
        try {
            int at = 2;
            while (at + 4 < jpeg.length && (jpeg[at] & 0xff) == 0xff && (jpeg[at + 1] & 0xff) != START_OF_SCAN) {
                int length = (jpeg[at + 2] & 0xff) << 8 | jpeg[at + 3] & 0xff;
                if ((jpeg[at + 1] & 0xff) == APP1 && isExif(jpeg, at + 4)) {
                    return read(ByteBuffer.wrap(jpeg, at + 4 + HEADER.length, length - 2 - HEADER.length).slice());
                }
                at += 2 + length;
            }
        } catch (BufferUnderflowException | IndexOutOfBoundsException | IllegalArgumentException damaged) {
            // The picture itself may be whole.
        }
        return NONE;
    }

    private static boolean isExif(byte[] jpeg, int at) {
        for (int index = 0; index < HEADER.length; index++) {
            if (jpeg[at + index] != HEADER[index]) {
                return false;
            }
        }
        return true;
    }

    private static Exif read(ByteBuffer tiff) {
        tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int first = tiff.getInt(4);
        int orientation = entry(tiff, first, ORIENTATION).map(at -> (int) tiff.getShort(at + 8)).filter(value -> value >= 1 && value <= 8).orElse(1);
        Optional<LocalDate> taken = entry(tiff, first, EXIF_PART).flatMap(at -> entry(tiff, tiff.getInt(at + 8), DATE_TIME_ORIGINAL))
            .flatMap(at -> date(tiff, at)).or(() -> entry(tiff, first, DATE_TIME).flatMap(at -> date(tiff, at)));
        return new Exif(orientation, taken);
    }

    /** {@return where an entry of a directory is} */
    private static Optional<Integer> entry(ByteBuffer tiff, int directory, int tag) {
        int count = tiff.getShort(directory) & 0xffff;
        for (int index = 0; index < count; index++) {
            int at = directory + 2 + index * ENTRY;
            if ((tiff.getShort(at) & 0xffff) == tag) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalDate> date(ByteBuffer tiff, int entry) {
        var text = new byte[DATE];
        tiff.get(tiff.getInt(entry + 8), text);
        try {
            return Optional.of(LocalDate.parse(new String(text, StandardCharsets.US_ASCII), WRITTEN));
        } catch (DateTimeParseException notNoted) {
            return Optional.empty();
        }
    }

    boolean turned() {
        return orientation != 1;
    }

    boolean onItsSide() {
        return orientation >= 5;
    }

    Exif upright() {
        return new Exif(1, takenOn);
    }

    /** {@return what turns a picture of this size upright} */
    AffineTransform turn(int width, int height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }
}

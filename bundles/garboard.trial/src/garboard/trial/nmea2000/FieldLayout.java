// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.util.Optional;

import garboard.quantity.Kind;
import garboard.trial.log.AcLine;
import garboard.trial.log.Measurand;

/** Where a number lies in a message and what it means. Value = raw x resolution + offset, in the unit. */
final class FieldLayout {

    /** Wide enough that the steps of a unit come out exact beside its zero. */
    private static final double WIDE = 1e6;

    private final String name;
    private final int fromBit;
    private final int bits;
    private final Coding coding;
    private final double times;
    private final double dividedBy;
    private final double offset;
    private final Meaning meaning;
    private final double siPerUnit;
    private final double siOfZero;

    /**
     * @param resolution a decimal, or {@code 1/n}; kept as two numbers so that 29817 x 0.01 comes out as 298.17
     */
    FieldLayout(String name, int fromBit, int bits, Coding coding, String resolution, double offset, String unit, Meaning meaning) {
        this.name = name;
        this.fromBit = fromBit;
        this.bits = bits;
        this.coding = coding;
        this.offset = offset;
        this.meaning = meaning;
        String[] parts = resolution.split("/");
        int decimals = parts[0].contains(".") ? parts[0].length() - parts[0].indexOf('.') - 1 : 0;
        times = Double.parseDouble(parts[0].replace(".", ""));
        dividedBy = parts.length == 2 ? Double.parseDouble(parts[1]) : Double.parseDouble("1e" + decimals);
        Optional<Kind<?>> kind = meaning.measurand().flatMap(Measurand::kind);
        siOfZero = kind.map(k -> k.of(0, unit).si()).orElse(0.0);
        siPerUnit = kind.map(k -> (k.of(WIDE, unit).si() - siOfZero) / WIDE).orElse(1.0);
    }

    /**
     * What a field is for.
     *
     * @param measurand what a reading of it measures; nothing for fields that are no readings
     * @param line      which line, where the message itself says it
     * @param detail    what the message says beyond that; may be empty
     */
    record Meaning(Optional<Measurand> measurand, AcLine line, String detail) {

        static final Meaning NONE = new Meaning(Optional.empty(), AcLine.NONE, "");
    }

    String name() {
        return name;
    }

    Meaning meaning() {
        return meaning;
    }

    boolean isReading() {
        return meaning.measurand().isPresent();
    }

    /** {@return whether a payload of so many bytes, the part that repeats moved on by some bits, holds the field whole} */
    boolean isWithin(int length, int movedBits) {
        return fromBit + movedBits + bits <= 8 * length;
    }

    /** {@return the number as it is on the bus, sign applied} */
    long raw(byte[] payload, int movedBits) {
        long raw = Bits.unsigned(payload, fromBit + movedBits, bits);
        return coding.hasSign() ? Bits.signed(raw, bits) : raw;
    }

    Coding.State state(long raw) {
        return coding.state(raw, bits);
    }

    /** {@return the value in the unit of the layout} */
    double inUnit(long raw) {
        return raw * times / dividedBy + offset;
    }

    /** {@return the value in the SI unit of the measurand's kind} */
    double si(long raw) {
        return inUnit(raw) * siPerUnit + siOfZero;
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import garboard.trial.log.Mishap;

/** How a field tells that it has no value. */
enum Coding {
    /** NMEA 2000, without sign: the three highest of 8 bits or more, the two highest of 2 to 7. */
    UNSIGNED,
    /** NMEA 2000, with sign: the three greatest positive numbers; all ones is -1. */
    SIGNED,
    /** With sign, where senders are known to write all ones for not available. */
    SIGNED_DOUBTFUL,
    /** J1939: the highest byte FF not available, FE error, FB to FD reserved; as NMEA 2000 below 8 bits. */
    J1939,
    /** Bits each with a meaning: all ones is not available, as none would set every alarm. */
    FLAGS,
    /** Every pattern means something. */
    PLAIN;

    /** What a raw number stands for. */
    enum State {
        VALUE(null), NOT_AVAILABLE(Mishap.NOT_AVAILABLE), OUT_OF_RANGE(Mishap.OUT_OF_RANGE), RESERVED(Mishap.RESERVED),
        /** A value by the book that is most likely none. */
        ALL_ONES(Mishap.ALL_ONES);

        private final Mishap mishap;

        State(Mishap mishap) {
            this.mishap = mishap;
        }

        /** What to count when this is no value. */
        Mishap mishap() {
            return mishap;
        }
    }

    /** {@return whether the raw number is to be read as two's complement} */
    boolean hasSign() {
        return this == SIGNED || this == SIGNED_DOUBTFUL;
    }

    /** {@return what the raw number, sign applied, stands for in a field of so many bits} */
    State state(long raw, int bits) {
        return switch (this) {
            case UNSIGNED -> belowAllOnes((1L << bits) - 1 - raw, bits);
            case SIGNED -> belowAllOnes((1L << bits - 1) - 1 - raw, bits);
            case SIGNED_DOUBTFUL -> raw == -1 ? State.ALL_ONES : belowAllOnes((1L << bits - 1) - 1 - raw, bits);
            case J1939 -> bits < 8 ? belowAllOnes((1L << bits) - 1 - raw, bits) : highestByte((int) (raw >>> bits - 8));
            case FLAGS -> raw == (1L << bits) - 1 ? State.NOT_AVAILABLE : State.VALUE;
            case PLAIN -> State.VALUE;
        };
    }

    private static State belowAllOnes(long below, int bits) {
        if (below > 2) {
            return State.VALUE;
        }
        if (below == 0) {
            return State.NOT_AVAILABLE;
        }
        if (below == 1) {
            return bits == 1 ? State.VALUE : State.OUT_OF_RANGE;
        }
        return bits < 8 ? State.VALUE : State.RESERVED;
    }

    private static State highestByte(int highest) {
        return switch (highest) {
            case 0xFF -> State.NOT_AVAILABLE;
            case 0xFE -> State.OUT_OF_RANGE;
            case 0xFB, 0xFC, 0xFD -> State.RESERVED;
            default -> State.VALUE;
        };
    }
}

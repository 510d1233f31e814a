// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

/** Reads one line of a log of frames. */
interface FrameLine {

    /** What a line turned out to be. */
    enum Kind {
        /** A frame with 29-bit identifier and data, in the frame that was given. */
        FRAME,
        /** A frame of another kind, which is counted. */
        FOREIGN,
        /** No frame at all by the rules of the format, such as a remark. */
        REMARK,
        /** A frame without time. */
        NO_TIME,
        BAD_TIME,
        AMBIGUOUS_TIME,
        UNREADABLE
    }

    Kind parse(byte[] bytes, int from, int to, CanFrame frame);
}

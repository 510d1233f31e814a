// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

/** What can be wrong or strange in a log. Each is counted, its first place kept, and told in a sentence; none stops the reading. */
public enum Mishap {
    /** A line that is not in the format. */
    UNREADABLE_LINE("line could not be read and was left out", "lines could not be read and were left out"),
    /** A line longer than any real one. */
    OVERLONG_LINE("line was too long to be one and was left out", "lines were too long to be one and were left out"),
    CHECKSUM("sentence had a wrong or missing checksum and was left out", "sentences had a wrong or missing checksum and were left out"),
    TIME_STEPS_BACK("time stamp was earlier than the one before; the order of the file was kept",
        "time stamps were earlier than the one before; the order of the file was kept"),
    /** By more than an hour: the logger slept, or its clock was set. */
    TIME_JUMPS_AHEAD("time stamp was more than an hour after the one before", "time stamps were more than an hour after the ones before"),
    UNREADABLE_TIME("time stamp could not be read; its line was left out", "time stamps could not be read; their lines were left out"),
    /** In the hour that a change of clocks repeats or leaves out. */
    AMBIGUOUS_TIME("local time exists twice or not at all, because clocks were changed; its line was left out. Give the offset instead of the zone",
        "local times exist twice or not at all, because clocks were changed; their lines were left out. Give the offset instead of the zone"),
    NO_TIME("reading came before any time was known and was left out", "readings came before any time was known and were left out"),
    /** Frames of the bus that carry no message of ours: errors, 11-bit, remote, CAN FD. */
    FOREIGN_FRAME("frame was of another kind (error, 11-bit, remote request, CAN FD) and was left out",
        "frames were of another kind (error, 11-bit, remote request, CAN FD) and were left out"),
    FOREIGN_MESSAGE("message, sentence, path or column was of a kind that is not read",
        "messages, sentences, paths or columns were of kinds that are not read"),
    /** J1939 messages above 8 bytes go by their own way of packets, which is not read. */
    TRANSPORT_PACKET("packet of a long J1939 message was left out", "packets of long J1939 messages were left out"),
    CUT_MESSAGE("message lacked a frame and was dropped whole", "messages lacked a frame and were dropped whole"),
    /** A message that ends before its first fields; missing tails are {@link #NOT_AVAILABLE}. */
    NOT_AVAILABLE("value was marked not available by its sender, or lacking", "values were marked not available by their senders, or lacking"),
    OUT_OF_RANGE("value was marked out of range or in error by its sender", "values were marked out of range or in error by their senders"),
    RESERVED("value was a reserved code", "values were reserved codes"),
    /** All ones in a signed field is -1, but senders write it who mean not available. */
    ALL_ONES("value was all ones in a field with a sign, which stands for -1 but most likely means not available; it was left out",
        "values were all ones in a field with a sign, which stands for -1 but most likely means not available; they were left out"),
    IMPOSSIBLE("value cannot be true (a placeholder, or a converter's fault) and was left out",
        "values cannot be true (placeholders, or a converter's fault) and were left out"),
    UNREADABLE_VALUE("value could not be read and was left out", "values could not be read and were left out"),
    /** One name for several things in one message, so that it cannot be told whose a value is. */
    AMBIGUOUS_VALUE("value had the same name as another of its message and was left out",
        "values had the same name as others of their message and were left out"),
    TOO_MANY_CHANNELS("reading was of one channel too many for one log and was left out",
        "readings were of more channels than one log can have and were left out");

    private final String one;
    private final String several;

    Mishap(String one, String several) {
        this.one = one;
        this.several = several;
    }

    /** {@return the sentence, such as {@code 9 messages lacked a frame and were dropped whole; the first in line 70.}} */
    public String sentence(long count, long firstLine) {
        String place = firstLine > 0 ? (count == 1 ? "; line " : "; the first in line ") + firstLine : "";
        return count + " " + (count == 1 ? one : several) + place + ".";
    }
}

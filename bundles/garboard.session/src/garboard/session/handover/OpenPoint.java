// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import garboard.checks.Verdict;

/**
 * One thing that stands between a record and a signature, or that who signs should know. The words for it are the window's.
 *
 * @param topic under which heading it is told
 * @param matter what it is
 * @param facts what the sentence names, in the order in which the matter lists them
 * @param place the key of the field, list or part where it is mended; nothing where there is none
 * @param verdict the verdict that it tells, where it tells one
 */
public record OpenPoint(Topic topic, Matter matter, List<String> facts, Optional<String> place, Optional<Verdict> verdict) {

    /** What the points are grouped by, in the order of reading. */
    public enum Topic {
        /** The program could not do its part; nobody can sign on that. */
        PROGRAM(true),
        /** People may be hurt, or nobody can tell whether they may. */
        DANGER(true),
        /** Every other shortfall that nobody accepted. */
        SHORTFALLS(true),
        /** What was typed and cannot be read. */
        UNREAD(true),
        /** Checks of danger to the machine and of defects that lack an entry. */
        NOT_JUDGED(true),
        /** What a warranty desk registers a set by. */
        REGISTRATION(true),
        TRIAL(true),
        IMPELLER(true),
        /** Questions of the inspection without an answer, findings without a picture. */
        INSPECTION(true),
        /** What does not hinder, but should be known. */
        TO_KNOW(false);

        private final boolean hinders;

        Topic(boolean hinders) {
            this.hinders = hinders;
        }

        /** {@return whether points of this topic stand in the way of a signature} */
        public boolean hinders() {
            return hinders;
        }
    }

    /** What a point can be. Behind each: the facts that its sentence names. */
    public enum Matter {
        /** A verdict, told by its own sentence. */
        VERDICT,
        /** Several checks of one stop lack entries: name of the stop as in {@link garboard.session.Stop}, count of checks, count of entries. */
        UNTOLD,
        /** A practice that the record asks for and the program does not have: its name. */
        PRACTICE_NOT_AT_HAND,
        /** A text that cannot be read: the text. */
        UNREAD,
        /** A field that is empty. */
        NOT_ENTERED,
        NO_OWNER, NO_INSTALLER,
        /** A day in the future: the day. */
        FUTURE_DAY,
        /** A day before another that it must follow: the day, the other day, the key of the field of the other. */
        DAYS_CROSSED,
        NO_TRIAL,
        /** Steps of the start procedure that are open: how many, of how many. */
        STEPS_OPEN,
        NO_START,
        /** Loads that were not tried: the loads. */
        LOADS_MISSING,
        /** A load step without a reading: its load, or nothing. */
        LOAD_WITHOUT_READINGS,
        NO_SHUTDOWN_TESTS,
        /** A shutdown that did not pass, or was not tried: the name of its kind as in the model, or nothing; the name of the result. */
        SHUTDOWN_NOT_PASSED,
        /** Leaks were found. */
        LEAKS,
        NO_SEA_RUN,
        /** Water stopped at the outlet during the sea run. */
        SEA_RUN_WATER_STOPPED,
        /** Sea water came in through the exhaust during the sea run. */
        SEA_RUN_WATER_CAME_IN,
        /** Pieces of the impeller: how many are missing, how many of them were found. */
        IMPELLER_PIECES,
        /** Nobody counted the vanes. */
        IMPELLER_NOT_COUNTED,
        /** A question without an answer: the question. */
        QUESTION_OPEN,
        /** A question answered with no, without a picture: the question. */
        FINDING_WITHOUT_PICTURE,
        NO_PHOTOGRAPHS,
        /** Photographs that nobody wrote under: how many. */
        PHOTOGRAPHS_WITHOUT_CAPTION,
        /** The record is held against these practices only: their names. */
        PRACTICES_CHOSEN,
        /** None of the maker's limits is entered. */
        NO_MAKERS_LIMITS,
        NO_INSTRUMENTS,
        /** An instrument without a day of calibration: its name. */
        INSTRUMENT_NOT_CALIBRATED
    }

    public OpenPoint {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(matter, "matter");
        facts = List.copyOf(facts);
    }

    static OpenPoint of(Topic topic, Matter matter, String place, String... facts) {
        return new OpenPoint(topic, matter, List.of(facts), Optional.of(place), Optional.empty());
    }

    static OpenPoint of(Topic topic, Verdict verdict, String place) {
        return new OpenPoint(topic, Matter.VERDICT, List.of(), Optional.of(place), Optional.of(verdict));
    }
}

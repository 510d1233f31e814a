// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import garboard.model.CommissioningRecord;
import garboard.model.Party;
import garboard.model.PartyRole;
import garboard.model.SignatureRole;

/**
 * A person about to sign.
 *
 * @param role as what
 * @param name who
 * @param licence number of the licence, or blank
 * @param place where, or blank
 * @param on the day
 * @param ownWords what the person adds to the statement; must say that the open points stand, when there are any
 */
public record Signatory(SignatureRole role, String name, String licence, String place, LocalDate on, String ownWords) {

    /** Fewer letters than this do not say anything. */
    private static final int FEWEST_LETTERS = 10;

    /** What stands in the way of signing now. */
    public enum Obstacle {
        /** A check broke: what it would have found is not known. */
        CHECK_BROKE,
        NO_ROLE, NO_NAME,
        /** Points are open, and the person has not said in words that they stand. */
        NOT_CONFIRMED
    }

    public Signatory {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(on, "on");
        name = name.strip();
        licence = licence.strip();
        place = place.strip();
        ownWords = ownWords.strip();
    }

    /** {@return what stands in the way of signing with these points open} */
    public Set<Obstacle> obstacles(SignOff signOff) {
        Set<Obstacle> obstacles = EnumSet.noneOf(Obstacle.class);
        note(signOff.isBarred(), Obstacle.CHECK_BROKE, obstacles);
        note(role == SignatureRole.NOT_ENTERED, Obstacle.NO_ROLE, obstacles);
        note(name.isEmpty(), Obstacle.NO_NAME, obstacles);
        note(!signOff.isClear() && !saysSomething(), Obstacle.NOT_CONFIRMED, obstacles);
        return obstacles;
    }

    private static void note(boolean holds, Obstacle obstacle, Set<Obstacle> into) {
        if (holds) {
            into.add(obstacle);
        }
    }

    private boolean saysSomething() {
        return ownWords.codePoints().filter(Character::isLetter).count() >= FEWEST_LETTERS;
    }

    /** {@return the party of a record that signs in this role, when there is one} */
    public static Optional<Party> party(CommissioningRecord record, SignatureRole role) {
        PartyRole meant = switch (role) {
            case INSTALLER -> PartyRole.INSTALLER;
            case OWNER -> PartyRole.OWNER;
            case SURVEYOR -> PartyRole.SURVEYOR;
            case WARRANTY_DESK -> PartyRole.WARRANTY_DESK;
            case NOT_ENTERED -> PartyRole.NOT_ENTERED;
        };
        return record.getParties().stream().filter(party -> meant != PartyRole.NOT_ENTERED && party.getRole() == meant).findFirst();
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

import garboard.model.GarboardPackage.Literals;
import garboard.session.OpenRecord.Acceptor;
import garboard.session.entry.EntryReader;
import garboard.session.entry.Reading;

/**
 * An acceptance being filled in.
 *
 * @param name who takes responsibility
 * @param reason why
 * @param until the last day on which it counts, as it was typed; blank for good
 * @param today the day on which it is given
 */
public record AcceptanceDraft(String name, String reason, String until, LocalDate today) {

    /** What an acceptance cannot be recorded with. */
    public enum Fault {
        NO_NAME, NO_REASON, UNTIL_UNREADABLE, UNTIL_PAST
    }

    /** {@return what is wrong with it, in the order of the fields} */
    public Set<Fault> faults(EntryReader reader) {
        Set<Fault> faults = EnumSet.noneOf(Fault.class);
        if (name.isBlank()) {
            faults.add(Fault.NO_NAME);
        }
        if (reason.isBlank()) {
            faults.add(Fault.NO_REASON);
        }
        switch (reader.read(Literals.ACCEPTANCE__UNTIL, until)) {
            case Reading.Entered(LocalDate day, Optional<String> unit) when day.isBefore(today) -> faults.add(Fault.UNTIL_PAST);
            case Reading.Entered entered -> { }
            case Reading.Empty none -> { }
            case Reading.Begun begun -> faults.add(Fault.UNTIL_UNREADABLE);
            case Reading.Refused refused -> faults.add(Fault.UNTIL_UNREADABLE);
        }
        return faults;
    }

    /** {@return the acceptance without blanks around what was typed; to be asked for only when there is no fault} */
    public Acceptor acceptor(EntryReader reader) {
        if (!faults(reader).isEmpty()) {
            throw new IllegalStateException("The acceptance has faults: " + faults(reader));
        }
        Optional<LocalDate> day = reader.read(Literals.ACCEPTANCE__UNTIL, until) instanceof Reading.Entered(LocalDate read, Optional<String> unit)
            ? Optional.of(read) : Optional.empty();
        return new Acceptor(name.strip(), reason.strip(), today, day);
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.domain.EditingDomain;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.RecordPath;
import garboard.model.UnreadEntry;

/** What was typed into fields and could not be read: kept in the record as it was typed, and never taken for a value. */
final class Unread {

    private final CommissioningRecord record;
    private final EditingDomain domain;

    Unread(CommissioningRecord record, EditingDomain domain) {
        this.record = record;
        this.domain = domain;
    }

    Optional<String> text(String key) {
        return record.getUnreadEntries().stream().filter(entry -> key.equals(entry.getPlace())).findFirst().map(UnreadEntry::getText);
    }

    /** The commands that forget what stands for a field. */
    List<Command> forgetting(String key) {
        return forgetting(record.getUnreadEntries().stream().filter(entry -> key.equals(entry.getPlace())).toList());
    }

    /** The commands that forget what stands for several fields. */
    List<Command> forgetting(Set<String> keys) {
        return forgetting(record.getUnreadEntries().stream().filter(entry -> entry.getPlace() != null && keys.contains(entry.getPlace())).toList());
    }

    /** The commands that forget what stands for fields of some parts and of all below them. */
    List<Command> forgettingBelow(Collection<? extends EObject> parts) {
        List<String> keys = parts.stream().map(part -> RecordPath.key(part) + ".").toList();
        return forgetting(record.getUnreadEntries().stream()
            .filter(entry -> entry.getPlace() != null && keys.stream().anyMatch(entry.getPlace()::startsWith)).toList());
    }

    private List<Command> forgetting(List<UnreadEntry> entries) {
        return entries.isEmpty() ? List.of()
            : List.of(RemoveCommand.create(domain, record, Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES, entries));
    }

    /** {@return the places of entries, as a notification tells of one or of several} */
    static List<String> places(Object oneOrMany) {
        return (oneOrMany instanceof List<?> many ? many : oneOrMany == null ? List.of() : List.of(oneOrMany)).stream()
            .filter(UnreadEntry.class::isInstance).map(UnreadEntry.class::cast).map(UnreadEntry::getPlace).filter(Objects::nonNull).toList();
    }

    Command keeping(String key, String text) {
        UnreadEntry entry = GarboardFactory.eINSTANCE.createUnreadEntry();
        entry.setPlace(key);
        entry.setText(text);
        return AddCommand.create(domain, record, Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES, entry);
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Party;
import garboard.model.PartyRole;
import garboard.model.RecordPath;
import garboard.model.UnreadEntry;
import garboard.session.Field;
import garboard.session.RecordKey;
import garboard.session.handover.OpenPoint.Matter;
import garboard.session.handover.OpenPoint.Topic;

/**
 * What a warranty desk needs to register a set: the plates, the boat, who owns and who fitted it, the days; and that what was typed can be
 * read. Common practice.
 */
final class WarrantyPoints {

    private static final List<String> WANTED = List.of("recordNumber", "vessel.name", "vessel.identification", "vessel.hullKind", "vessel.service",
        "generatorSet.maker", "generatorSet.type", "generatorSet.serialNumber", "generatorSet.engineSerialNumber",
        "generatorSet.alternatorSerialNumber", "generatorSet.fuel", "generatorSet.ratedPower", "generatorSet.ratedVoltage",
        "generatorSet.ratedFrequency", "generatorSet.ratedSpeed", "generatorSet.soldOn", "generatorSet.installedOn", "generatorSet.hourMeter");
    /** A plate may name the one or the other. */
    private static final String OTHER_POWER = "generatorSet.ratedApparentPower";

    private final CommissioningRecord record;
    private final LocalDate today;
    private final Set<String> unread = new HashSet<>();
    private final List<OpenPoint> points = new ArrayList<>();

    private WarrantyPoints(CommissioningRecord record, LocalDate today) {
        this.record = record;
        this.today = today;
    }

    static List<OpenPoint> of(CommissioningRecord record, LocalDate today) {
        var warranty = new WarrantyPoints(record, today);
        record.getUnreadEntries().forEach(warranty::addUnread);
        WANTED.forEach(warranty::addIfEmpty);
        warranty.addParty(PartyRole.OWNER, Matter.NO_OWNER);
        warranty.addParty(PartyRole.INSTALLER, Matter.NO_INSTALLER);
        warranty.addDays();
        return warranty.points;
    }

    private void addUnread(UnreadEntry entry) {
        String place = Optional.ofNullable(entry.getPlace()).orElse("");
        unread.add(place);
        points.add(OpenPoint.of(Topic.UNREAD, Matter.UNREAD, place, Optional.ofNullable(entry.getText()).orElse("")));
    }

    private void addIfEmpty(String key) {
        boolean other = key.equals("generatorSet.ratedPower") && !isEmpty(OTHER_POWER);
        if (!other && !unread.contains(key) && isEmpty(key)) {
            points.add(OpenPoint.of(Topic.REGISTRATION, Matter.NOT_ENTERED, key));
        }
    }

    private boolean isEmpty(String key) {
        return value(key).filter(value -> !(value instanceof String text && text.isBlank())).isEmpty();
    }

    private Optional<Object> value(String key) {
        return RecordKey.of(record, key).flatMap(RecordKey::field).flatMap(Field::value);
    }

    private void addParty(PartyRole role, Matter none) {
        List<Party> parties = record.getParties().stream().filter(party -> party.getRole() == role).toList();
        if (parties.isEmpty()) {
            points.add(OpenPoint.of(Topic.REGISTRATION, none, "parties"));
        }
        for (Party party : parties) {
            String key = RecordPath.key(party);
            addIfEmpty(key + "." + Literals.PARTY__NAME.getName());
            addIfEmpty(key + "." + Literals.PARTY__CONTACT.getName());
            if (role == PartyRole.INSTALLER) {
                addIfEmpty(key + "." + Literals.PARTY__LICENCE.getName());
            }
        }
    }

    private void addDays() {
        List.of("vessel.builtOn", "generatorSet.soldOn", "generatorSet.installedOn", "trial.date", "trial.seaRun.date").forEach(this::addIfFuture);
        addIfCrossed("generatorSet.soldOn", "generatorSet.installedOn");
        addIfCrossed("vessel.builtOn", "generatorSet.installedOn");
        addIfCrossed("generatorSet.installedOn", "trial.date");
    }

    private void addIfFuture(String key) {
        day(key).filter(day -> day.isAfter(today))
            .ifPresent(day -> points.add(OpenPoint.of(Topic.REGISTRATION, Matter.FUTURE_DAY, key, day.toString())));
    }

    private void addIfCrossed(String first, String then) {
        Optional<LocalDate> before = day(first);
        Optional<LocalDate> after = day(then);
        if (before.isPresent() && after.isPresent() && after.get().isBefore(before.get())) {
            points.add(OpenPoint.of(Topic.REGISTRATION, Matter.DAYS_CROSSED, then, after.get().toString(), before.get().toString(), first));
        }
    }

    private Optional<LocalDate> day(String key) {
        return value(key).filter(LocalDate.class::isInstance).map(LocalDate.class::cast);
    }
}

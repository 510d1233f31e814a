// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.time.LocalDate;
import java.util.List;

import garboard.model.Acceptance;
import garboard.model.CommissioningRecord;

/**
 * Lays the record's acceptances over the verdicts. An acceptance never hides the shortfall: sentence, measured value and
 * limit stay. Law cannot be accepted away; an acceptance of it is recorded and does not change the standing.
 */
final class Acceptances {

    private Acceptances() {
    }

    static Verdict lay(Verdict verdict, CommissioningRecord record, LocalDate today) {
        if (verdict.standing() != Standing.FALLS_SHORT && verdict.standing() != Standing.BORDERLINE) {
            return verdict;
        }
        List<Acceptance> given = record.getAcceptances().stream().filter(acceptance -> concerns(acceptance, verdict)).toList();
        if (given.isEmpty()) {
            return verdict;
        }
        // One that ran out does not stand in the way of one that counts; when none counts the last says why.
        return given.stream().map(acceptance -> decide(verdict, acceptance, today)).filter(laid -> laid.standing() == Standing.ACCEPTED)
                .findFirst().orElseGet(() -> decide(verdict, given.getLast(), today));
    }

    private static boolean concerns(Acceptance acceptance, Verdict verdict) {
        String subject = acceptance.getSubject();
        return verdict.check().id().equals(acceptance.getCheck())
                && (subject == null || subject.isBlank() || subject.equals(verdict.subjectKey()));
    }

    private static Verdict decide(Verdict verdict, Acceptance acceptance, LocalDate today) {
        if (blank(acceptance.getAcceptedBy()) || blank(acceptance.getReason())) {
            return verdict.withAcceptance(verdict.standing(), "An acceptance needs a name and a reason; this one does not count");
        }
        String who = acceptance.getAcceptedBy() + (acceptance.getAcceptedOn() == null ? "" : ", " + acceptance.getAcceptedOn())
                + ": " + acceptance.getReason()
                + (acceptance.getUntil() == null ? "" : " (until " + acceptance.getUntil() + ")");
        if (verdict.check().basis().isRegulation()) {
            return verdict.withAcceptance(verdict.standing(), "Recorded, but a regulation cannot be accepted away. " + who);
        }
        if (acceptance.getUntil() != null && acceptance.getUntil().isBefore(today)) {
            return verdict.withAcceptance(verdict.standing(), "The acceptance has run out. " + who);
        }
        return verdict.withAcceptance(Standing.ACCEPTED, who);
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}

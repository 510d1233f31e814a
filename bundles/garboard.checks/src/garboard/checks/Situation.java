// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;

import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.MakerLimits;
import garboard.model.Vessel;

/**
 * What a check sees: its subject, the record around it and the day. A check reads, it never changes anything.
 *
 * @param <S> the subject's class
 * @param subject the object judged
 * @param record the record that holds it
 * @param today the day on which it is judged, for intervals and expiry dates
 */
public record Situation<S extends EObject>(S subject, CommissioningRecord record, LocalDate today) {

    /** The vessel. Only to be called by checks that need a feature of it, which makes sure that it is there. */
    public Vessel vessel() {
        return record.getVessel();
    }

    /** The set. Only to be called by checks that need a feature of it, which makes sure that it is there. */
    public GeneratorSet set() {
        return record.getGeneratorSet();
    }

    /** The maker's own figure, where it is entered. */
    public <Q> Optional<Q> maker(Function<MakerLimits, Q> getter) {
        return Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getMakerLimits).map(getter);
    }

    /** A figure that the check can use but does not need, from anywhere in the record; null-safe along the getters. */
    public <P, Q> Optional<Q> optional(P part, Function<P, Q> getter) {
        return Optional.ofNullable(part).map(getter);
    }
}

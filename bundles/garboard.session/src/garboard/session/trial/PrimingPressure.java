// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.Optional;

import garboard.model.CommissioningRecord;
import garboard.model.FuelPriming;
import garboard.model.GeneratorSet;
import garboard.model.MakerLimits;
import garboard.model.Trial;
import garboard.quantity.GaugePressure;

/**
 * A pressure that priming brought up, against what the maker wants.
 *
 * @param found what was read, where it was
 * @param low the least the maker wants, where that is entered
 * @param high the most
 */
public record PrimingPressure(Optional<GaugePressure> found, Optional<GaugePressure> low, Optional<GaugePressure> high) {

    /** How the pressure stands. */
    public enum Standing {
        /** Nothing was read. */
        NOT_READ,
        /** The maker's limits are not entered. */
        NO_LIMIT,
        WITHIN, BELOW, ABOVE
    }

    public static PrimingPressure feed(CommissioningRecord record) {
        return new PrimingPressure(priming(record).map(FuelPriming::getFeedPressure), limits(record).map(MakerLimits::getFeedPressureLow),
            limits(record).map(MakerLimits::getFeedPressureHigh));
    }

    public static PrimingPressure rail(CommissioningRecord record) {
        return new PrimingPressure(priming(record).map(FuelPriming::getRailPressure), limits(record).map(MakerLimits::getRailPressureLow),
            limits(record).map(MakerLimits::getRailPressureHigh));
    }

    public Standing standing() {
        if (found.isEmpty()) {
            return Standing.NOT_READ;
        }
        if (low.isEmpty() && high.isEmpty()) {
            return Standing.NO_LIMIT;
        }
        if (low.filter(found.get()::isLessThan).isPresent()) {
            return Standing.BELOW;
        }
        return high.filter(found.get()::isMoreThan).isPresent() ? Standing.ABOVE : Standing.WITHIN;
    }

    private static Optional<FuelPriming> priming(CommissioningRecord record) {
        return Optional.ofNullable(record.getTrial()).map(Trial::getPriming);
    }

    private static Optional<MakerLimits> limits(CommissioningRecord record) {
        return Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getMakerLimits);
    }
}

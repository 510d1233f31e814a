// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.CommissioningRecord;
import garboard.quantity.GaugePressure;
import garboard.session.trial.PrimingPressure.Standing;

class PrimingPressureTest {

    private final CommissioningRecord record = TrialRecords.withTrial();

    PrimingPressureTest() {
        record.getTrial().setPriming(TrialRecords.MAKE.createFuelPriming());
    }

    // common practice: a rail of 38 to 42 psi; 262.0 kPa are 38 psi to a tenth of a kPa (conversion 6.89476 kPa/psi)
    @ParameterizedTest
    @CsvSource({"35 psi, BELOW", "38 psi, WITHIN", "262.1 kPa, WITHIN", "261.9 kPa, BELOW", "42 psi, WITHIN", "42.1 psi, ABOVE"})
    void holdsTheRailAgainstTheMakersLimits(String read, Standing standing) {
        record.getGeneratorSet().setMakerLimits(TrialRecords.MAKE.createMakerLimits());
        record.getGeneratorSet().getMakerLimits().setRailPressureLow(GaugePressure.valueOf("38 psi"));
        record.getGeneratorSet().getMakerLimits().setRailPressureHigh(GaugePressure.valueOf("42 psi"));
        record.getTrial().getPriming().setRailPressure(GaugePressure.valueOf(read));

        assertThat(PrimingPressure.rail(record).standing()).isEqualTo(standing);
        assertThat(PrimingPressure.feed(record).standing()).isEqualTo(Standing.NOT_READ);
    }

    @Test
    void tellsAPressureWithoutALimitFromOneThatWasNotRead() {
        assertThat(PrimingPressure.feed(record).standing()).isEqualTo(Standing.NOT_READ);
        record.getTrial().getPriming().setFeedPressure(GaugePressure.valueOf("4 psi"));

        assertThat(PrimingPressure.feed(record).standing()).isEqualTo(Standing.NO_LIMIT);
    }
}

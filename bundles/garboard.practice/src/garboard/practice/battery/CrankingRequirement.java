// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import java.util.Optional;

import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.CrankingRatingDefinition;
import garboard.model.MakerLimits;
import garboard.physics.battery.CrankingDemand;
import garboard.practice.MakersLimit;
import garboard.quantity.Current;
import garboard.quantity.Voltage;

/** The cranking current that the bank has to have on its label: the maker's figure, else the least one worked out from the cranking current. */
final class CrankingRequirement {

    /** Rested voltage of a charged 12 V block that the worked-out figure reckons with. */
    private static final Voltage CHARGED = Voltage.of(12.7, "V");

    private CrankingRequirement() {
    }

    /** The maker's least cranking current for the bank, where it is entered. */
    static Optional<Current> makers(Situation<?> s) {
        return s.maker(MakerLimits::getMinimumBatteryCcA);
    }

    /** The test by which the requirement is meant: what the maker names beside his figure, else SAE J537, for which the formula holds. */
    static CrankingRatingDefinition definition(Situation<?> s) {
        return makers(s).flatMap(figure -> s.maker(MakerLimits::getBatteryCrankingDefinition)).orElse(CrankingRatingDefinition.CCA_SAE_J537);
    }

    /** Needs the cranking current where the maker gives no figure. */
    static Limit<Current> least(Situation<?> s) {
        return MakersLimit.or(makers(s), () -> Limit.of(CrankingDemand.of(s.set().getCrankingCurrent(), CHARGED).coldCrankingNeeded(),
            "derived: 9.6 V at the posts of a block charged to 12.7 V"));
    }

    /** Whether label and requirement are by the same test. As long as the maker's test is not entered nothing speaks against it. */
    static boolean comparable(Situation<?> s) {
        CrankingRatingDefinition required = definition(s);
        return required == CrankingRatingDefinition.NOT_ENTERED
            || required == s.record().getStartingBattery().getCrankingRatingDefinition();
    }

    /** A test of cranking current in words. */
    static String inWords(CrankingRatingDefinition definition) {
        return switch (definition) {
            case CCA_SAE_J537 -> "CCA by SAE J537 (30 s at -18 degC to 7.2 V)";
            case EN_50342_1 -> "EN 50342-1 (10 s at -18 degC to 7.5 V)";
            case IEC_60095_1 -> "the older IEC test (60 s at -18 degC to 8.4 V)";
            case CA_AT_0DEGREES -> "CA (30 s at 0 degC to 7.2 V)";
            case NOT_ENTERED -> "an unknown test";
        };
    }
}

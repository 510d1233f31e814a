// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__CRANKING_CURRENT;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCK_CRANKING_RATING;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__STRINGS_IN_PARALLEL;

import java.util.Locale;
import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.StartingBattery;
import garboard.physics.battery.ColdWeather;
import garboard.practice.Figures;
import garboard.quantity.Current;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

/**
 * What the cold does to a start, reckoned against 27 degC: the engine asks for more and the battery gives less. The CCA on the label holds
 * at -18 degC already, so it is first brought back to 27 degC and never reduced twice.
 */
final class ColdStart {

    static final Temperature FREEZING = Temperature.of(0, "degC");

    /** Where the published figures begin and end. */
    private static final Temperature WARMEST = Temperature.of(27, "degC");
    private static final Temperature COLDEST = Temperature.of(-29, "degC");

    /** At which SAE J537 measures the CCA. */
    private static final Temperature LABEL = Temperature.of(-18, "degC");

    private ColdStart() {
    }

    /** Everything but the condition that decides between frost and milder weather. */
    static Check.Builder<StartingBattery> check(String id) {
        return Check.check(id, StartingBattery.class)
            .why("In the cold the oil is stiff and the battery slow; a set that starts in the yard in summer does not start in winter.")
            .basis(Basis.commonPractice())
            .limit("warm battery output over cranking current at least 2.38 for starts at 0 degC (32 degF), 5.25 at -18 degC (0 "
                + "degF), 14.0 at -29 degC (-20 degF)")
            .applies(BatteryConditions.leadAcid())
            .applies(BatteryConditions.ratedBySaeJ537())
            .needs(STARTING_BATTERY__BLOCK_CRANKING_RATING, STARTING_BATTERY__STRINGS_IN_PARALLEL)
            .needs(GENERATOR_SET__CRANKING_CURRENT)
            .holds(ColdStart::compare)
            .remedy("Fit a larger battery, heat the engine block, or fill with an oil for the cold", ColdStart::remedy);
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        Temperature coldest = s.subject().getColdestStart();
        if (coldest.isLessThan(COLDEST)) {
            return Comparison.holds("starts at " + Figures.both(coldest) + " are wanted; the published figures end at -29 degC "
                + "(-20 degF)", false);
        }
        Ratio times = Ratio.of(warmOutput(s).si() / s.set().getCrankingCurrent().si());
        return Comparison.atLeast("warm, the battery gives " + inWords(times) + " times the cranking current; a start at "
            + Figures.both(coldest) + " asks for " + inWords(needed(s)) + " times", times,
            Limit.of(needed(s), "common practice: engine demand over battery output"));
    }

    /** The CCA brought back to 27 degC. */
    private static Current warmOutput(Situation<StartingBattery> s) {
        return Current.of(Bank.crankingRating(s.subject()).si() / ColdWeather.batteryOutput(LABEL).si());
    }

    private static Ratio needed(Situation<StartingBattery> s) {
        Temperature coldest = s.subject().getColdestStart();
        return ColdWeather.demandOverOutput(coldest.isMoreThan(WARMEST) ? WARMEST : coldest);
    }

    private static Optional<Remedy> remedy(Situation<StartingBattery> s) {
        if (s.subject().getColdestStart().isLessThan(COLDEST)) {
            return Optional.of(Remedy.of("Heat engine and battery before the start, and ask their makers for figures"));
        }
        double bankA = needed(s).si() * s.set().getCrankingCurrent().si() * ColdWeather.batteryOutput(LABEL).si();
        return Optional.of(CrankingRatingEnough.larger(s.subject(), Current.of(bankA)));
    }

    private static String inWords(Ratio times) {
        return String.format(Locale.ROOT, "%.2f", times.si());
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_BEND__COUNT;
import static garboard.model.GarboardPackage.Literals.EXHAUST_BEND__KIND;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__SECTIONS;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__SILENCER_LOSS;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__BENDS;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__GAS_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ASPIRATION;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__EXHAUST_GAS_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__EXHAUST_MASS_FLOW;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE;
import static garboard.model.GarboardPackage.Literals.MUFFLER__KIND;
import static garboard.model.GarboardPackage.Literals.MUFFLER__PRESSURE_LOSS;
import static garboard.model.GarboardPackage.Literals.RISER__LIFT_HEIGHT;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.FeaturePath;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSectionRun;
import garboard.model.MufflerKind;
import garboard.physics.exhaust.LiftColumn;
import garboard.physics.pipe.SeaWater;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;

/**
 * The back pressure as reckoned before it can be measured. Nobody can tell on paper how much water stands in the lift, so the result is a
 * bracket from none to a solid column: its middle with half its width as accuracy, borderline where the limit lies within.
 */
final class ExhaustBackPressureOnPaper {

    private ExhaustBackPressureOnPaper() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-BACK-PRESSURE-PAPER", ExhaustRun.class)
            .title("Reckoned back pressure is within the limit")
            .why("What fails on paper with an empty lift will fail on the gauge, when the hose is already cut.")
            .basis(Sources.GERR.othersSay(BackPressureLimit.OTHER_FIGURES + "; the reckoning is the trade's metric form from memory, twice that "
                + "for wet hose; published forms differ by up to 38 %"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit(BackPressureLimit.IN_WORDS + "; reckoned from an empty lift to a solid column of water")
            .applies(notMeasured())
            .uses(EXHAUST_RUN__MEASURED_BACK_PRESSURE, EXHAUST_RUN__SILENCER_LOSS, GENERATOR_SET__EXHAUST_MASS_FLOW,
                MAKER_LIMITS__MAXIMUM_BACK_PRESSURE)
            .uses(path(EXHAUST_RUN__SECTIONS, EXHAUST_SECTION_RUN__GAS_TEMPERATURE), path(EXHAUST_RUN__SECTIONS, EXHAUST_SECTION_RUN__BENDS))
            .needs(ExhaustOnPaper.inputs())
            .needs(path(RISER__LIFT_HEIGHT), path(MUFFLER__KIND))
            .needsWhen(s -> hasBends(s.subject()), bends().then(EXHAUST_BEND__KIND), bends().then(EXHAUST_BEND__COUNT))
            .needsWhen(s -> s.subject().getMuffler().getKind() != MufflerKind.NONE, path(MUFFLER__PRESSURE_LOSS))
            .needsWhen(s -> ExhaustOnPaper.needsGasTemperature(s.subject()), path(GENERATOR_SET__EXHAUST_GAS_TEMPERATURE))
            .needsWhen(s -> s.set() == null || s.set().getExhaustMassFlow() == null, ExhaustOnPaper.inputsOfGasFlow())
            .needsWhen(BackPressureLimit::makerIsSilent, path(GENERATOR_SET__ASPIRATION))
            .holds(ExhaustBackPressureOnPaper::compare)
            .remedyAtTheWorst("Larger bore, fewer bends, a lower lift, or a gas and water separator", ExhaustBackPressureOnPaper::lower)
            .build();
    }

    private static Condition<ExhaustRun> notMeasured() {
        return Condition.<ExhaustRun>when("until the back pressure is measured").known()
            .test(s -> s.subject().getMeasuredBackPressure() == null, "the back pressure has been measured, which says more");
    }

    /** The bends of those parts that have any. */
    private static FeaturePath bends() {
        return path(EXHAUST_RUN__SECTIONS).where(ExhaustSectionRun.class, run -> !run.getBends().isEmpty())
            .then(EXHAUST_SECTION_RUN__BENDS);
    }

    private static boolean hasBends(ExhaustRun exhaust) {
        return exhaust.getSections().stream().anyMatch(run -> !run.getBends().isEmpty());
    }

    private static Comparison compare(Situation<ExhaustRun> s) {
        double leastPa = withoutLift(s).si();
        double mostPa = leastPa + ExhaustOnPaper.solidColumn(s.subject()).si();
        double halfPa = (mostPa - leastPa) / 2;
        GaugePressure middle = GaugePressure.of(leastPa + halfPa);
        GaugePressure reckoned = halfPa > 0 ? middle.withAccuracy(GaugePressure.of(halfPa)) : middle;
        return Comparison.atMost("reckoned back pressure from " + Figures.both(GaugePressure.of(leastPa)) + " with an empty lift to "
            + Figures.both(GaugePressure.of(mostPa)) + " with a solid column; only a gauge can tell", reckoned, BackPressureLimit.of(s));
    }

    private static PressureDifference withoutLift(Situation<ExhaustRun> s) {
        return ExhaustOnPaper.withoutLift(s.subject(), s.set()).total();
    }

    private static Optional<Remedy> lower(Situation<ExhaustRun> s) {
        Limit<GaugePressure> limit = BackPressureLimit.of(s);
        double leftPa = limit.value().si() - withoutLift(s).si();
        if (leftPa <= 0) {
            return Optional.of(Remedy.of("Bore, bends and muffler alone pass the limit of " + Figures.both(limit.value())
                + ": fit larger hose and a muffler with less loss"));
        }
        Length lift = Rounding.down(LiftColumn.greatestLift(PressureDifference.of(leftPa), Ratio.of(1), SeaWater.CUSTOMARY_DENSITY), 5, "mm");
        return Optional.of(Remedy.of("Lower the lift to " + Figures.both(lift)
            + ", which passes even as a solid column, or measure at the first start")
            .setting(s.subject().getRiser(), RISER__LIFT_HEIGHT, lift));
    }
}

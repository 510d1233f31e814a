// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__SECTIONS;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__AIR_FUEL_RATIO;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SHAFT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION;

import garboard.checks.FeaturePath;
import garboard.model.ExhaustBend;
import garboard.model.ExhaustBendKind;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.model.GeneratorSet;
import garboard.model.MufflerKind;
import garboard.physics.exhaust.BackPressure;
import garboard.physics.exhaust.LiftColumn;
import garboard.physics.exhaust.TwoPhaseFlow;
import garboard.physics.fuel.Combustion;
import garboard.physics.pipe.EquivalentLength;
import garboard.physics.pipe.PressureBudget;
import garboard.physics.pipe.SeaWater;
import garboard.quantity.MassFlow;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

/** An exhaust and its gas as the record has them, made ready for reckoning the back pressure. */
final class ExhaustOnPaper {

    /** Gas behind the injection where no temperature is entered. Common practice. */
    private static final Temperature WET_GAS = Temperature.of(60, "degC");

    private ExhaustOnPaper() {
    }

    /** Parts that the gas runs through, as the start of a path. */
    static FeaturePath gasParts() {
        return path(EXHAUST_RUN__SECTIONS).where(ExhaustSectionRun.class, ExhaustOnPaper::carriesGas);
    }

    /** Bore and length of every part that the gas runs through, and what each part lies between. */
    static FeaturePath[] inputs() {
        return new FeaturePath[] { Sections.between(), gasParts().then(EXHAUST_SECTION_RUN__BORE), gasParts().then(EXHAUST_SECTION_RUN__LENGTH) };
    }

    /** What the gas flow is reckoned from where the maker does not give it. */
    static FeaturePath[] inputsOfGasFlow() {
        return new FeaturePath[] { path(GENERATOR_SET__SHAFT_POWER), path(GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION),
                path(GENERATOR_SET__AIR_FUEL_RATIO) };
    }

    /** Whether a dry part has no gas temperature of its own, so that the set's is needed. */
    static boolean needsGasTemperature(ExhaustRun exhaust) {
        return exhaust.getSections().stream().anyMatch(run -> run.getSection() == ExhaustSection.DRY && run.getGasTemperature() == null);
    }

    /** The maker's flow where it is entered, else fuel and air together. */
    static MassFlow gasFlow(GeneratorSet set) {
        return set.getExhaustMassFlow() != null ? set.getExhaustMassFlow()
            : new Combustion(set.getShaftPower(), set.getSpecificFuelConsumption(), set.getAirFuelRatio()).exhaustFlow();
    }

    /** All losses but the lift. */
    static PressureBudget withoutLift(ExhaustRun exhaust, GeneratorSet set) {
        MassFlow gas = gasFlow(set);
        PressureBudget budget = PressureBudget.empty();
        for (ExhaustSectionRun run : exhaust.getSections()) {
            if (carriesGas(run)) {
                PressureDifference alone = BackPressure.loss(physical(run, set), gas);
                budget = budget.plus(Sections.inWords(run),
                    run.getSection() == ExhaustSection.DRY ? alone : TwoPhaseFlow.wetLoss(alone, TwoPhaseFlow.USUAL_MULTIPLIER));
            }
        }
        if (exhaust.getMuffler().getKind() != MufflerKind.NONE) {
            budget = budget.plus("the muffler", exhaust.getMuffler().getPressureLoss());
        }
        return exhaust.getSilencerLoss() == null ? budget : budget.plus("the silencer", exhaust.getSilencerLoss());
    }

    /** The lift as a solid column of sea water: what it costs at worst. */
    static PressureDifference solidColumn(ExhaustRun exhaust) {
        return LiftColumn.pressure(exhaust.getRiser().getLiftHeight(), Ratio.of(1), SeaWater.CUSTOMARY_DENSITY);
    }

    private static boolean carriesGas(ExhaustSectionRun run) {
        return run.getSection() == ExhaustSection.DRY || Sections.WET.contains(run.getSection());
    }

    private static garboard.physics.exhaust.ExhaustSection physical(ExhaustSectionRun run, GeneratorSet set) {
        var section = garboard.physics.exhaust.ExhaustSection.of(run.getBore(), gasTemperature(run, set)).withStraight(run.getLength());
        for (ExhaustBend bend : run.getBends()) {
            section = section.plusBends(Ratio.of(bend.getCount() * bores(bend.getKind())));
        }
        return section;
    }

    private static Temperature gasTemperature(ExhaustSectionRun run, GeneratorSet set) {
        if (run.getGasTemperature() != null) {
            return run.getGasTemperature();
        }
        return run.getSection() == ExhaustSection.DRY ? set.getExhaustGasTemperature() : WET_GAS;
    }

    private static double bores(ExhaustBendKind kind) {
        return switch (kind) {
            case LONG_90 -> EquivalentLength.EXHAUST_LONG_90.inBores().si();
            case STANDARD_45 -> EquivalentLength.EXHAUST_STANDARD_45.inBores().si();
            case SQUARE_90 -> EquivalentLength.EXHAUST_SQUARE_90.inBores().si();
            // No figure is published for a U-bend: two standard bends are its upper bound.
            case UBEND_180 -> 2 * EquivalentLength.EXHAUST_STANDARD_90.inBores().si();
            case STANDARD_90, NOT_ENTERED -> EquivalentLength.EXHAUST_STANDARD_90.inBores().si();
        };
    }
}

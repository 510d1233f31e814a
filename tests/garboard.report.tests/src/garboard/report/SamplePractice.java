// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Catalogue;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Evaluation;
import garboard.checks.Evaluator;
import garboard.checks.FeaturePath;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Practice;
import garboard.checks.Remedy;
import garboard.model.AlarmsAndSafety;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustRun;
import garboard.model.FuelKind;
import garboard.model.GarboardPackage.Literals;
import garboard.model.GeneratorSet;
import garboard.model.MakerLimits;
import garboard.model.Seacock;
import garboard.model.SiphonBreak;
import garboard.model.StartingBattery;
import garboard.model.ValveKind;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** A few checks, at least one for each standing. Their figures are no practice: they only bring the standings about. */
final class SamplePractice implements Practice {

    static Evaluation evaluate(CommissioningRecord record) {
        return new Evaluator(Catalogue.of(new SamplePractice())).evaluate(record, LocalDate.of(2031, 5, 4));
    }

    @Override
    public String id() {
        return "sample";
    }

    @Override
    public String name() {
        return "Sample";
    }

    @Override
    public String appliesTo() {
        return "Tests.";
    }

    @Override
    public List<Check<?>> checks() {
        return List.of(seatHeight(), backPressure(), seacock(), rested(), coolant(), monoxide(), vapour(), broken());
    }

    private static Check<SiphonBreak> seatHeight() {
        return Check.check("SEAT-HEIGHT", SiphonBreak.class).title("Vent seat stands high above the waterline")
            .why("A seat under water breaks no siphon: the sea fills the set.").basis(Basis.handbook("A handbook, ch. 7", Basis.Status.RETRIEVED))
            .gravity(Gravity.DANGER_TO_PEOPLE).limit("at least 500 mm").needs(FeaturePath.path(Literals.SIPHON_BREAK__VENT_SEAT, Literals.POINT__Z))
            .holds(s -> Comparison.atLeast("The vent seat stands 420 mm above the loaded waterline", s.subject().getVentSeat().getZ(),
                Limit.of(Length.of(500, "mm"), "a handbook")))
            .remedy("raise it", s -> Optional.of(Remedy.of("Raise the vent seat by 80 mm."))).build();
    }

    private static Check<ExhaustRun> backPressure() {
        return Check.check("BACK-PRESSURE", ExhaustRun.class).title("Back pressure within the limit").why("It chokes the engine.")
            .basis(Basis.commonPractice()).gravity(Gravity.DANGER_TO_MACHINE).limit("the maker's").needs(Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE)
            .uses(FeaturePath.path(Literals.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE))
            .holds(s -> Comparison.atMost("The back pressure is 38.2 inH2O", s.subject().getMeasuredBackPressure(),
                Limit.makerOr(s.maker(MakerLimits::getMaximumBackPressure), GaugePressure.of(10, "kPa"), "common practice")))
            .remedy("a larger bore").build();
    }

    private static Check<Seacock> seacock() {
        return Check.check("SEACOCK-KIND", Seacock.class).title("Seacock is a flanged seacock").why("A household valve dezincifies and breaks.")
            .basis(Basis.commonPractice()).gravity(Gravity.DANGER_TO_PEOPLE).limit("flanged seacock").needs(Literals.SEACOCK__KIND)
            .holds(s -> Comparison.holds("The seacock is a household ball valve", s.subject().getKind() == ValveKind.FLANGED_SEACOCK))
            .remedy("Fit a flanged seacock.").build();
    }

    private static Check<StartingBattery> rested() {
        return Check.check("RESTED-VOLTAGE", StartingBattery.class).title("Battery is charged").why("It will not crank.")
            .basis(Basis.commonPractice()).gravity(Gravity.DEFECT).limit("12.7 V").needs(Literals.STARTING_BATTERY__RESTED_VOLTAGE)
            .holds(s -> Comparison.atLeast("The battery rests at 12.74 V", s.subject().getRestedVoltage(),
                Limit.of(Voltage.of(12.7, "V"), "common practice")))
            .remedy("Charge it.").build();
    }

    private static Check<GeneratorSet> coolant() {
        return Check.check("COOLANT-LIMIT", GeneratorSet.class).title("Coolant limit is a likely one").why("A slip of the pen.")
            .basis(Basis.commonPractice()).gravity(Gravity.ADVICE).limit("110 °C")
            .needs(FeaturePath.path(Literals.GENERATOR_SET__MAKER_LIMITS, Literals.MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE))
            .holds(s -> Comparison.atMost("The limit entered is 205 °F", s.subject().getMakerLimits().getMaximumCoolantTemperature(),
                Limit.of(Temperature.of(110, "degC"), "common practice")))
            .remedy("Look it up again.").build();
    }

    private static Check<AlarmsAndSafety> monoxide() {
        return Check.check("MONOXIDE-ALARM", AlarmsAndSafety.class).title("Carbon monoxide alarms in every space").why("It kills asleep.")
            .basis(Basis.standard("A standard, 6.1", Basis.Status.QUOTED)).gravity(Gravity.DANGER_TO_PEOPLE).limit("every space")
            .needs(Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE).holds(s -> Comparison.holds("There are alarms", true))
            .remedy("Fit alarms.").build();
    }

    private static Check<GeneratorSet> vapour() {
        return Check.check("VAPOUR-DETECTOR", GeneratorSet.class).title("Vapour detector low in the compartment").why("Vapour explodes.")
            .basis(Basis.regulation("A code, 1.2", Basis.Status.FROM_MEMORY)).gravity(Gravity.DANGER_TO_PEOPLE).limit("fitted")
            .applies(Condition.<GeneratorSet>when("petrol sets").known(FeaturePath.path(Literals.GENERATOR_SET__FUEL))
                .test(s -> s.subject().getFuel() == FuelKind.GASOLINE, "The set burns diesel"))
            .needs(Literals.GENERATOR_SET__FUEL).holds(s -> Comparison.holds("fitted", true)).remedy("Fit one.").build();
    }

    private static Check<GeneratorSet> broken() {
        return Check.check("BROKEN-CHECK", GeneratorSet.class).title("Nothing").why("Nothing.").basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE).limit("none").needs(Literals.GENERATOR_SET__FUEL).holds(s -> {
                throw new IllegalStateException("a fault of ours");
            }).remedy("None.").build();
    }
}

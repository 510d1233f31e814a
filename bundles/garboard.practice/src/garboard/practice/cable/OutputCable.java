// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__OUTPUT_CABLE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTORS_IN_BUNDLE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__INSULATION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__IN_ENGINE_SPACE;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.checks.FeaturePath;
import garboard.checks.Remedy;
import garboard.model.CableRun;
import garboard.physics.cable.ConductorResistance;
import garboard.physics.cable.ConductorSize;
import garboard.physics.cable.VoltageDrop;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.ResistancePerLength;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** The cable between the set and its switchboard, for the checks of the AC output: what it may carry, and what it loses. */
public final class OutputCable {

    /** What the copper reaches in service. Common practice. */
    private static final Temperature COPPER = Temperature.of(60, "degC");

    private OutputCable() {
    }

    /** The conductor size of the output cable can be read; one check of cables tells where it cannot. */
    public static Condition<EObject> readableSize() {
        return Condition.when("where the size of the output cable can be read").known(path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__CONDUCTOR_SIZE))
            .test(s -> CableRuns.hasReadableSize(s.record().getAcOutput().getOutputCable()),
                "the size of the output cable cannot be read; write it as 6 AWG or 16 mm2");
    }

    /** What has to be entered for {@link #permitted}. */
    public static FeaturePath[] decidingPermitted() {
        return new FeaturePath[] { path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__INSULATION), path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__IN_ENGINE_SPACE),
                path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__CONDUCTORS_IN_BUNDLE) };
    }

    /** Permitted current by 33 CFR 183.425 Table 5 and its notes; nothing where the conductor is thinner than 18 AWG. */
    public static Optional<Current> permitted(CableRun cable) {
        return Table5.from50V(cable, CableRuns.size(cable));
    }

    /** A remedy that takes the next larger conductor that may carry a current; nothing where none may. */
    public static Optional<Remedy> carrying(CableRun cable, Current least) {
        return CableRuns.nextThatWillDo(cable, size -> Table5.from50V(cable, size).filter(allowed -> !allowed.isLessThan(least)).isPresent())
            .map(size -> CableRuns.replace(cable, size));
    }

    /** Size and insulation, such as {@code 6 AWG with insulation for 105 degC}. */
    public static String inWords(CableRun cable) {
        return Table5.inWords(cable);
    }

    /** Voltage lost out and back in a conductor of a size. */
    public static Voltage dropOutAndBack(CableRun cable, ConductorSize size, Current current) {
        return VoltageDrop.roundTrip(current, hot(cable, size), Length.of(2 * cable.getLength().si()));
    }

    /** Voltage lost between the lines of a balanced three-phase load in conductors of a size. */
    public static Voltage dropOfThreePhases(CableRun cable, ConductorSize size, Current line) {
        return VoltageDrop.threePhase(line, hot(cable, size), cable.getLength());
    }

    private static ResistancePerLength hot(CableRun cable, ConductorSize size) {
        return ConductorResistance.atTemperature(CableRuns.resistanceAt20(size, cable),
            cable.getConductorTemperature() == null ? COPPER : cable.getConductorTemperature());
    }
}

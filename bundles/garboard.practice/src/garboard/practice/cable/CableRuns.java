// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SYSTEM_VOLTAGE;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

import garboard.checks.FeaturePath;
import garboard.checks.Remedy;
import garboard.model.AcOutput;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.physics.OutOfRangeException;
import garboard.physics.cable.ConductorResistance;
import garboard.physics.cable.ConductorSeries;
import garboard.physics.cable.ConductorSize;
import garboard.quantity.Current;
import garboard.quantity.ResistancePerLength;
import garboard.quantity.Voltage;

/** Cable runs of a record as cable physics sees them, and what they are for; what the checks of the AC output ask too is public. */
public final class CableRuns {

    /** 33 CFR 183 draws its line here: circuits of less than 50 V, circuits of 50 V or more. */
    private static final Voltage LINE = Voltage.of(50, "V");

    private static final Set<CableFunction> CRANKING = EnumSet.of(CableFunction.CRANKING_POSITIVE, CableFunction.CRANKING_NEGATIVE,
        CableFunction.PARALLEL_LINK);

    private static final Set<CableFunction> GROUNDING = EnumSet.of(CableFunction.COMMON_NEGATIVE_LINK, CableFunction.BONDING);

    private static final Set<CableFunction> ALTERNATING = EnumSet.of(CableFunction.AC_OUTPUT, CableFunction.AC_BRANCH);

    private static final Set<CableFunction> SET_CANNOT_DO_WITHOUT = EnumSet.of(CableFunction.CONTROL, CableFunction.FUEL_PUMP);

    private CableRuns() {
    }

    /** The one cable between the set and its switchboard, whatever function is entered for it. */
    static boolean isOutputCable(CableRun run) {
        return run.eContainer() instanceof AcOutput;
    }

    /** Carries the starter's current, which the rules of permitted current leave out. */
    static boolean isCranking(CableRun run) {
        return CRANKING.contains(run.getFunction());
    }

    /** Carries current in a fault only, or between grounds. */
    static boolean isGrounding(CableRun run) {
        return GROUNDING.contains(run.getFunction());
    }

    /** The set stops or does not start when this circuit has too little voltage. */
    static boolean isNeededByTheSet(CableRun run) {
        return SET_CANNOT_DO_WITHOUT.contains(run.getFunction());
    }

    /** Whether the circuit has 50 V or more. As long as its voltage is not entered, alternating current has and direct current has not. */
    static boolean from50V(CableRun run) {
        if (run.getSystemVoltage() != null) {
            return !run.getSystemVoltage().isLessThan(LINE);
        }
        return isOutputCable(run) || ALTERNATING.contains(run.getFunction());
    }

    static boolean below50V(CableRun run) {
        return !from50V(run);
    }

    /** A circuit of 50 V or more that carries current all the time. */
    static boolean worksFrom50V(CableRun run) {
        return from50V(run) && !isGrounding(run);
    }

    /** What {@link #from50V} and {@link #below50V} read. */
    static FeaturePath[] decidingVoltage() {
        return new FeaturePath[] { path(CABLE_RUN__SYSTEM_VOLTAGE), path(CABLE_RUN__FUNCTION) };
    }

    /** Whether the conductor size can be read at all. */
    static boolean hasReadableSize(CableRun run) {
        return size(run.getConductorSize()).isPresent();
    }

    /** The conductor size, which has to be readable. */
    public static ConductorSize size(CableRun run) {
        return ConductorSize.valueOf(run.getConductorSize());
    }

    /** A conductor size as people write it, or nothing where it cannot be read. */
    public static Optional<ConductorSize> size(String text) {
        try {
            return text == null ? Optional.empty() : Optional.of(ConductorSize.valueOf(text));
        } catch (OutOfRangeException unreadable) {
            return Optional.empty();
        }
    }

    /** Whether IEC 60228 has a say in the resistance, so that the make of the conductor has to be known. */
    public static boolean isMetric(CableRun run) {
        return size(run.getConductorSize()).filter(size -> size.series() == ConductorSize.Series.SQUARE_MILLIMETRE).isPresent();
    }

    /** Resistance of the copper by length at 20 degC; the make counts for metric sizes only. */
    static ResistancePerLength resistanceAt20(ConductorSize size, CableRun run) {
        return ConductorResistance.at20(size, make(run));
    }

    /** The make of a metric conductor. */
    static garboard.physics.cable.StrandClass make(CableRun run) {
        return switch (run.getStrandClass()) {
            case CLASS_2PLAIN -> garboard.physics.cable.StrandClass.CLASS_2_PLAIN;
            case CLASS_2TINNED -> garboard.physics.cable.StrandClass.CLASS_2_COATED;
            case CLASS_5PLAIN -> garboard.physics.cable.StrandClass.CLASS_5_PLAIN;
            // the flexible tinned conductor has the highest resistance, so it stands in where nothing is entered
            case CLASS_5TINNED, NOT_ENTERED -> garboard.physics.cable.StrandClass.CLASS_5_COATED;
        };
    }

    /** The sizes that are sold beside this one: American gauges for a gauge, else those of IEC 60228. */
    public static List<ConductorSize> series(ConductorSize size) {
        return size.series() == ConductorSize.Series.AWG ? ConductorSeries.AWG : ConductorSeries.IEC;
    }

    /** The thinnest conductor of the same series that is larger than the one fitted and will do. */
    public static Optional<ConductorSize> nextThatWillDo(CableRun run, Predicate<ConductorSize> willDo) {
        ConductorSize now = size(run);
        return series(now).stream().filter(size -> size.area().isMoreThan(now.area())).filter(willDo).findFirst();
    }

    /** Whether the current of a run, at the worst of its accuracy, is no more than what a conductor may carry. */
    static boolean carriesAtMost(CableRun run, Current allowed) {
        return run.getCurrent().si() + run.getCurrent().accuracySi().orElse(0) <= allowed.si() * (1 + 1e-12);
    }

    /** A remedy that takes a larger conductor. */
    public static Remedy replace(CableRun run, ConductorSize larger) {
        return Remedy.of("Replace the conductor by one of " + larger).setting(run, CABLE_RUN__CONDUCTOR_SIZE, larger.toString());
    }
}

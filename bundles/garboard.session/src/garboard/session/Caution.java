// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.Optional;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.GeneratorSet;
import garboard.model.Vessel;

/** What can hurt people at the work. The words for it are the window's. */
public enum Caution {
    CARBON_MONOXIDE, GASOLINE_VAPOUR, FUEL_FIRE, BATTERY, MAINS_VOLTAGE, MOVING_AND_HOT_PARTS, FLOODING;

    /** {@return the gravest one for the work at a stop; nothing where the work is on paper only} */
    public static Optional<Caution> at(Stop stop, CommissioningRecord record) {
        return switch (stop) {
            case STARTING_BATTERY -> Optional.of(BATTERY);
            case FUEL -> Optional.of(gasoline(record) ? GASOLINE_VAPOUR : FUEL_FIRE);
            case RAW_WATER, SEA_RUN -> Optional.of(FLOODING);
            case EXHAUST, ALARMS -> Optional.of(CARBON_MONOXIDE);
            case VENTILATION, FIRST_START -> Optional.of(gasoline(record) ? GASOLINE_VAPOUR : CARBON_MONOXIDE);
            case GENERATOR_SET, MOUNTING, INSPECTION, UPKEEP -> Optional.of(MOVING_AND_HOT_PARTS);
            case AC_OUTPUT, LOAD_TRIAL -> Optional.of(MAINS_VOLTAGE);
            case VESSEL -> Optional.of(FLOODING);
            case RECORD, PHOTOGRAPHS, SIGN_OFF, CALCULATORS -> Optional.empty();
        };
    }

    /** Until the fuel is entered it may be gasoline, and so may that of another engine in the same compartment. */
    private static boolean gasoline(CommissioningRecord record) {
        GeneratorSet set = record.getGeneratorSet();
        Vessel vessel = record.getVessel();
        return set == null || set.getFuel() != FuelKind.DIESEL || vessel != null && vessel.getGasolineEngineAboard() == Answer.YES;
    }
}

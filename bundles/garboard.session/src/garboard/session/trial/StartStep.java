// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;

import garboard.model.CommissioningRecord;

/**
 * The steps of a first start as this program guides through them, in the right order. A record keeps each as a step of its procedure under the
 * id given here, which never changes: whatever language the step was written down in, it is known again. The wording is in the window's texts.
 * The order and the figures in it are common practice; that a blower runs four minutes before a petrol engine is started is what the label of
 * 33 CFR 183.610 says.
 */
public enum StartStep {

    /** What must hold first was looked through. */
    CONDITIONS(Part.BEFORE, "start-conditions", Hazard.NONE, "", Installed::any),
    PEOPLE(Part.BEFORE, "start-people", Hazard.CARBON_MONOXIDE, "", Installed::any),
    FLUIDS(Part.BEFORE, "start-fluids", Hazard.RUNNING_PARTS, "trial.coolantLevelCold", Installed::any),
    LEAKS_COLD(Part.BEFORE, "start-leaks-cold", Hazard.SINKING, "trial.leaksCold", Installed::any),
    BATTERY(Part.BEFORE, "start-battery", Hazard.BATTERY, "startingBattery.restedVoltage", Installed::any),
    OUTPUT_OPEN(Part.BEFORE, "start-output-open", Hazard.MAINS, "", Installed::any),
    BLOWER(Part.BEFORE, "start-blower", Hazard.PETROL_VAPOUR, "", Installed::petrol),

    RAW_WATER(Part.WATER_AND_FUEL, "start-raw-water", Hazard.NONE, "", Installed::rawWater),
    SIPHON_BREAK(Part.WATER_AND_FUEL, "start-siphon-break", Hazard.NONE, "rawWater.siphonBreak.valveTested", Installed::siphonBreak),
    FUEL_FILLED(Part.WATER_AND_FUEL, "start-fuel-filled", Hazard.NONE, "", Installed::any),
    BLEED(Part.WATER_AND_FUEL, "start-bleed", Hazard.FUEL_SPRAY, "", Installed::bleeding),
    PRIME_BY_KEY(Part.WATER_AND_FUEL, "start-prime-key", Hazard.FIRE, "trial.priming.keyCycles", Installed::keyPriming),
    PRIME_CARBURETTOR(Part.WATER_AND_FUEL, "start-prime-carburettor", Hazard.PETROL_VAPOUR, "", Installed::carburettor),
    FUEL_LEAKS(Part.WATER_AND_FUEL, "start-fuel-leaks", Hazard.FIRE, "trial.priming.leaks", Installed::any),

    CRANK(Part.CRANKING, "start-crank", Hazard.WATER_IN_ENGINE, "trial.attempts", Installed::any),
    OIL_PRESSURE(Part.CRANKING, "start-oil-pressure", Hazard.NONE, "trial.oilPressureAfter", Installed::any),
    WATER_OUT(Part.CRANKING, "start-water-out", Hazard.NONE, "trial.waterAtOutletAfter", Installed::rawWater),

    NO_LOAD(Part.RUNNING, "start-no-load", Hazard.RUNNING_PARTS, "trial.leaksHot", Installed::any),
    EXHAUST_TIGHT(Part.RUNNING, "start-exhaust-tight", Hazard.CARBON_MONOXIDE, "exhaust.gasTight", Installed::any),
    VOLTAGE(Part.RUNNING, "start-voltage", Hazard.MAINS, "acOutput.noLoadVoltage", Installed::any),
    ROTATION(Part.RUNNING, "start-rotation", Hazard.MAINS, "", Installed::threePhases),
    TRANSFER(Part.RUNNING, "start-transfer", Hazard.MAINS, "acOutput.transfer.tested", Installed::transfer),
    LOAD_STEPS(Part.RUNNING, "start-load-steps", Hazard.NONE, "trial.loadSteps", Installed::any),
    CARBON_MONOXIDE(Part.RUNNING, "start-carbon-monoxide", Hazard.CARBON_MONOXIDE, "trial.carbonMonoxideCabin", Installed::any),
    SHUTDOWNS(Part.RUNNING, "start-shutdowns", Hazard.RUNNING_PARTS, "trial.shutdownTests", Installed::any),

    COOL_DOWN(Part.AFTER, "start-cool-down", Hazard.NONE, "", Installed::any),
    MUFFLER_LEVEL(Part.AFTER, "start-muffler-level", Hazard.NONE, "trial.mufflerLevelChecked", Installed::muffler),
    HOT_LOOK(Part.AFTER, "start-hot-look", Hazard.RUNNING_PARTS, "trial.coolantLevelHot", Installed::any),
    SEACOCK_TAG(Part.AFTER, "start-seacock-tag", Hazard.SINKING, "", Installed::seacock),
    COLD_AGAIN(Part.AFTER, "start-cold-again", Hazard.NONE, "trial.coolantLevelColdAgain", Installed::any);

    /** What the steps are grouped by. */
    public enum Part {
        BEFORE, WATER_AND_FUEL, CRANKING, RUNNING, AFTER
    }

    /** What can hurt somebody or ruin the set in a step. */
    public enum Hazard {
        NONE, CARBON_MONOXIDE, PETROL_VAPOUR, MAINS, RUNNING_PARTS, SINKING, BATTERY, FUEL_SPRAY, FIRE, WATER_IN_ENGINE
    }

    private final Part part;
    private final String id;
    private final Hazard hazard;
    private final String place;
    private final Function<CommissioningRecord, Concern> concern;

    StartStep(Part part, String id, Hazard hazard, String place, Function<CommissioningRecord, Concern> concern) {
        this.part = part;
        this.id = id;
        this.hazard = hazard;
        this.place = place;
        this.concern = concern;
    }

    /** {@return the step of this program that goes by an id} */
    public static Optional<StartStep> of(String id) {
        return Arrays.stream(values()).filter(step -> step.id.equals(id)).findFirst();
    }

    public Part part() {
        return part;
    }

    /** {@return the id under which a record keeps it, and the key of its texts} */
    public String id() {
        return id;
    }

    /** {@return what the person must be warned of in it} */
    public Optional<Hazard> hazard() {
        return Optional.of(hazard).filter(found -> found != Hazard.NONE);
    }

    /** {@return the key of the field or list where what is found in it is entered} */
    public Optional<String> place() {
        return Optional.of(place).filter(key -> !key.isEmpty());
    }

    /** {@return whether it concerns the installation of a record} */
    public Concern concern(CommissioningRecord record) {
        return concern.apply(record);
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import java.util.List;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Mass;
import garboard.quantity.Power;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;
import garboard.quantity.VolumeFlow;

/** The calculations of charging, airing and holding down a battery. */
final class ChargingCalculations {

    private static final Parameter<Integer> CELLS = Parameter.wholeNumber("cells", "cells in series").orElse("6");

    private ChargingCalculations() {
    }

    static List<Calculation> all() {
        return List.of(chargingVoltage(), chargerClass(), hydrogen(), hydrogenShipRule(), restraint());
    }

    private static Calculation chargingVoltage() {
        Parameter<ChargeStage> stage = Parameter.choice("stage", ChargeStage.class, "stage of the charge").orElse("absorption");
        Parameter<Temperature> battery = Parameter.of("temperature", Temperature.class, "temperature of the battery");
        return Calculation.named("charging-voltage", "Charging voltage at a temperature")
                .explained("What a regulator with temperature compensation should hold.").takes(battery, stage, CELLS)
                .by("n (Vcell - 0.003 V/K (t - 25 degC)); 2.40 V absorption, 2.23 V float vented, 2.27 V float valve-regulated")
                .validFor("-20 to 50 degC; refused outside").from(BatterySources.CHARGING_VOLTAGE)
                .answers(in -> Answer.of("charging voltage", ChargingVoltage.at(in.get(stage), in.get(CELLS), in.get(battery)), "V"));
    }

    private static Calculation chargerClass() {
        Parameter<Current> current = Parameter.of("highest-current", Current.class, "highest charging current");
        Parameter<Voltage> voltage = Parameter.of("battery-voltage", Voltage.class, "rated voltage of the battery");
        return Calculation.named("charger-class", "Size class of a battery installation")
                .explained("Small, moderate or large by the charger's power, which decides on the battery's room.").takes(current, voltage)
                .by("highest current x rated battery voltage; large above 2 kW, small below 0.2 kW (subchapter J)").validFor("any charger")
                .from(BatterySources.CHARGER_CLASS_SUBCHAPTER_T).answers(in -> {
                    Power power = ChargerClass.power(in.get(current), in.get(voltage));
                    return Answer.of("power", power, "kW").and("class by 46 CFR 183.352", word(ChargerClass.subchapterT(power)))
                            .and("class by 46 CFR 111.15-3", word(ChargerClass.subchapterJ(power)));
                });
    }

    private static String word(ChargerClass size) {
        return switch (size) {
            case SMALL -> "small";
            case MODERATE -> "moderate";
            case LARGE -> "large";
        };
    }

    private static Calculation hydrogen() {
        Parameter<GassingRate> gassing = Parameter.choice("gassing", GassingRate.class, "kind of cell and stage of charge").orElse("vented-boost");
        Parameter<Charge> capacity = Parameter.of("capacity", Charge.class, "rated capacity");
        return Calculation.named("hydrogen-ventilation", "Air for a charging battery")
                .explained("The air that thins the hydrogen, and the two openings that let it pass by itself.").takes(capacity, CELLS, gassing)
                .by("Q = 0.05 n Igas C / 1000 in m3/h; each opening 28 cm2 per m3/h").validFor("lead-acid; written for stationary rooms")
                .from(BatterySources.HYDROGEN_EN_50272).answers(in -> {
                    VolumeFlow flow = HydrogenVentilation.en50272(in.get(gassing), in.get(CELLS), in.get(capacity));
                    return Answer.of("air flow", flow, "m3/h", "cfm").and("each opening", HydrogenVentilation.naturalOpening(flow), "cm2", "in2");
                });
    }

    private static Calculation hydrogenShipRule() {
        Parameter<Current> gassing = Parameter.of("gassing-current", Current.class, "charging current in the gassing stage");
        Parameter<Current> maximum = Parameter.of("maximum-current", Current.class, "the most that the charger gives");
        return Calculation.named("hydrogen-ventilation-ship-rule", "Air for a large battery by the ship rule")
                .explained("The air for a large battery installation by 46 CFR 111.15-10.").takes(gassing, maximum, CELLS)
                .by("q = 0.11 I n in m3/h, I the larger of the gassing current and a quarter of the maximum")
                .validFor("lead-acid; installations above 2 kW")
                .from(BatterySources.HYDROGEN_SUBCHAPTER_J).answers(in -> {
                    var charger = new HydrogenVentilation.ChargerCurrents(in.get(gassing), in.get(maximum));
                    Current counted = HydrogenVentilation.chargingCurrentSubchapterJ(charger);
                    return Answer.of("air flow", HydrogenVentilation.subchapterJ(counted, in.get(CELLS)), "m3/h", "cfm")
                            .and("current counted", counted, "A");
                });
    }

    private static Calculation restraint() {
        Parameter<Mass> mass = Parameter.of("mass", Mass.class, "mass of the battery with its electrolyte");
        return Calculation.named("battery-restraint", "Pull that a battery has to withstand")
                .explained("The test force, in each direction for one minute, and how far the battery may move.").takes(mass)
                .by("33 CFR: the lesser of 90 lbf and 2 m g; ISO: 2 m g").validFor("masses above 0").from(BatterySources.RESTRAINT_33_CFR)
                .answers(in -> Answer.of("pull by 33 CFR 183.420", BatteryRestraint.pull33Cfr183(in.get(mass)), "N", "lbf")
                        .and("it may move by 33 CFR 183.420", "25 mm (1 in)")
                        .and("pull by ISO 10133", BatteryRestraint.pullIso(in.get(mass)), "N", "lbf")
                        .and("it may move by ISO 10133", "10 mm"));
    }
}

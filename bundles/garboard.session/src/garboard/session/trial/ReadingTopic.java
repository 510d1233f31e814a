// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static garboard.model.GarboardPackage.Literals.READING__BACK_PRESSURE;
import static garboard.model.GarboardPackage.Literals.READING__BATTERY_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.READING__CARBON_MONOXIDE;
import static garboard.model.GarboardPackage.Literals.READING__CHARGE_CURRENT;
import static garboard.model.GarboardPackage.Literals.READING__COMPARTMENT_DEPRESSION;
import static garboard.model.GarboardPackage.Literals.READING__COMPARTMENT_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.READING__COOLANT_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.READING__CURRENT1;
import static garboard.model.GarboardPackage.Literals.READING__CURRENT2;
import static garboard.model.GarboardPackage.Literals.READING__CURRENT3;
import static garboard.model.GarboardPackage.Literals.READING__EXHAUST_DRY;
import static garboard.model.GarboardPackage.Literals.READING__EXHAUST_MIXED;
import static garboard.model.GarboardPackage.Literals.READING__FREQUENCY;
import static garboard.model.GarboardPackage.Literals.READING__FUEL_VACUUM;
import static garboard.model.GarboardPackage.Literals.READING__OIL_PRESSURE;
import static garboard.model.GarboardPackage.Literals.READING__OUTSIDE_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.READING__POWER;
import static garboard.model.GarboardPackage.Literals.READING__POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.READING__RAW_WATER_FLOW;
import static garboard.model.GarboardPackage.Literals.READING__RAW_WATER_IN;
import static garboard.model.GarboardPackage.Literals.READING__RAW_WATER_OUT;
import static garboard.model.GarboardPackage.Literals.READING__RAW_WATER_VACUUM;
import static garboard.model.GarboardPackage.Literals.READING__VOLTAGE1;
import static garboard.model.GarboardPackage.Literals.READING__VOLTAGE2;
import static garboard.model.GarboardPackage.Literals.READING__VOLTAGE3;

import java.util.Arrays;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;

import garboard.model.CommissioningRecord;

/** What readings are plotted together: quantities of one kind and one size, so that one axis serves them. */
public enum ReadingTopic {
    FREQUENCY(READING__FREQUENCY), VOLTAGE(READING__VOLTAGE1, READING__VOLTAGE2, READING__VOLTAGE3),
    CURRENT(READING__CURRENT1, READING__CURRENT2, READING__CURRENT3), POWER(READING__POWER), POWER_FACTOR(READING__POWER_FACTOR),
    OIL_PRESSURE(READING__OIL_PRESSURE), COOLANT(READING__COOLANT_TEMPERATURE),
    RAW_WATER(READING__RAW_WATER_IN, READING__RAW_WATER_OUT, READING__EXHAUST_MIXED), EXHAUST(READING__EXHAUST_DRY),
    BACK_PRESSURE(READING__BACK_PRESSURE), COMPARTMENT(READING__COMPARTMENT_TEMPERATURE, READING__OUTSIDE_TEMPERATURE),
    DEPRESSION(READING__COMPARTMENT_DEPRESSION), FUEL_VACUUM(READING__FUEL_VACUUM), RAW_WATER_VACUUM(READING__RAW_WATER_VACUUM),
    RAW_WATER_FLOW(READING__RAW_WATER_FLOW), BATTERY(READING__BATTERY_VOLTAGE), CHARGE(READING__CHARGE_CURRENT),
    CARBON_MONOXIDE(READING__CARBON_MONOXIDE);

    private final List<EAttribute> fields;

    ReadingTopic(EAttribute... fields) {
        this.fields = List.of(fields);
    }

    public List<EAttribute> fields() {
        return fields;
    }

    /** {@return those of which anything was read} */
    public static List<ReadingTopic> read(CommissioningRecord record) {
        return Arrays.stream(values()).filter(topic -> LoadLadder.steps(record).stream().flatMap(step -> step.getReadings().stream())
            .anyMatch(reading -> topic.fields.stream().anyMatch(reading::eIsSet))).toList();
    }
}

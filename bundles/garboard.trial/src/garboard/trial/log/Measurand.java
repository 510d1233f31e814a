// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import java.util.Locale;
import java.util.Optional;

import garboard.quantity.AbsolutePressure;
import garboard.quantity.Angle;
import garboard.quantity.ApparentPower;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Energy;
import garboard.quantity.Force;
import garboard.quantity.Frequency;
import garboard.quantity.GaugePressure;
import garboard.quantity.Kind;
import garboard.quantity.Length;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;
import garboard.quantity.ReactivePower;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.Speed;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/**
 * What an instrument measures. Each has the kind of quantity of its values, and the bounds outside of which a value cannot be true
 * whatever the boat: a sensor's placeholder or a converter's fault. The bounds are our own, wide on purpose; nothing is judged by them.
 *
 * <p>Pressures are taken as gauge pressures but for the barometer: no message says which it is, and senders on engines measure against
 * the room they are in. States and alarm bits have no kind; their values are the codes of their format.
 */
public enum Measurand {
    ENGINE_SPEED(RotationalSpeed.class, 0, 2100),
    BOOST_PRESSURE(GaugePressure.class, -1.1e5, 1e6),
    OIL_PRESSURE(GaugePressure.class, -1.1e5, 4e6),
    OIL_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 700),
    COOLANT_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 700),
    /** A converter that is in use writes this and the fuel pressure 1000 times too high; no cooling system bears 2 MPa. */
    COOLANT_PRESSURE(GaugePressure.class, -1.1e5, 2e6),
    /** Up to the rail of a diesel. */
    FUEL_PRESSURE(GaugePressure.class, -1.1e5, 4e8),
    FUEL_RATE(VolumeFlow.class, -0.1, 0.1),
    FUEL_USED(Volume.class, 0, 1e6),
    ENGINE_HOURS(TimeSpan.class, 0, 1e10),
    ENGINE_LOAD(Ratio.class, -2, 3),
    ENGINE_TORQUE(Ratio.class, -2, 3),
    ENGINE_STATUS,
    ENGINE_WARNINGS,
    RUN_STATE,
    GENERATOR_STATE,
    GENERATOR_MODE,
    ALTERNATOR_VOLTAGE(Voltage.class, -1000, 1000),
    INTAKE_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 1000),
    /** Of the gas, before the water comes in, or wherever the sender sits. */
    EXHAUST_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 1500),
    MIXED_EXHAUST_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 1500),
    EXHAUST_BACK_PRESSURE(GaugePressure.class, -1.1e5, 1e6),

    /** Line to neutral, or line to line on a set of one phase. */
    AC_VOLTAGE(Voltage.class, 0, 1e5),
    AC_VOLTAGE_LINE_TO_LINE(Voltage.class, 0, 1e5),
    AC_CURRENT(Current.class, -1e5, 1e5),
    AC_FREQUENCY(Frequency.class, 0, 1000),
    AC_POWER(Power.class, -1e9, 1e9),
    AC_APPARENT_POWER(ApparentPower.class, -1e9, 1e9),
    AC_REACTIVE_POWER(ReactivePower.class, -1e9, 1e9),
    POWER_FACTOR(Ratio.class, -1.0001, 1.0001),
    POWER_FACTOR_SIDE,
    AC_ENERGY_OUT(Energy.class, 0, 1e17),
    AC_ENERGY_IN(Energy.class, 0, 1e17),

    DC_VOLTAGE(Voltage.class, -2000, 2000),
    DC_CURRENT(Current.class, -1e5, 1e5),
    RIPPLE_VOLTAGE(Voltage.class, 0, 100),
    BATTERY_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 700),
    STATE_OF_CHARGE(Ratio.class, 0, 2.6),
    STATE_OF_HEALTH(Ratio.class, 0, 2.6),
    REMAINING_CHARGE(Charge.class, 0, 1e9),
    REMAINING_TIME(TimeSpan.class, 0, 1e8),

    TANK_LEVEL(Ratio.class, -0.2, 1.4),
    TANK_CAPACITY(Volume.class, 0, 1e6),
    TANK_CONTENT(Volume.class, 0, 1e6),

    SEA_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 400),
    OUTSIDE_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 400),
    COMPARTMENT_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 700),
    RAW_WATER_IN_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 500),
    RAW_WATER_OUT_TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 500),
    TEMPERATURE(Temperature.class, Bounds.COLDEST_K, 2500),
    BAROMETRIC_PRESSURE(AbsolutePressure.class, 5e4, 1.2e5),
    COMPARTMENT_DEPRESSION(PressureDifference.class, -1.1e5, 1.1e5),
    FUEL_VACUUM(PressureDifference.class, -4e5, 1.1e5),
    RAW_WATER_VACUUM(PressureDifference.class, -4e5, 1.1e5),
    PRESSURE(GaugePressure.class, -1.1e5, 1e9),
    RELATIVE_HUMIDITY(Ratio.class, 0, 1.1),
    CARBON_MONOXIDE(Ratio.class, 0, 1),
    RAW_WATER_FLOW(VolumeFlow.class, -1, 1),

    /** Roll, more than 0 to starboard. */
    HEEL(Angle.class, -Math.PI, Math.PI),
    /** Pitch, more than 0 with the bow up. */
    TRIM(Angle.class, -Math.PI, Math.PI),
    YAW(Angle.class, -2 * Math.PI, 2 * Math.PI),
    LATITUDE(Angle.class, -Math.PI / 2, Math.PI / 2),
    LONGITUDE(Angle.class, -Math.PI, Math.PI),
    SPEED_OVER_GROUND(Speed.class, 0, 200),
    COURSE_OVER_GROUND(Angle.class, -2 * Math.PI, 2 * Math.PI),
    /** Coordinated universal time as told on the bus, in seconds since 1970; held against the log's own stamps it tells the logger's error. */
    CLOCK(TimeSpan.class, 0, 1e10),

    VOLTAGE(Voltage.class, -1e6, 1e6),
    CURRENT(Current.class, -1e6, 1e6),
    FREQUENCY(Frequency.class, 0, 1e6),
    FLOW(VolumeFlow.class, -10, 10),
    VOLUME(Volume.class, -1e6, 1e6),
    ANGLE(Angle.class, -7, 7),
    DISPLACEMENT(Length.class, -1e6, 1e6),
    FORCE(Force.class, -1e9, 1e9),
    SPEED(RotationalSpeed.class, -1e5, 1e5),
    SHARE(Ratio.class, -1e6, 1e6),
    NUMBER;

    private final Optional<Class<? extends Quantity<?>>> type;
    private final double lowest;
    private final double highest;

    /** A state: a code, or bits, without unit. */
    Measurand() {
        type = Optional.empty();
        lowest = -Double.MAX_VALUE;
        highest = Double.MAX_VALUE;
    }

    <Q extends Quantity<Q>> Measurand(Class<Q> type, double lowest, double highest) {
        this.type = Optional.of(type);
        this.lowest = lowest;
        this.highest = highest;
    }

    /** {@return the kind of quantity of the values, nothing for a code} */
    public Optional<Kind<?>> kind() {
        return type.flatMap(Kind::ofType);
    }

    /** {@return the name in small letters, such as {@code oil pressure}} */
    public String label() {
        String words = name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return words.startsWith("ac ") || words.startsWith("dc ") ? words.substring(0, 2).toUpperCase(Locale.ROOT) + words.substring(2) : words;
    }

    /** {@return whether a value in the SI unit could be true on some boat} Not a number and infinity are not. */
    public boolean isPossible(double si) {
        return si >= lowest && si <= highest;
    }

    /**
     * {@return whether senders are known to write 0 here when they do not measure} A stopped engine has no oil pressure either, so a 0 is a
     * value; but a channel that never shows anything else says nothing.
     */
    public boolean isZeroAPlaceholder() {
        return this == OIL_PRESSURE || this == COOLANT_PRESSURE || this == FUEL_PRESSURE || this == BOOST_PRESSURE || this == REMAINING_TIME;
    }

    double lowest() {
        return lowest;
    }

    double highest() {
        return highest;
    }

    private static final class Bounds {

        /** Colder than anything that floats; a battery at 0 K is a sensor that is not there. */
        static final double COLDEST_K = 200;
    }
}

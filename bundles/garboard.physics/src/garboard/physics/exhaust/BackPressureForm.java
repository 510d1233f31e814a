// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import garboard.physics.Argument;
import garboard.physics.Source;
import garboard.quantity.PressureDifference;
import garboard.quantity.VolumeFlow;

/**
 * The published handy forms for the loss of gas in an exhaust pipe. They are all Darcy's law with a fixed friction factor and differ by that
 * alone; none knows the roughness of the wall. For that there is {@link BackPressure#darcy}. L in them is straight length plus bends.
 */
public enum BackPressureForm {

    /** dp[kPa] = 3.6e6 L S Q^2 / D^5; L m, S = 352.05/(T_C + 273.15) kg/m3, Q m3/min, D mm. Friction factor 0.0160. */
    METRIC(Source.fromMemory("metric exhaust back pressure formula of the engine trade").noting("its friction factor is 0.0160, a smooth pipe")) {
        @Override
        PressureDifference reckon(ExhaustSection section, VolumeFlow flow) {
            double density = 352.05 / (section.gas().in("degC") + 273.15);
            double perMinute = flow.in("m3/min");
            return PressureDifference.of(
                3.6e6 * section.effectiveLength().si() * density * perMinute * perMinute / Math.pow(section.bore().in("mm"), 5), "kPa");
        }
    },

    /** dp[inH2O] = L S Q^2 / (187 D^5); L ft, S = 39.6/(T_F + 460) lb/ft3, Q ft3/min, D in. Friction factor 0.0160. */
    INCH(Source.fromMemory("inch exhaust back pressure formula of the engine trade").noting("its friction factor is 0.0160, a smooth pipe")) {
        @Override
        PressureDifference reckon(ExhaustSection section, VolumeFlow flow) {
            double density = 39.6 / (section.gas().in("degF") + 460);
            double perMinute = flow.in("ft3/min");
            return PressureDifference.of(
                section.effectiveLength().in("ft") * density * perMinute * perMinute / (187 * Math.pow(section.bore().in("in"), 5)), "inH2O");
        }
    },

    /** dp[Pa] = 6.32 L Q^2 / (D^5 (T_C + 273)); L m, Q m3/s, D m. Friction factor 0.022. */
    PASCAL(Source.quoted("published pascal form of the exhaust back pressure formula").noting("its friction factor is 0.022")) {
        @Override
        PressureDifference reckon(ExhaustSection section, VolumeFlow flow) {
            return PressureDifference.of(6.32 * section.effectiveLength().si() * flow.si() * flow.si()
                / (Math.pow(section.bore().si(), 5) * (section.gas().in("degC") + 273)));
        }
    },

    /** dp[inH2O] = 0.22 L Q^2 / (D^5 (460 + T_F)); L ft, Q ft3/min, D in. Friction factor 0.0166. */
    INCH_BY_TEMPERATURE(Source.quoted("published inch form of the exhaust back pressure formula").noting("its friction factor is 0.0166")) {
        @Override
        PressureDifference reckon(ExhaustSection section, VolumeFlow flow) {
            double perMinute = flow.in("ft3/min");
            return PressureDifference.of(0.22 * section.effectiveLength().in("ft") * perMinute * perMinute
                / (Math.pow(section.bore().in("in"), 5) * (460 + section.gas().in("degF"))), "inH2O");
        }
    };

    private final Source source;

    BackPressureForm(Source source) {
        this.source = source;
    }

    public Source source() {
        return source;
    }

    /**
     * Loss of a gas flow in a section.
     *
     * @param flow at the gas temperature of the section, 0 or more
     */
    public PressureDifference loss(ExhaustSection section, VolumeFlow flow) {
        Argument.notNegative("gas flow", flow);
        Argument.between("gas temperature", section.gas(), 223.15, 1173.15, "-50 degC to 900 degC");
        return reckon(section, flow);
    }

    abstract PressureDifference reckon(ExhaustSection section, VolumeFlow flow);
}

// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import java.util.List;

import garboard.physics.Argument;
import garboard.quantity.Area;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/**
 * Ventilation of boats with gasoline engines, 33 CFR 183 subpart K. Volumes are net compartment volumes: machinery and tanks that are fixed in
 * place taken off, compartments that {@linkplain #joined open into} this one added.
 */
public final class Ventilation33Cfr183 {

    /** Each single opening or duct of natural ventilation has to be larger than this: 33 CFR 183.630(e). */
    public static final Area EACH_OPENING_OVER = Area.of(3, "in2");

    /** Time of blowing that the label asks for: 33 CFR 183.610(f). */
    public static final TimeSpan BLOW_BEFORE_START = TimeSpan.of(4, "min");

    /** Part of a flexible duct's required area that its end fitting has to have: 33 CFR 183.630(f). */
    public static final Ratio END_FITTING_SHARE = Ratio.of(0.80);

    private static final double OPEN_IN2_PER_FT3 = 15;
    private static final double JOINED_SHARE = 0.02;

    private Ventilation33Cfr183() {
    }

    /** Least rated capacity of the blowers together: 33 CFR Table 183.610. V &lt; 34 ft3: 50 ft3/min; to 100: 1.5 V; above: V/2 + 100. */
    public static VolumeFlow leastRatedCapacity(Volume net) {
        double cubicFeet = cubicFeet(net);
        if (cubicFeet < 34 - 1e-9) {
            return cfm(50);
        }
        return cfm(cubicFeet <= 100 ? 1.5 * cubicFeet : cubicFeet / 2 + 100);
    }

    /** Least output measured at the boat's discharge: 33 CFR Table 183.610. V &lt; 34 ft3: 20 ft3/min; to 100: 0.6 V; above: 0.2 V + 40. */
    public static VolumeFlow leastOutput(Volume net) {
        double cubicFeet = cubicFeet(net);
        if (cubicFeet < 34 - 1e-9) {
            return cfm(20);
        }
        return cfm(cubicFeet <= 100 ? 0.6 * cubicFeet : 0.2 * cubicFeet + 40);
    }

    /** Formula for the area of natural ventilation, each way: 5 ln(V/5) in2, V in ft3; 0 up to 5 ft3. 33 CFR 183.630(d). */
    public static Area naturalAreaByFormula(Volume net) {
        return Area.of(Math.max(0, 5 * Math.log(cubicFeet(net) / 5)), "in2");
    }

    /** Least total area each way. Up to 9.11 ft3 no more than that each opening is larger than 3 in2. 33 CFR 183.630(d) and (e). */
    public static Area leastNaturalArea(Volume net) {
        Area formula = naturalAreaByFormula(net);
        return formula.isLessThan(EACH_OPENING_OVER) ? EACH_OPENING_OVER : formula;
    }

    /** Volume above which the formula asks for more than this area: 5 exp(A/5) ft3. */
    public static Volume volumeFor(Area formulaArea) {
        return Volume.of(5 * Math.exp(Area.of(Argument.notNegative("area", formulaArea)).in("in2") / 5), "ft3");
    }

    /** Whether the openings of one direction will do: together the area of the formula, and each one larger than 3 in2. 33 CFR 183.630. */
    public static boolean naturalOpeningsPass(Volume net, List<Area> openings) {
        double totalM2 = openings.stream().mapToDouble(opening -> Argument.positive("opening", opening)).sum();
        return !openings.isEmpty() && totalM2 >= naturalAreaByFormula(net).si()
            && openings.stream().allMatch(opening -> opening.isMoreThan(EACH_OPENING_OVER));
    }

    /** Least inside area of the end fitting of a flexible duct: 80 % of the area required of the duct. 33 CFR 183.630(f). */
    public static Area leastEndFitting(Area required) {
        return Area.of(END_FITTING_SHARE.si() * Argument.positive("required area", required));
    }

    /** Open area from which on a compartment counts as open to the atmosphere: 15 in2 for each ft3. 33 CFR 183.605; ISO 11105:2020 alike. */
    public static Area openToAtmosphere(Volume net) {
        return Area.of(OPEN_IN2_PER_FT3 * cubicFeet(net), "in2");
    }

    /** Whether two compartments count as one: the opening between them exceeds 2 % of the area between them. 33 CFR 183.630. */
    public static boolean joined(Partition partition) {
        return partition.opening().si() > JOINED_SHARE * partition.whole().si() * (1 + 1e-12);
    }

    /** Area between two compartments and the opening in it. */
    public record Partition(Area whole, Area opening) {
        public Partition {
            Argument.positive("area between the compartments", whole);
            Argument.notNegative("opening", opening);
        }

        public static Partition of(Area whole) {
            return new Partition(whole, Area.of(0));
        }

        public Partition open(Area area) {
            return new Partition(whole, area);
        }
    }

    /** Highest a blower's pick-up may be above the bottom: a third of the compartment's height. 33 CFR 183.610(d). */
    public static Length highestPickUp(Length compartmentHeight) {
        return Length.of(Argument.positive("compartment height", compartmentHeight) / 3);
    }

    /** Most a non-metallic tank may let through in a space that is not ventilated: 1.2 g a day and ft3, 1.2 g below 1 ft3. 183.620(a)(5), memory. */
    public static MassFlow greatestPermeation(Volume net) {
        return MassFlow.of(1.2 * Math.max(1, cubicFeet(net)) / 24, "g/h");
    }

    private static double cubicFeet(Volume net) {
        Argument.positive("net volume", net);
        return net.in("ft3");
    }

    private static VolumeFlow cfm(double cubicFeetPerMinute) {
        return VolumeFlow.of(cubicFeetPerMinute, "ft3/min");
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import java.util.List;
import java.util.Locale;

import garboard.physics.Source;
import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Inputs;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.Slope;

/** The geometry of heel and trim as named calculations. */
public final class GeometryCalculations {

    private static final Parameter<Length> FORWARD =
        Parameter.of("forward", Length.class, "distance of the point forward of the centre of flotation, aft negative").orElse("0 m");
    private static final Parameter<Length> STARBOARD =
        Parameter.of("starboard", Length.class, "distance of the point to starboard of the centreline, port negative").orElse("0 m");
    private static final Parameter<Length> HEIGHT =
        Parameter.of("height", Length.class, "height of the point above the loaded waterline at rest, below negative");
    private static final Parameter<Angle> HEEL = Parameter.of("heel", Angle.class, "heel, starboard side down positive");
    private static final Parameter<Angle> TRIM = Parameter.of("trim", Angle.class, "trim, bow up positive").orElse("0 deg");
    private static final Parameter<Angle> GREATEST_HEEL = Parameter.of("heel", Angle.class, "greatest heel, either side");
    private static final Parameter<Angle> GREATEST_TRIM = Parameter.of("trim", Angle.class, "greatest trim, either way").orElse("0 deg");
    private static final Parameter<Length> SINKAGE =
        Parameter.of("sinkage", Length.class, "rise of the water on the hull: load, squat, stern wave").orElse("0 mm");
    private static final Parameter<Length> LIFT =
        Parameter.of("lift", Length.class, "rise of the hull out of the water: light ship, planing").orElse("0 mm");
    private static final Parameter<Length> MARGIN = Parameter.of("margin", Length.class, "what has to be left");
    private static final Parameter<Length> RUN = Parameter.of("run", Length.class, "horizontal length of the run");
    private static final Parameter<Slope> SLOPE = Parameter.of("slope", Slope.class, "fall over horizontal length").orElse("0.5 in/ft");
    private static final Parameter<Angle> ADVERSE =
        Parameter.of("adverse-inclination", Angle.class, "how far the boat inclines against the run, to 45 deg");

    private static final Source ROTATION = Source.derived("rotation of the boat's axes");
    private static final String LESS_THAN_90 = "heel and trim less than 90 deg; wall-sided hull unless sinkage or lift is given";
    private static final String LOWEST = "h = z cos(heel) cos(trim) - |y| sin(heel) cos(trim) - |x| sin(trim) - sinkage,"
        + " or an attitude in between where a point under water is lower there";
    private static final String[] SLOPES = {"mm/m", "in/ft", "deg"};

    private GeometryCalculations() {
    }

    public static List<Calculation> all() {
        return List.of(heeledHeight(), lowestHeight(), highestHeight(), inclinometers(), clearanceCurve(), heightToBuild(), heightToStayWet(),
            greatestOffCentre(), heelForMargin(), fallDrop(), fallSlope(), fallLeft(), slopeToBuild());
    }

    private static Calculation heeledHeight() {
        return Calculation.named("heeled-height", "Height of a point when heeled and trimmed")
            .explained("How high above the water a point of the boat stands in one attitude.")
            .takes(FORWARD, STARBOARD, HEIGHT, HEEL, TRIM, SINKAGE)
            .by("h = x sin(trim) - y sin(heel) cos(trim) + z cos(heel) cos(trim) - sinkage").validFor(LESS_THAN_90).from(ROTATION)
            .answers(in -> Answer.of("height", HeeledHeight.of(point(in),
                Attitude.heeled(in.get(HEEL)).withTrim(in.get(TRIM)).withSinkage(in.get(SINKAGE)))));
    }

    private static Calculation lowestHeight() {
        return Calculation.named("lowest-height", "Lowest height of a point in the design attitudes")
            .explained("How low a crest, vent or outlet comes when the boat heels to either side and trims either way.")
            .takes(FORWARD, STARBOARD, HEIGHT, GREATEST_HEEL, GREATEST_TRIM, SINKAGE).by(LOWEST).validFor(LESS_THAN_90).from(ROTATION)
            .answers(in -> {
                AttitudeEnvelope envelope = envelope(in).withSinkage(in.get(SINKAGE));
                return heightAt("lowest height", HeeledHeight.lowest(point(in), envelope))
                    .and("loss against upright", HeeledHeight.loss(point(in), envelope))
                    .warningIf(HeeledHeight.lowest(point(in), envelope).height().si() < 0, "The point goes under water.");
            });
    }

    private static Calculation highestHeight() {
        return Calculation.named("highest-height", "Highest height of a point in the design attitudes")
            .explained("How far an intake comes up when the boat heels to either side and trims either way.")
            .takes(FORWARD, STARBOARD, HEIGHT, GREATEST_HEEL, GREATEST_TRIM, LIFT)
            .by("h = z cos(heel) cos(trim) + |y| sin(heel) cos(trim) + |x| sin(trim) + lift, or higher in between").validFor(LESS_THAN_90)
            .from(ROTATION)
            .answers(in -> {
                var highest = HeeledHeight.highest(point(in), envelope(in).withLift(in.get(LIFT)));
                return heightAt("highest height", highest)
                    .warningIf(highest.height().si() >= 0, "The point comes out of the water.");
            });
    }

    private static Calculation inclinometers() {
        Parameter<Angle> trim = Parameter.of("trim", Angle.class, "reading along the boat, bow up positive");
        Parameter<Angle> athwart = Parameter.of("athwart", Angle.class, "reading across the boat, starboard down positive");
        return Calculation.named("heel-from-inclinometers", "Heel from two inclinometers")
            .explained("An inclinometer across the boat shows less than the heel as soon as there is trim; this takes that out.")
            .takes(trim, athwart)
            .by("sin(heel) = sin(athwart) / cos(trim)").validFor("trim and reading together less than 90 deg").from(ROTATION)
            .answers(in -> Answer.of("heel", Attitude.fromInclinometers(in.get(trim), new Attitude.AthwartReading(in.get(athwart))).heel()));
    }

    private static Calculation clearanceCurve() {
        Parameter<Integer> steps = Parameter.wholeNumber("steps", "number of steps, 2 or more").orElse("12");
        return Calculation.named("clearance-curve", "Height of a point against heel")
            .explained("The height of a point at equal steps of heel, from port to starboard.")
            .takes(FORWARD, STARBOARD, HEIGHT, GREATEST_HEEL, TRIM, SINKAGE, steps)
            .by("h = x sin(trim) - y sin(heel) cos(trim) + z cos(heel) cos(trim) - sinkage").validFor(LESS_THAN_90).from(ROTATION)
            .answers(in -> {
                Attitude attitude = Attitude.upright().withTrim(in.get(TRIM)).withSinkage(in.get(SINKAGE));
                Answer answer = new Answer(List.of(), List.of());
                for (var at : HeeledHeight.curve(point(in), attitude, in.get(GREATEST_HEEL), in.get(steps))) {
                    answer = answer.and("height at " + degrees(at.attitude().heel()), at.height());
                }
                return answer;
            });
    }

    private static Calculation heightToBuild() {
        return Calculation.named("height-to-build", "Height to build for a margin")
            .explained("How high above the loaded waterline a crest, vent or outlet has to stand to keep a margin in all design attitudes.")
            .takes(FORWARD, STARBOARD, MARGIN, GREATEST_HEEL, GREATEST_TRIM, SINKAGE)
            .by("z = (margin + sinkage + |y| sin(heel) cos(trim) + |x| sin(trim)) / (cos(heel) cos(trim))").validFor(LESS_THAN_90).from(ROTATION)
            .answers(in -> Answer.of("height",
                PlaceToBuild.leastHeight(place(in), envelope(in).withSinkage(in.get(SINKAGE)), in.get(MARGIN))));
    }

    private static Calculation heightToStayWet() {
        return Calculation.named("depth-to-build", "Depth to build an intake at")
            .explained("How far under the loaded waterline an intake has to lie to stay wet by a margin in all design attitudes.")
            .takes(FORWARD, STARBOARD, MARGIN, GREATEST_HEEL, GREATEST_TRIM, LIFT)
            .by("z = -(margin + lift + |y| sin(heel) cos(trim) + |x| sin(trim)) / (cos(heel) cos(trim))").validFor(LESS_THAN_90).from(ROTATION)
            .answers(in -> Answer.of("height",
                PlaceToBuild.greatestHeightToStayWet(place(in), envelope(in).withLift(in.get(LIFT)), in.get(MARGIN))));
    }

    private static Calculation greatestOffCentre() {
        return Calculation.named("distance-off-centreline", "Greatest distance off the centreline")
            .explained("How far to the side a point of given height may stand and still keep a margin in all design attitudes.")
            .takes(FORWARD, HEIGHT, MARGIN, GREATEST_HEEL, GREATEST_TRIM, SINKAGE)
            .by("y = (z cos(heel) cos(trim) - margin - sinkage - |x| sin(trim)) / (sin(heel) cos(trim))")
            .validFor(LESS_THAN_90 + "; heel more than 0").from(ROTATION)
            .answers(in -> PlaceToBuild.greatestOffCentre(BoatPoint.atHeight(in.get(HEIGHT)).withForward(in.get(FORWARD)),
                envelope(in).withSinkage(in.get(SINKAGE)), in.get(MARGIN))
                .map(off -> Answer.of("distance off the centreline", off))
                .orElseGet(() -> Answer.of("distance off the centreline", "none").warning("Even on the centreline the margin is not kept.")));
    }

    private static Calculation heelForMargin() {
        return Calculation.named("heel-for-margin", "Heel that uses up a margin")
            .explained("At which heel, to its own side, a point is down to a margin.")
            .takes(FORWARD, STARBOARD, HEIGHT, MARGIN, GREATEST_TRIM, SINKAGE)
            .by("hypot(y, z) cos(heel + atan(|y|/z)) = (margin + sinkage + |x| sin(trim)) / cos(trim)").validFor("trim less than 90 deg")
            .from(ROTATION)
            .answers(in -> PlaceToBuild.heelThatUsesUp(point(in),
                AttitudeEnvelope.toHeel(Angle.of(0)).toTrim(in.get(GREATEST_TRIM)).withSinkage(in.get(SINKAGE)), in.get(MARGIN))
                .map(heel -> Answer.of("heel", heel))
                .orElseGet(() -> Answer.of("heel", "none").warning("The margin is not there even without heel.")));
    }

    private static Calculation fallDrop() {
        return Calculation.named("fall-drop", "Drop of a run for a fall")
            .explained("How much lower the far end of a run has to lie for a fall.")
            .takes(RUN, SLOPE).by("drop = slope x run").validFor("run more than 0")
            .from(Source.retrieved("half an inch per foot: Gerr, Boat Mechanical Systems Handbook"))
            .answers(in -> Answer.of("drop", Fall.dropFor(in.get(SLOPE), new Fall.Run(in.get(RUN)))));
    }

    private static Calculation fallSlope() {
        Parameter<Length> drop = Parameter.of("drop", Length.class, "how much lower the far end lies");
        return Calculation.named("fall-slope", "Fall of a run")
            .explained("The mean slope of a run, and whether half an inch per foot is there.")
            .takes(drop, RUN).by("slope = drop / run").validFor("run more than 0")
            .from(Source.retrieved("half an inch per foot: Gerr, Boat Mechanical Systems Handbook"))
            .answers(in -> {
                Slope slope = Fall.slope(in.get(drop), new Fall.Run(in.get(RUN)));
                return Answer.of("slope", slope, SLOPES)
                    .warningIf(slope.isLessThan(Fall.HALF_INCH_PER_FOOT), "Less than half an inch per foot (41.7 mm/m).");
            });
    }

    private static Calculation fallLeft() {
        return Calculation.named("fall-under-trim", "Fall left when the boat inclines")
            .explained("What is left of a fall when trim or heel works against the run.")
            .takes(SLOPE, ADVERSE).by("left = tan(atan(slope) - inclination)").validFor("inclination 0 to 45 deg").from(ROTATION)
            .answers(in -> {
                Slope left = Fall.left(in.get(SLOPE), in.get(ADVERSE));
                return Answer.of("fall left", left, SLOPES).warningIf(left.si() <= 0, "The run does not drain in this attitude.");
            });
    }

    private static Calculation slopeToBuild() {
        return Calculation.named("slope-to-build", "Slope to build against an inclination")
            .explained("The slope at rest that leaves a wanted fall when trim or heel works against the run.")
            .takes(SLOPE, ADVERSE).by("at rest = tan(atan(slope) + inclination)").validFor("inclination 0 to 45 deg").from(ROTATION)
            .answers(in -> Answer.of("slope at rest", Fall.leastAtRest(in.get(SLOPE), in.get(ADVERSE)), SLOPES));
    }

    private static Answer heightAt(String name, HeeledHeight.HeightAt found) {
        Attitude attitude = found.attitude();
        return Answer.of(name, found.height())
            .and("in the attitude", "heel " + degrees(attitude.heel()) + ", trim " + degrees(attitude.trim()));
    }

    private static String degrees(Angle angle) {
        return String.format(Locale.ROOT, "%.1f deg", angle.in("deg") + 0.0);
    }

    private static BoatPoint point(Inputs in) {
        return place(in).withHeight(in.get(HEIGHT));
    }

    private static BoatPoint place(Inputs in) {
        return BoatPoint.atHeight(Length.of(0)).withForward(in.get(FORWARD)).withStarboard(in.get(STARBOARD));
    }

    private static AttitudeEnvelope envelope(Inputs in) {
        return AttitudeEnvelope.toHeel(in.get(GREATEST_HEEL)).toTrim(in.get(GREATEST_TRIM));
    }
}

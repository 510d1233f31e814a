// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import java.util.List;

import org.hipparchus.stat.regression.SimpleRegression;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Frequency;
import garboard.quantity.Power;
import garboard.quantity.Ratio;

/** Frequency over load as a straight line by least squares ({@link MeasurementSources#DROOP_REGRESSION}). */
public final class DroopRegression {

    private static final int LEAST_STEPS = 4;
    private static final double LEAST_R2 = 0.95;
    private static final double STANDARD_ERRORS = 2;

    private final List<Step> steps;
    private final SimpleRegression line = new SimpleRegression();
    private final Plate plate;

    private DroopRegression(List<Step> steps, Plate plate) {
        this.steps = steps;
        this.plate = plate;
        steps.forEach(step -> line.addData(step.load().si(), step.frequency().si()));
    }

    /** Line through steady steps; throws for fewer than four steps of different load. */
    public static DroopRegression through(List<Step> steps, Plate plate) {
        long different = steps.stream().mapToDouble(step -> step.load().si()).distinct().count();
        if (different < LEAST_STEPS) {
            throw OutOfRangeException.of("steps of different load", different, "4 or more");
        }
        return new DroopRegression(List.copyOf(steps), plate);
    }

    /** Frequency of the line without load. */
    public Frequency noLoad() {
        return Frequency.of(line.getIntercept());
    }

    /** -slope P rated / f rated. */
    public Ratio droop() {
        return Ratio.of(-line.getSlope() * scale());
    }

    /** One standard error of {@link #droop}. */
    public Ratio standardError() {
        return Ratio.of(line.getSlopeStdErr() * scale());
    }

    /** Share of the variance that the line explains. */
    public Ratio determination() {
        return Ratio.of(line.getRSquare());
    }

    /** Largest distance of a step from the line. */
    public Frequency largestResidual() {
        return Frequency.of(steps.stream().mapToDouble(step -> Math.abs(step.frequency().si() - line.predict(step.load().si()))).max().orElseThrow());
    }

    /** Droop between the steps of least and most load alone, reduced to the rated power. */
    public Ratio droopOfEndPoints() {
        Step least = steps.stream().min((a, b) -> a.load().compareTo(b.load())).orElseThrow();
        Step most = steps.stream().max((a, b) -> a.load().compareTo(b.load())).orElseThrow();
        return Ratio.of((least.frequency().si() - most.frequency().si()) / (most.load().si() - least.load().si()) * scale());
    }

    /** Whether the line describes the steps: R2 of 0.95 or more and no step farther off than half the permitted band. Else take the end points. */
    public boolean isStraight(Frequency permittedBand) {
        return line.getRSquare() >= LEAST_R2 && largestResidual().si() <= Argument.positive("permitted band", permittedBand) / 2;
    }

    /** Whether the slope is zero within two standard errors. */
    public boolean isIsochronous() {
        return Math.abs(line.getSlope()) <= STANDARD_ERRORS * line.getSlopeStdErr();
    }

    private double scale() {
        return plate.ratedPower().si() / plate.ratedFrequency().si();
    }

    /** One steady step of load. */
    public record Step(Power load, Frequency frequency) {

        public Step {
            Argument.notNegative("load", load);
            Argument.positive("frequency", frequency);
        }
    }

    /** What the droop is counted by. */
    public record Plate(Power ratedPower, Frequency ratedFrequency) {

        public Plate {
            Argument.positive("rated power", ratedPower);
            Argument.positive("rated frequency", ratedFrequency);
        }
    }
}

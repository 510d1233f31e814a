// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;

import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Angle;
import garboard.quantity.Length;

class HeeledHeightTest {

    // source of all rows: recomputed independently from the rotation of the axes, h = x sin(theta) - y sin(phi) cos(theta) + z cos(phi) cos(theta)
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # x m | y m  | z m  | heel | trim | height
            0    | 0.60 | 0.45 | 25 | 0 | 0.1543 m
            -2.0 | 0.60 | 0.45 | 25 | 3 | 0.0494 m
            0    | 1.00 | 0.45 | 30 | 0 | -0.1103 m
            0    | 0.10 | 0.45 | 30 | 0 | 0.3397 m
            0    | 1.20 | 0.30 | 7  | 0 | 0.1515 m
            -4.5 | 1.40 | 0.10 | 7  | 0 | -0.0714 m
            -4.5 | 1.40 | 0.10 | 7  | 2 | -0.2284 m
            0    | 1.20 | 0.30 | 22.5 | 0 | -0.182 m
            0    | 0.3  | 0.20 | 15 | 0 | 0.1155 m
            """)
    void reckonsTheHeightOfAPoint(double x, double y, double z, double heel, double trim, String height) {
        assertPrinted(height, HeeledHeight.of(point(x, y, z), attitude(heel, trim)));
    }

    @Test
    void agreesWithARotationOfTheAxes() {
        Random random = new Random(1);
        for (int i = 0; i < 500; i++) {
            double heel = Math.toRadians(160 * random.nextDouble() - 80);
            double trim = Math.toRadians(160 * random.nextDouble() - 80);
            BoatPoint point = point(10 * random.nextDouble() - 5, 4 * random.nextDouble() - 2, 4 * random.nextDouble() - 2);
            // z up: starboard (+y) down is a right-handed turn by -heel about the bow axis, bow up one by -trim about the port-starboard axis.
            // The boat turns by trim in space, then by heel about its own long axis.
            Rotation boat = new Rotation(new Vector3D(0, 1, 0), -trim, RotationConvention.VECTOR_OPERATOR)
                .compose(new Rotation(new Vector3D(1, 0, 0), -heel, RotationConvention.VECTOR_OPERATOR), RotationConvention.VECTOR_OPERATOR);
            double z = boat.applyTo(new Vector3D(point.forward().si(), point.toStarboard().si(), point.height().si())).getZ();
            Attitude attitude = Attitude.heeled(Angle.of(heel)).withTrim(Angle.of(trim));
            assertThat(HeeledHeight.of(point, attitude).si()).isCloseTo(z, within(1e-12));
        }
    }

    @Test
    void takesTheSinkageOff() {
        Attitude deep = attitude(25, 3).withSinkage(Length.valueOf("20 mm"));
        assertPrinted("0.0294 m", HeeledHeight.of(point(-2, 0.60, 0.45), deep)); // 0.0494 m less 20 mm
    }

    @Test
    void readsTwoInclinometers() {
        // recomputed independently from sin(athwart) = sin(heel) cos(trim): 24.963 deg for a heel of 25 and a trim of 3
        assertPrinted("24.963 deg", attitude(25, 3).athwartReading().angle());
        Attitude read = Attitude.fromInclinometers(Angle.valueOf("3 deg"), new Attitude.AthwartReading(Angle.valueOf("24.963 deg")));
        assertPrinted("25.00 deg", read.heel());
        // from two inclinometers: h = x sin(theta) - y sin(phi') + z sqrt(1 - sin^2(theta) - sin^2(phi')), an independent form
        double sinTheta = Math.sin(Math.toRadians(3));
        double sinPhi = Math.sin(Math.toRadians(24.963));
        double height = -2.0 * sinTheta - 0.60 * sinPhi + 0.45 * Math.sqrt(1 - sinTheta * sinTheta - sinPhi * sinPhi);
        assertThat(HeeledHeight.of(point(-2, 0.60, 0.45), read).si()).isCloseTo(height, within(1e-12));
    }

    @Test
    void refusesInclinometersThatContradictEachOther() {
        assertThatThrownBy(() -> Attitude.fromInclinometers(Angle.valueOf("60 deg"), new Attitude.AthwartReading(Angle.valueOf("31 deg"))))
            .isInstanceOf(OutOfRangeException.class).hasMessageContaining("athwart").hasMessageContaining("31 deg");
        assertThatThrownBy(() -> Attitude.heeled(Angle.valueOf("90 deg"))).isInstanceOf(OutOfRangeException.class).hasMessageContaining("heel");
    }

    @Test
    void findsTheLowestHeightOnTheLowTack() {
        // recomputed independently from h_worst = z cos(phi) cos(theta) - |y| sin(phi) cos(theta) - |x| sin(theta):
        // cos 25 cos 3 = 0.905066, sin 25 cos 3 = 0.422039, sin 3 = 0.052336: 0.407280 - 0.253223 - 0.104672 = 0.049385
        var port = HeeledHeight.lowest(point(2, -0.60, 0.45), envelope(25, 3));
        assertPrinted("0.0494 m", port.height());
        assertPrinted("-25 deg", port.attitude().heel());
        assertPrinted("-3 deg", port.attitude().trim());
    }

    @Test
    void findsThatASubmergedPointIsLowestBeforeTheGreatestHeel() {
        // recomputed independently: z -0.30, y 0.60 is lowest at atan(0.60 / 0.30) = 63.43 deg, -sqrt(0.60^2 + 0.30^2) = -0.6708 m
        var lowest = HeeledHeight.lowest(point(0, 0.60, -0.30), envelope(80, 0));
        assertPrinted("63.43 deg", lowest.attitude().heel());
        assertPrinted("-0.6708 m", lowest.height());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # y m | z m  | heel | highest, recomputed independently from z cos(phi) + |y| sin(phi)
            0.50 | -0.40 | 30 | -0.0964 m
            0.20 | -0.40 | 30 | -0.2464 m
            """)
    void findsTheHighestHeightOfAnIntake(double y, double z, double heel, String height) {
        var highest = HeeledHeight.highest(point(0, y, z), envelope(heel, 0));
        assertPrinted(height, highest.height());
        assertPrinted("-" + (int) heel + " deg", highest.attitude().heel());
    }

    @Test
    void countsLiftForTheHighestAndSinkageForTheLowestHeight() {
        AttitudeEnvelope envelope = envelope(30, 0).withLift(Length.valueOf("50 mm")).withSinkage(Length.valueOf("30 mm"));
        assertPrinted("-0.0464 m", HeeledHeight.highest(point(0, 0.50, -0.40), envelope).height());
        assertPrinted("0.3097 m", HeeledHeight.lowest(point(0, 0.10, 0.45), envelope).height());
    }

    @Test
    void findsTheExtremesThatASweepFinds() {
        Random random = new Random(2);
        for (int i = 0; i < 60; i++) {
            BoatPoint point = point(12 * random.nextDouble() - 6, 4 * random.nextDouble() - 2, 3 * random.nextDouble() - 1.5);
            double heel = 60 * random.nextDouble();
            double trim = 30 * random.nextDouble();
            double lowest = Double.POSITIVE_INFINITY;
            double highest = Double.NEGATIVE_INFINITY;
            for (int h = -100; h <= 100; h++) {
                for (int t = -100; t <= 100; t++) {
                    double height = HeeledHeight.of(point, attitude(heel * h / 100, trim * t / 100)).si();
                    lowest = Math.min(lowest, height);
                    highest = Math.max(highest, height);
                }
            }
            double low = HeeledHeight.lowest(point, envelope(heel, trim)).height().si();
            double high = HeeledHeight.highest(point, envelope(heel, trim)).height().si();
            assertThat(low).isLessThanOrEqualTo(lowest + 1e-12).isCloseTo(lowest, within(1e-3));
            assertThat(high).isGreaterThanOrEqualTo(highest - 1e-12).isCloseTo(highest, within(1e-3));
        }
    }

    @Test
    void reckonsTheLossAgainstTheUprightHeight() {
        // recomputed independently: 0.45 - 0.3397 = 0.1103 m
        assertPrinted("0.1103 m", HeeledHeight.loss(point(0, 0.10, 0.45), envelope(30, 0)));
    }

    @Test
    void drawsTheCurveFromPortToStarboard() {
        var curve = HeeledHeight.curve(point(0, 1.0, 0.45), Attitude.upright(), Angle.valueOf("30 deg"), 6);
        assertThat(curve).hasSize(7);
        assertPrinted("-30 deg", curve.get(0).attitude().heel());
        assertPrinted("0.45 m", curve.get(3).height());
        assertPrinted("-0.1103 m", curve.get(6).height()); // recomputed independently, see above
        assertThatThrownBy(() -> HeeledHeight.curve(point(0, 1, 1), Attitude.upright(), Angle.valueOf("30 deg"), 1))
            .isInstanceOf(OutOfRangeException.class).hasMessageContaining("steps");
    }

    static BoatPoint point(double x, double y, double z) {
        return BoatPoint.atHeight(Length.of(z)).withForward(Length.of(x)).withStarboard(Length.of(y));
    }

    static Attitude attitude(double heelDeg, double trimDeg) {
        return Attitude.heeled(Angle.of(heelDeg, "deg")).withTrim(Angle.of(trimDeg, "deg"));
    }

    static AttitudeEnvelope envelope(double heelDeg, double trimDeg) {
        return AttitudeEnvelope.toHeel(Angle.of(heelDeg, "deg")).toTrim(Angle.of(trimDeg, "deg"));
    }
}

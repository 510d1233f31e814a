// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds every unit to a factor from outside this project. Rounded factors may differ by half a unit of the last digit printed, exact
 * ones not at all.
 */
class ConversionFactorsTest {

    private static final String FACTORS = "/garboard/quantity/factors.csv";

    @ParameterizedTest(name = "one {1} of {0} is {2} in SI")
    @CsvFileSource(resources = FACTORS, delimiter = '|', numLinesToSkip = 3)
    void everyUnitAgreesWithTheFactorOfItsSource(String kind, String unit, String printed, String agreement, String source) {
        BigDecimal factor = new BigDecimal(printed);
        double allowed = agreement.equals("exact") ? 0 : factor.ulp().doubleValue() / 2;

        assertThat(source).isNotBlank();
        assertThat(Kind.named(kind).orElseThrow().of(1, unit).si()).isCloseTo(factor.doubleValue(), within(allowed));
    }

    @Test
    void noUnitIsWithoutAFactorFromOutside() throws IOException {
        Set<String> held = new HashSet<>(Set.of("slope deg", "temperature K", "temperature degC", "temperature degF")); // tests below
        try (InputStream file = getClass().getResourceAsStream(FACTORS)) {
            new String(file.readAllBytes(), StandardCharsets.UTF_8).lines().map(line -> line.split("\\|")).filter(row -> row.length > 2)
                .forEach(row -> held.add(row[0] + " " + row[1]));
        }

        assertThat(Kind.all()).filteredOn(kind -> !Set.of("absolute pressure", "pressure difference").contains(kind.name()))
            .flatExtracting(kind -> kind.units().stream().map(unit -> kind.name() + " " + unit).toList()).isSubsetOf(held);
    }

    @Test
    void thePressuresShareTheirUnits() {
        Kind<GaugePressure> gauge = Kind.of(GaugePressure.class);

        assertThat(gauge.units()).isEqualTo(Kind.of(AbsolutePressure.class).units()).isEqualTo(Kind.of(PressureDifference.class).units())
            .allSatisfy(unit -> assertThat(gauge.of(1, unit).si()).isEqualTo(AbsolutePressure.of(1, unit).si())
                .isEqualTo(PressureDifference.of(1, unit).si()));
    }

    // The same factors between two units of the trade, as workshop tables round them; quotients of the rows above.
    @ParameterizedTest(name = "one {1} is {3} {2}")
    @CsvSource(delimiter = '|', textBlock = """
        gauge pressure | inHg    | kPa    | 3.38639
        gauge pressure | inH2O   | kPa    | 0.249089
        gauge pressure | psi     | kPa    | 6.89476
        gauge pressure | inHg    | inH2O  | 13.595
        gauge pressure | lbf/ft2 | Pa     | 47.8803
        volume flow    | cfm     | m3/min | 0.0283168
        volume flow    | US gpm  | L/min  | 3.78541
        power          | hp      | kW     | 0.745700
        """)
    void tradeTablesAgreeToTheLastDigitPrinted(String kind, String from, String to, String printed) {
        BigDecimal factor = new BigDecimal(printed);
        assertThat(Kind.named(kind).orElseThrow().of(1, from).in(to))
            .isCloseTo(factor.doubleValue(), within(factor.ulp().doubleValue() / 2));
    }

    // NIST SP 811 (2008), appendix B.9: inch of water 249.08891 Pa is the conventional column, 25.4 mm of 9.80665 Pa.
    @Test
    void inchOfWaterIsTheConventionalOne() {
        assertThat(PressureDifference.of(1, "inH2O").si()).isCloseTo(249.08891, within(0.000005));
    }

    // Definition of the mechanical horsepower, 550 ft.lbf/s, carried to eight digits: 745.69987 W (from memory).
    @Test
    void horsepowerIsTheMechanicalOne() {
        assertThat(Power.of(1, "hp").si()).isCloseTo(745.69987, within(0.000005));
    }

    // NIST SP 811, appendix B.8: T/K = (t/degF + 459.67)/1.8, T/K = t/degC + 273.15; fixed points by definition of the scales.
    @ParameterizedTest
    @CsvSource({"0 degC, 273.15", "32 degF, 273.15", "212 degF, 373.15", "100 degC, 373.15", "-40 degF, 233.15", "-40 degC, 233.15",
        "-459.67 degF, 0", "-273.15 degC, 0", "165 degF, 347.0388888888889"})
    void temperaturesHaveAnOffset(String text, double kelvin) {
        assertThat(Temperature.valueOf(text).si()).isCloseTo(kelvin, within(1e-12));
    }

    @Test
    void temperatureDifferencesHaveNoOffset() {
        assertThat(TemperatureDifference.valueOf("9 degF").si()).isEqualTo(5);
        assertThat(TemperatureDifference.valueOf("5 degC").si()).isEqualTo(5);
    }

    // 2 deg = 34.9, 5 deg = 87.5, 10 deg = 176.3 mm/m, 1/2 in per ft = 41.7 mm/m = 2.386 deg: recomputed from tan.
    @ParameterizedTest
    @CsvSource({"2, 34.9", "5, 87.5", "10, 176.3", "2.386, 41.7"})
    void slopesInDegreesAreTangents(double degrees, double mmPerM) {
        assertThat(Slope.of(degrees, "deg").in("mm/m")).isCloseTo(mmPerM, within(0.05));
    }

    @Test
    void halfAnInchByTheFootIsOneInTwentyFour() {
        assertThat(Slope.valueOf("1/2 in/ft").si()).isEqualTo(1.0 / 24);
        assertThat(Slope.valueOf("1/2 in/ft").in("deg")).isCloseTo(2.386, within(0.0005));
    }
}

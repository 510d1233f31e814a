// SPDX-License-Identifier: EPL-2.0
package garboard.session.entry;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_EXHAUST_FALL;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__RESTED_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.TRIAL__CARBON_MONOXIDE_CABIN;
import static garboard.model.GarboardPackage.Literals.VESSEL__BEAM;
import static garboard.model.GarboardPackage.Literals.VESSEL__BUILT_ON;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__NAME;
import static garboard.model.GarboardPackage.Literals.VESSEL__PASSENGERS;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__BORE;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.model.GarboardPackage.Literals;
import garboard.model.HullKind;
import garboard.model.Labels;
import garboard.quantity.Length;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;
import garboard.quantity.UnitSystem;
import garboard.session.entry.Refusal.Reason;

class EntryReaderTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-01T08:00:00Z"), ZoneId.of("Europe/Berlin"));
    private final EntryReader si = new EntryReader(UnitSystem.SI, Labels.in(Locale.ENGLISH), CLOCK);
    private final EntryReader us = new EntryReader(UnitSystem.US, Labels.in(Locale.ENGLISH), CLOCK);

    private static String written(Reading reading) {
        return reading instanceof Reading.Entered entered ? entered.value().toString() : reading.toString();
    }

    private static Refusal refusal(Reading reading) {
        return reading instanceof Reading.Refused refused ? refused.why() : ((Reading.Begun) reading).asItStands();
    }

    @ParameterizedTest
    @CsvSource({"3/4 in", "19 mm", "1 1/2 in", "5 ft 3 in", "'12,5 mm'", "19mm"})
    void keepsTheUnitThatIsWritten(String text) {
        var entered = (Reading.Entered) si.read(WATER_HOSE_RUN__BORE, text);
        assertThat(entered.value()).isEqualTo(Length.valueOf(text));
        assertThat(entered.unitAdded()).isEmpty();
    }

    @Test
    void takesABareNumberInTheUnitThatPeopleUseForTheField() {
        assertThat(si.read(WATER_HOSE_RUN__BORE, "19")).isEqualTo(new Reading.Entered(Length.valueOf("19 mm"), Optional.of("mm")));
        assertThat(us.read(WATER_HOSE_RUN__BORE, "3/4")).isEqualTo(new Reading.Entered(Length.valueOf("3/4 in"), Optional.of("in")));
        assertThat(written(si.read(VESSEL__BEAM, "3.4"))).isEqualTo("3.4 m");
        assertThat(written(si.read(STARTING_BATTERY__RESTED_VOLTAGE, "12.74 ±0.5 %"))).isEqualTo("12.74 V ±0.5 %");
        assertThat(written(si.read(MAKER_LIMITS__MINIMUM_EXHAUST_FALL, "20"))).isEqualTo("20 mm/m");
    }

    @Test
    void asksForTheUnitOfAFractionAmongMillimetres() {
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "3/4"))).isEqualTo(Refusal.because(Reason.FRACTION_WITHOUT_UNIT, "3/4", "mm"));
    }

    @ParameterizedTest
    @CsvSource({"80, 80 %", "0.8, 0.8", "1, 1", "0.8 %, 0.8 %", "150 %, 150 %"})
    void takesASmallBareRatioAsAFractionAndALargeOneAsPerCent(String text, String written) {
        assertThat(written(si.read(EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD, text))).isEqualTo(written);
    }

    @Test
    void takesBareMillionthsOfCarbonMonoxide() {
        assertThat(written(si.read(TRIAL__CARBON_MONOXIDE_CABIN, "9"))).isEqualTo("9 ppm");
        assertThat(written(si.read(TRIAL__CARBON_MONOXIDE_CABIN, "1"))).isEqualTo("1 ppm");
        assertThat(written(si.read(TRIAL__CARBON_MONOXIDE_CABIN, "0.000009"))).isEqualTo("0.000009");
    }

    @Test
    void addsNoUnitToAPureNumber() {
        assertThat(written(si.read(GENERATOR_SET__RATED_POWER_FACTOR, "0.8"))).isEqualTo("0.8");
        assertThat(si.unit(GENERATOR_SET__RATED_POWER_FACTOR)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "12.", "-", "3/", "1 3/", "1 3", "38 m", "38 i", "1e", "12 mm +", "12 mm ±", "12 mm +/", "12 mm ±0."})
    void knowsTheBeginningOfALength(String text) {
        assertThat(si.read(WATER_HOSE_RUN__BORE, text)).isInstanceOfAny(Reading.Begun.class, Reading.Entered.class);
    }

    @Test
    void saysOfABeginningThatIsLeftThatItIsOne() {
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "7/"))).isEqualTo(Refusal.because(Reason.ONLY_BEGUN));
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "12 mm ±"))).isEqualTo(Refusal.because(Reason.ONLY_BEGUN));
    }

    @Test
    void saysHowAUnitGoesOn() {
        assertThat(si.read(EXHAUST_RUN__BACK_PRESSURE, "38 p")).isInstanceOfSatisfying(Reading.Begun.class,
            begun -> assertThat(begun.goesOn()).contains("psi", "Pa"));
    }

    private static final EAttribute EXHAUST_RUN__BACK_PRESSURE = Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE;

    @Test
    void tellsWhatIsWrongWithAQuantity() {
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "about 19"))).isEqualTo(Refusal.because(Reason.NO_NUMBER));
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "1,500 mm"))).isEqualTo(Refusal.because(Reason.TWO_READINGS, "1,500", "1500", "1.500"));
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "19 20 mm"))).isEqualTo(Refusal.because(Reason.SECOND_NUMBER, "20 mm"));
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "19 psi")).reason()).isEqualTo(Reason.UNIT_UNKNOWN);
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "19 inchs"))).isEqualTo(Refusal.because(Reason.UNIT_MEANT, "inchs", "in"));
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "19 mm ±0.5"))).isEqualTo(Refusal.because(Reason.ACCURACY_WITHOUT_UNIT, "0.5", "mm"));
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "19 mm ±-1 mm"))).isEqualTo(Refusal.because(Reason.ACCURACY_WITH_SIGN));
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "5 ft 14 in"))).isEqualTo(Refusal.because(Reason.INCHES_BEHIND_FEET));
        assertThat(refusal(si.read(WATER_HOSE_RUN__BORE, "9".repeat(300)))).isEqualTo(Refusal.because(Reason.TOO_LONG));
        assertThat(refusal(si.read(Literals.TRIAL__SEA_TEMPERATURE, "-400 degC")).reason()).isEqualTo(Reason.OTHER);
    }

    @ParameterizedTest
    @CsvSource({"4, 4", " 12 , 12", "0, 0"})
    void readsCounts(String text, int count) {
        assertThat(si.read(VESSEL__PASSENGERS, text)).isEqualTo(new Reading.Entered(count, Optional.empty()));
    }

    @Test
    void refusesWhatIsNoCount() {
        assertThat(refusal(si.read(VESSEL__PASSENGERS, "-3")).reason()).isEqualTo(Reason.BELOW_NOTHING);
        assertThat(refusal(si.read(VESSEL__PASSENGERS, "four")).reason()).isEqualTo(Reason.NOT_WHOLE);
        assertThat(refusal(si.read(VESSEL__PASSENGERS, "4.5")).reason()).isEqualTo(Reason.NOT_WHOLE);
        assertThat(refusal(si.read(VESSEL__PASSENGERS, "99999999999")).reason()).isEqualTo(Reason.NOT_WHOLE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-31", "2026-5-31", "31.5.2026", "31. 05. 2026", "31.5.26", "31 May 2026", "31. Mai 2026", "May 31, 2026", "may 31 2026",
        "5/31/2026", "31/5/2026"})
    void readsTheUsualFormsOfADate(String text) {
        assertThat(written(si.read(VESSEL__BUILT_ON, text))).isEqualTo("2026-05-31");
    }

    @Test
    void tellsWhatIsWrongWithADate() {
        assertThat(refusal(si.read(VESSEL__BUILT_ON, "31.2.2026"))).isEqualTo(Refusal.because(Reason.NO_SUCH_DAY, "2026-02-28"));
        assertThat(refusal(si.read(VESSEL__BUILT_ON, "3/4/2026")))
            .isEqualTo(Refusal.because(Reason.DATE_WITH_TWO_READINGS, "2026-03-04", "2026-04-03"));
        assertThat(refusal(si.read(VESSEL__BUILT_ON, "2026-13-01")).reason()).isEqualTo(Reason.NO_DATE);
        assertThat(refusal(si.read(VESSEL__BUILT_ON, "0226-05-31"))).isEqualTo(Refusal.because(Reason.YEAR, "226"));
        assertThat(si.read(VESSEL__BUILT_ON, "last summer")).isInstanceOf(Reading.Refused.class);
        assertThat(si.read(VESSEL__BUILT_ON, "2026-0")).isInstanceOf(Reading.Begun.class);
    }

    @ParameterizedTest
    @CsvSource({"14:05, 2026-06-01T14:05+02:00", "2026-05-31 14:05, 2026-05-31T14:05+02:00", "31.5.2026 9:30, 2026-05-31T09:30+02:00",
        "2026-05-31T14:05:30Z, 2026-05-31T14:05:30Z", "2026-01-31 14.05 Uhr, 2026-01-31T14:05+01:00", "2026-05-31 14:05 -04:00, 2026-05-31T14:05-04:00"})
    void readsATimeOfDayWithOrWithoutItsDateAndOffset(String text, String moment) {
        assertThat(written(si.read(Literals.READING__AT, text))).isEqualTo(moment);
    }

    @Test
    void writesAMomentSoThatItIsReadAgain() {
        for (String moment : List.of("2026-05-31T14:05:00+02:00", "2026-05-31T14:05:30Z", "2026-12-01T00:00:00-04:00")) {
            var value = java.time.OffsetDateTime.parse(moment);
            assertThat(si.read(Literals.READING__AT, si.written(Literals.READING__AT, value))).isEqualTo(new Reading.Entered(value, Optional.empty()));
        }
    }

    @Test
    void refusesNoTimeOfDay() {
        assertThat(refusal(si.read(Literals.READING__AT, "25:00")).reason()).isEqualTo(Reason.NO_TIME);
        assertThat(refusal(si.read(Literals.READING__AT, "2026-02-30 10:00")).reason()).isEqualTo(Reason.NO_SUCH_DAY);
        assertThat(si.read(Literals.READING__AT, "14:0")).isInstanceOf(Reading.Begun.class);
        assertThat(si.read(Literals.READING__AT, "2026-05-31")).isInstanceOf(Reading.Begun.class);
    }

    @Test
    void readsChoicesByTheirNameAndTheFirstOfThemAsNothing() {
        assertThat(si.read(VESSEL__HULL_KIND, "Sailing monohull")).isEqualTo(new Reading.Entered(HullKind.SAILING_MONOHULL, Optional.empty()));
        assertThat(si.read(VESSEL__HULL_KIND, "not-entered")).isEqualTo(new Reading.Empty());
        assertThat(refusal(si.read(VESSEL__HULL_KIND, "raft")).reason()).isEqualTo(Reason.NO_CHOICE);
    }

    @Test
    void takesAnyText() {
        assertThat(written(si.read(VESSEL__NAME, "3/4 in"))).isEqualTo("3/4 in");
        assertThat(si.read(VESSEL__NAME, "  ")).isEqualTo(new Reading.Empty());
    }

    // 1 in = 25.4 mm and 1 psi = 6.894757 kPa, NIST SP 811, appendix B.8
    @ParameterizedTest
    @CsvSource({"3/4 in, 19.1 mm", "19 mm, 0.748 in", "1 m, 39.4 in"})
    void convertsALengthIntoTheOtherSystem(String given, String converted) {
        assertThat(si.converted(WATER_HOSE_RUN__BORE, Length.valueOf(given))).contains(converted);
        assertThat(us.converted(WATER_HOSE_RUN__BORE, Length.valueOf(given))).contains(converted);
    }

    // 12 ft = 3.6576 m, NIST SP 811
    @Test
    void convertsIntoTheUnitThatPeopleUseForTheField() {
        assertThat(si.converted(VESSEL__BEAM, Length.valueOf("12 ft"))).contains("3.66 m");
        assertThat(si.converted(VESSEL__BEAM, Length.valueOf("3.6576 m"))).contains("12 ft");
    }

    @Test
    void convertsNothingWhereThereIsNothingNewToSay() {
        assertThat(si.converted(STARTING_BATTERY__RESTED_VOLTAGE, garboard.quantity.Voltage.valueOf("12.7 V"))).isEmpty();
        assertThat(si.converted(STARTING_BATTERY__RESTED_VOLTAGE, garboard.quantity.Voltage.valueOf("900 mV"))).isEmpty();
        assertThat(si.converted(GENERATOR_SET__RATED_POWER_FACTOR, Ratio.valueOf("0.8"))).isEmpty();
        assertThat(si.converted(VESSEL__NAME, "3/4 in")).isEmpty();
    }

    @Test
    void tellsAFractionAsPerCentAndPerCentAsAPlainNumberWhereThatIsCustomary() {
        assertThat(si.converted(EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD, Ratio.valueOf("0.8"))).contains("80 %");
        assertThat(si.converted(GENERATOR_SET__RATED_POWER_FACTOR, Ratio.valueOf("80 %"))).contains("0.8");
    }

    @Test
    void tellsUsCustomaryUnitsFromMetricOnes() {
        assertThat(List.of("in", "psi", "inHg", "gal/min", "lb/(hp.h)", "degF", "ft3/min", "sq in", "US gal/h", "fl oz", "in/ft"))
            .allMatch(Conversions::isUs);
        assertThat(List.of("mm", "kPa", "L/min", "degC", "mH2O", "min", "g/kWh", "%", "V", "m3/h", "kn", "mm/m", "nmi")).noneMatch(Conversions::isUs);
    }

    /** Every unit of every kind can be converted without an error. */
    @Test
    void convertsEveryUnitOfEveryField() {
        for (var classifier : garboard.model.GarboardPackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof org.eclipse.emf.ecore.EClass type) {
                for (EAttribute field : type.getEAttributes()) {
                    garboard.quantity.Kind.ofType(field.getEAttributeType().getInstanceClass()).ifPresent(kind -> kind.units().forEach(unit -> {
                        Quantity<?> value = kind.of(1, unit);
                        assertThat(si.converted(field, value).orElse("1 " + unit)).matches("-?[\\d.eE+-]+( .+)?");
                    }));
                }
            }
        }
    }
}

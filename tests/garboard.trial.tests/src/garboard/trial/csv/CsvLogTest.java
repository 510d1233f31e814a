// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import garboard.trial.log.AcLine;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.Measurand;
import garboard.trial.log.Mishap;
import garboard.trial.testing.Collected;

/** Tables made up here; conversions: 1 bar = 100 kPa, 0 degC = 273.15 K, 1 r/min = 2 pi/60 rad/s (SI brochure). */
class CsvLogTest {

    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private static Collected read(ZoneId zone, String... lines) {
        CsvMapping mapping = CsvProposal.of(List.of(lines), zone).orElseThrow().mapping();
        return Collected.from(new CsvLogReader(LogOptions.NONE, mapping), lines);
    }

    private static long ns(String instant) {
        return LogStamps.ns(Instant.parse(instant));
    }

    @Test
    void readsATableWithUnitsInItsHeadings() {
        Collected log = read(ZoneOffset.UTC, "# recorder: made up",
            "time,gen.voltage[V],gen.current[A],gen.power[kW],engine.speed[rpm],coolant[degC],heel[deg]",
            "2026-03-05T10:30:15.000Z,229.3,36.6,7.98,1500,86.1,-12.5", "2026-03-05T11:30:16.000+01:00,229.2,,7.97,1501.25,86.1,-8.9");
        assertThat(log.values(Measurand.AC_VOLTAGE)).containsExactly(229.3, 229.2);
        assertThat(log.values(Measurand.AC_CURRENT)).containsExactly(36.6);
        assertThat(log.values(Measurand.AC_POWER)).containsExactly(7980.0, 7970.0);
        assertThat(log.values(Measurand.ENGINE_SPEED).get(0)).isCloseTo(157.0796327, within(1e-6));
        assertThat(log.values(Measurand.COOLANT_TEMPERATURE).get(0)).isCloseTo(359.25, within(1e-9));
        assertThat(log.values(Measurand.HEEL).get(0)).isCloseTo(-0.2181662, within(1e-7));
        assertThat(log.readings().get(log.readings().size() - 1).timeNs()).isEqualTo(ns("2026-03-05T10:30:16Z"));
        assertThat(log.tally().of(Mishap.NOT_AVAILABLE)).isEqualTo(1);
    }

    @Test
    void readsSemicolonsDecimalCommasAndDatesOfTheirOwn() {
        Collected log = read(BERLIN, "\uFEFFDatum;Uhrzeit;Spannung L1 (V);Öldruck (bar);Kühlwasser °C", "05.03.2026;11:30:15,250;231,4;4,1;86,1",
            "05.03.2026;11:30:16,250;231,5;4,0;86,2");
        assertThat(log.values(Measurand.AC_VOLTAGE)).containsExactly(231.4, 231.5);
        assertThat(log.readings().get(0).channel().line()).isEqualTo(AcLine.L1);
        assertThat(log.values(Measurand.OIL_PRESSURE).get(0)).isCloseTo(410_000, within(1e-6));
        assertThat(log.values(Measurand.COOLANT_TEMPERATURE).get(1)).isCloseTo(359.35, within(1e-9));
        // central European time, one hour ahead in March
        assertThat(log.readings().get(0).timeNs()).isEqualTo(ns("2026-03-05T10:30:15.250Z"));
    }

    @Test
    void readsTheDaysOfASpreadsheet() {
        // 46086.5 days after 1899-12-30 is noon of 2026-03-05: 1970-01-01 is day 25569, and 20517 days later is 2026-03-05
        Collected log = read(ZoneOffset.ofHours(-5), "Time,Frequency [Hz]", "46086.5,60.02", "46086.5000115741,60.03");
        assertThat(log.readings().get(0).timeNs()).isEqualTo(ns("2026-03-05T17:00:00Z"));
        assertThat(log.readings().get(1).timeNs()).isCloseTo(ns("2026-03-05T17:00:01Z"), within(5_000L)); // ten decimals of a day: 8.64 us
    }

    @Test
    void readsSecondsFromTheStart() {
        String[] lines = {"elapsed time,Voltage V", "0.0,230.1", "0.5,230.2"};
        CsvMapping mapping = CsvProposal.of(List.of(lines), ZoneOffset.UTC).orElseThrow().mapping();
        Collected log = Collected.from(new CsvLogReader(LogOptions.NONE, mapping), lines);
        assertThat(log.tally().isTimeRelative()).isTrue();
        assertThat(log.readings().get(1).timeNs()).isEqualTo(500_000_000L);
        Collected dated = Collected.from(new CsvLogReader(LogOptions.NONE.startingAt(Instant.parse("2026-03-05T10:00:00Z")), mapping), lines);
        assertThat(dated.tally().isTimeRelative()).isFalse();
        assertThat(dated.readings().get(1).timeNs()).isEqualTo(ns("2026-03-05T10:00:00.500Z"));
    }

    @Test
    void refusesALocalTimeThatExistsTwiceOrNotAtAll() {
        // Clocks in central Europe go back on 2026-10-25 at 3 h and forward on 2026-03-29 at 2 h (last Sundays of the months, Directive 2000/84/EC)
        String[] lines = {"time,Voltage [V]", "2026-10-25 01:30:00,230.1", "2026-10-25 02:30:00,230.2", "2026-03-29 02:30:00,230.3",
            "2026-10-25 02:30:00+01:00,230.4"};
        Collected log = read(BERLIN, lines);
        assertThat(log.values(Measurand.AC_VOLTAGE)).containsExactly(230.1, 230.4);
        assertThat(log.tally().of(Mishap.AMBIGUOUS_TIME)).isEqualTo(2);
        assertThat(log.tally().firstLine(Mishap.AMBIGUOUS_TIME)).isEqualTo(3);
        assertThat(log.tally().sentences()).anyMatch(sentence -> sentence.contains("Give the offset"));
    }

    @Test
    void keepsAStrayQuoteFromSwallowingTheRest() {
        Collected log = read(ZoneOffset.UTC, "time,Voltage [V]", "2026-03-05T10:30:15Z,230.1", "2026-03-05T10:30:16Z,\"230.2",
            "2026-03-05T10:30:17Z,230.3");
        assertThat(log.values(Measurand.AC_VOLTAGE)).containsExactly(230.1, 230.3);
        assertThat(log.tally().of(Mishap.UNREADABLE_LINE)).isEqualTo(1);
    }

    @Test
    void tellsRowsThatAreTooWideTooNarrowOrNoNumbers() {
        Collected log = read(ZoneOffset.UTC, "time,Voltage [V],Current [A]", "2026-03-05T10:30:15Z,230,1,4,5", "2026-03-05T10:30:16Z,230.2",
            "2026-03-05T10:30:17Z,OL,n/a", "2026-03-05T10:30:18Z,about 230,4.5", "yesterday,230.1,4.5", "2026-03-05T10:30:19Z,1e999,4.5");
        assertThat(log.values(Measurand.AC_VOLTAGE)).containsExactly(230.2);
        assertThat(log.values(Measurand.AC_CURRENT)).containsExactly(4.5, 4.5);
        assertThat(log.tally().of(Mishap.UNREADABLE_LINE)).isEqualTo(1);
        assertThat(log.tally().of(Mishap.NOT_AVAILABLE)).isEqualTo(3);
        assertThat(log.tally().of(Mishap.UNREADABLE_VALUE)).isEqualTo(2);
        assertThat(log.tally().of(Mishap.UNREADABLE_TIME)).isEqualTo(1);
    }

    @Test
    void countsTemperaturesBelowAbsoluteZeroAsImpossible() {
        Collected log = read(ZoneOffset.UTC, "time,Coolant [degC]", "2026-03-05T10:30:15Z,-300", "2026-03-05T10:30:16Z,-200",
            "2026-03-05T10:30:17Z,80");
        assertThat(log.values(Measurand.COOLANT_TEMPERATURE)).hasSize(1);
        assertThat(log.tally().of(Mishap.IMPOSSIBLE)).isEqualTo(2);
    }

    @Test
    void readsNothingWhereTheHeadingsDoNotCome() {
        CsvMapping mapping = CsvProposal.of(List.of("time,Voltage [V]", "2026-03-05T10:30:15Z,230.1"), ZoneOffset.UTC).orElseThrow().mapping();
        Collected log = Collected.from(new CsvLogReader(LogOptions.NONE, mapping), "time,Current [A]", "2026-03-05T10:30:15Z,4.5");
        assertThat(log.readings()).isEmpty();
        assertThat(log.tally().of(Mishap.UNREADABLE_LINE)).isEqualTo(2);
    }

    @Test
    void doesNotTakeANumberWithoutUnitForAMeasurement() {
        CsvProposal proposal = CsvProposal.of(List.of("time,Voltage,Oil pressure [V],Current [A],Current (A)",
            "2026-03-05T10:30:15Z,230.1,4.1,3.5,3.6"), ZoneOffset.UTC).orElseThrow();
        assertThat(proposal.mapping().columns()).extracting(CsvColumn::heading).containsExactly("Current [A]", "Current (A)");
        assertThat(proposal.doubts()).containsExactly("What these columns hold, or in which unit, is not clear: Voltage, Oil pressure [V].",
            "These columns seem to hold the same: Current [A], Current (A).");
    }

    @Test
    void asksWhetherTheDayOrTheMonthComesFirst() {
        List<String> lines = List.of("date,time,Voltage [V]", "03/04/2026,10:30:15 PM,120.1");
        CsvProposal proposal = CsvProposal.of(lines, ZoneOffset.UTC).orElseThrow();
        assertThat(proposal.mapping().time().order()).isEqualTo(LogStamps.DateOrder.MONTH_DAY_YEAR);
        assertThat(proposal.doubts()).anyMatch(doubt -> doubt.contains("03/04/2026"));
        Collected log = Collected.from(new CsvLogReader(LogOptions.NONE, proposal.mapping()), lines.toArray(String[]::new));
        assertThat(log.readings().get(0).timeNs()).isEqualTo(ns("2026-03-04T22:30:15Z"));
    }

    @Test
    void seesByADayAboveTwelveThatItComesFirst() {
        CsvProposal proposal = CsvProposal.of(List.of("date,time,Voltage [V]", "03/04/2026,10:30:15,120.1", "13/04/2026,10:30:15,120.1"),
            ZoneOffset.UTC).orElseThrow();
        assertThat(proposal.mapping().time().order()).isEqualTo(LogStamps.DateOrder.DAY_MONTH_YEAR);
    }

    @Test
    void proposesNothingForATextOrATableWithoutTime() {
        assertThat(CsvProposal.of(List.of("Dear all,", "the trial went well, thank you."), ZoneOffset.UTC)).isEmpty();
        assertThat(CsvProposal.of(List.of("Voltage [V],Current [A]", "230.1,4.5"), ZoneOffset.UTC)).isEmpty();
        assertThat(CsvProposal.of(List.of(), ZoneOffset.UTC)).isEmpty();
    }

    @Test
    void readsUnitsInAllTheirPlaces() {
        assertThat(Stream.of("gen.voltage[V]", "Coolant (°C)", "speed_rpm", "Oil pressure psi", "L2 current [A]", "Phase 3 voltage (V)",
            "cos phi", "raw water flow L/min",
            "Fuel rate [l/h]", "back pressure [mbar]", "exhaust temp °F", "Power [kW]", "Reactive power [kvar]", "CO [ppm]")
                .map(heading -> CsvHeading.read(0, heading).orElseThrow())
            .map(column -> column.measurand() + " " + column.unit() + " " + column.line()))
            .containsExactly("AC_VOLTAGE V NONE", "COOLANT_TEMPERATURE °C NONE", "ENGINE_SPEED rpm NONE", "OIL_PRESSURE psi NONE",
                "AC_CURRENT A L2", "AC_VOLTAGE V L3",
                "POWER_FACTOR 1 NONE", "RAW_WATER_FLOW L/min NONE", "FUEL_RATE l/h NONE", "EXHAUST_BACK_PRESSURE mbar NONE",
                    "EXHAUST_TEMPERATURE °F NONE", "AC_POWER kW NONE",
                "AC_REACTIVE_POWER kvar NONE", "CARBON_MONOXIDE ppm NONE");
    }

    @Test
    void refusesAMappingThatCannotBe() {
        assertThatThrownBy(() -> new CsvColumn(1, "Oil", Measurand.OIL_PRESSURE, "V", AcLine.NONE)).isInstanceOf(IllegalArgumentException.class)
            .hasMessageStartingWith("column Oil: V is no unit of a gauge pressure; right would be kPa, bar");
        assertThatThrownBy(() -> new CsvColumn(1, "Oil", Measurand.OIL_PRESSURE, "", AcLine.NONE))
            .hasMessageContaining("no unit of a gauge pressure");
        CsvTime time = new CsvTime(CsvTime.Form.TOGETHER, 0, 0, LogStamps.DateOrder.YEAR_MONTH_DAY, ZoneOffset.UTC);
        assertThatThrownBy(() -> new CsvMapping(',', ',', List.of("time"), time, List.of())).hasMessageContaining("cannot be the decimal sign");
        assertThatThrownBy(() -> new CsvMapping(',', '.', List.of("time"), time,
            List.of(new CsvColumn(1, "U", Measurand.AC_VOLTAGE, "V", AcLine.NONE))))
            .hasMessageContaining("beyond the last");
    }
}

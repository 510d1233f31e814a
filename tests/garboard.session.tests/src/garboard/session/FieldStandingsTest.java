// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.checks.Catalogue;
import garboard.checks.Standing;
import garboard.examples.Examples;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.StartingBattery;
import garboard.model.io.RecordFile;
import garboard.practice.HandbookPractice;
import garboard.practice.SmallCraftStandards;
import garboard.quantity.Length;

class FieldStandingsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-01T08:00:00Z"), ZoneOffset.UTC);
    private OpenRecord open;

    @BeforeEach
    void openNew() {
        var record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        open = OpenRecord.of(RecordFile.of(record), Optional.empty(), Catalogue.of(new HandbookPractice(), new SmallCraftStandards()), CLOCK);
    }

    private Field field(String key) {
        return open.field(key).orElseThrow();
    }

    private FieldStandings standings() {
        return open.verdicts().byField();
    }

    @Test
    void marksAFieldThatACheckLacks() {
        open.edits().set(field("rawWater.injection.z"), Length.valueOf("0 mm"), "");
        open.edits().set(field("rawWater.siphonBreak.bore"), Length.valueOf("19 mm"), "");
        assertThat(standings().worst(field("rawWater.siphonBreak.ventSeat.z"))).contains(Standing.CANNOT_TELL);
    }

    @Test
    void doesNotMarkAFieldThatIsEnteredForWhatElseIsLacking() {
        open.edits().set(field("rawWater.siphonBreak.ventSeat.z"), Length.valueOf("600 mm"), "");
        assertThat(standings().concerning(field("rawWater.siphonBreak.ventSeat.z"))).extracting(garboard.checks.Verdict::standing)
            .doesNotContain(Standing.CANNOT_TELL);
    }

    @Test
    void keepsTheVerdictOnOneItemFromTheFieldsOfAnother() {
        for (String name : new String[] {"one", "two"}) {
            CableRun cable = GarboardFactory.eINSTANCE.createCableRun();
            cable.setName(name);
            open.edits().add(open.record(), java.util.List.of(Literals.COMMISSIONING_RECORD__STARTING_BATTERY, Literals.STARTING_BATTERY__CABLES), cable, "");
        }
        StartingBattery battery = open.record().getStartingBattery();
        CableRun one = battery.getCables().get(0);
        CableRun two = battery.getCables().get(1);
        open.edits().set(field("vessel.gasolineEngineAboard"), Answer.NO, "");
        open.edits().set(Field.of(one, Literals.CABLE_RUN__CHAFE_PROTECTED), Answer.NO, "");
        Field ofOne = Field.of(one, Literals.CABLE_RUN__CHAFE_PROTECTED);
        Field ofTwo = Field.of(two, Literals.CABLE_RUN__CHAFE_PROTECTED);
        assertThat(standings().concerning(ofTwo)).isNotEmpty().noneMatch(verdict -> verdict.subject() == one);
        assertThat(standings().concerning(ofOne)).isNotEmpty().noneMatch(verdict -> verdict.subject() == two);
    }

    @Test
    void followsAnEdit() {
        Field secured = field("startingBattery.secured");
        open.edits().set(secured, Answer.NO, "");
        assertThat(standings().worst(secured)).contains(Standing.FALLS_SHORT);
        open.edits().set(secured, Answer.YES, "");
        assertThat(standings().worst(secured).filter(Standing.FALLS_SHORT::equals)).isEmpty();
    }

    @Test
    void doesNotReproachAFieldWithAShortfallElsewhere() throws Exception {
        try (var in = Examples.all().getFirst().open()) {
            open = OpenRecord.of(RecordFile.read(in, "example"), Optional.empty(), Catalogue.of(new HandbookPractice()), CLOCK);
        }
        // The scoop of this example faces forward, which is wrong at speed.
        assertThat(standings().concerning(field("vessel.speed"))).anyMatch(verdict -> verdict.standing() == Standing.FALLS_SHORT);
        assertThat(standings().worst(field("vessel.speed")).filter(Standing.FALLS_SHORT::equals)).isEmpty();
        assertThat(standings().worst(field("rawWater.pickUp.kind"))).contains(Standing.FALLS_SHORT);
    }

    @Test
    void doesNotReproachOneCableWithWhatCablesDoTogether() throws Exception {
        try (var in = Examples.all().getFirst().open()) {
            open = OpenRecord.of(RecordFile.read(in, "example"), Optional.empty(), Catalogue.of(new HandbookPractice()), CLOCK);
        }
        CableRun feedPump = open.record().getStartingBattery().getCables().stream()
            .filter(cable -> cable.getFunction() == garboard.model.CableFunction.FUEL_PUMP).findFirst().orElseThrow();
        Field length = Field.of(feedPump, Literals.CABLE_RUN__LENGTH);
        assertThat(standings().concerning(length)).noneMatch(verdict -> verdict.subject() == open.record().getAcOutput());
        assertThat(standings().at(length)).isNotEmpty().allMatch(verdict -> verdict.subject() == feedPump);
    }

    @Test
    void tellsOnePlaceOnTheBoatFromAnother() throws Exception {
        try (var in = Examples.all().getFirst().open()) {
            open = OpenRecord.of(RecordFile.read(in, "example"), Optional.empty(), Catalogue.of(new HandbookPractice()), CLOCK);
        }
        // The siphon break of this example goes under water when the boat heels; its strainer stands where it should.
        assertThat(standings().worst(field("rawWater.siphonBreak.ventSeat.z"))).contains(Standing.FALLS_SHORT);
        assertThat(standings().concerning(field("rawWater.strainer.position.z"))).noneMatch(verdict -> verdict.check().id().startsWith("SIPHON"));
        assertThat(standings().concerning(field("exhaust.crest.insideBottom.z"))).isNotEmpty()
            .noneMatch(verdict -> verdict.check().id().startsWith("SIPHON"));
    }

    @Test
    void tellsTheWorstStandingOfAPartAndAllBelowIt() {
        open.edits().set(field("startingBattery.secured"), Answer.NO, "");
        assertThat(standings().worstOf(open.record().getStartingBattery())).contains(Standing.FALLS_SHORT);
        assertThat(standings().worstOf(open.record())).contains(Standing.FALLS_SHORT);
    }

    @Test
    void tellsFieldsThatNoCheckReads() {
        assertThat(standings().worst(field("vessel.flag"))).isEmpty();
        assertThat(standings().isBeside(field("vessel.flag"))).isFalse();
    }
}

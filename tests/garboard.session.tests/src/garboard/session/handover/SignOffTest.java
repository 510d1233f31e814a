// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import garboard.checks.Gravity;
import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.Cooling;
import garboard.quantity.ApparentPower;
import garboard.session.OpenRecord;
import garboard.session.handover.OpenPoint.Matter;
import garboard.session.handover.OpenPoint.Topic;

class SignOffTest {

    private static SignOff signOff(OpenRecord open) {
        return SignOff.of(open, Handed.CLOCK);
    }

    private static List<String> told(SignOff signOff, Topic topic) {
        return signOff.at(topic).stream().map(point -> point.matter() + " " + point.place().orElse("")).toList();
    }

    private static List<String> checks(SignOff signOff, Topic topic) {
        return signOff.at(topic).stream().flatMap(point -> point.verdict().stream()).map(verdict -> verdict.check().id()).toList();
    }

    // What a warranty desk would send back, read in the example records themselves.

    @Test
    void ofThePetrolSetAsksForTheDangersTheUntestedShutdownAndThePictures() {
        SignOff signOff = signOff(Handed.example("motor-cruiser"));

        assertThat(checks(signOff, Topic.DANGER)).contains("VENT-BLOWER-LABEL-183-610", "EXHAUST-CLAMPS", "FUEL-SEPARATOR-BOWL",
            "FUEL-FILTER-FIRE-183-534", "FUEL-LEAK-TEST-183-542", "AC-INSULATION");
        assertThat(checks(signOff, Topic.SHORTFALLS)).contains("SIPHON-HEIGHT-UPRIGHT", "RAWWATER-PICK-UP-DIRECTION", "FUEL-RAIL-PRESSURE");
        // Overspeed was marked as not tested; everything else of the trial was done.
        assertThat(told(signOff, Topic.TRIAL)).containsExactly("SHUTDOWN_NOT_PASSED trial.shutdownTests[alarm-11].testResult");
        // Answers 4, 6 and 8 are "no" and refer to no photograph, answer 7 was left open.
        assertThat(told(signOff, Topic.INSPECTION)).containsExactly("FINDING_WITHOUT_PICTURE inspections[answer-4]",
            "FINDING_WITHOUT_PICTURE inspections[answer-6]", "QUESTION_OPEN inspections[answer-7].answer", "FINDING_WITHOUT_PICTURE inspections[answer-8]");
        assertThat(signOff.at(Topic.REGISTRATION)).isEmpty();
        assertThat(signOff.at(Topic.IMPELLER)).isEmpty();
        assertThat(signOff.isClear()).isFalse();
        assertThat(signOff.isBarred()).isFalse();
    }

    @Test
    void ofThePassengerBoatAsksForTheClampTheBreakerAndTheDeclaredOverload() {
        SignOff signOff = signOff(Handed.example("passenger-boat"));

        assertThat(checks(signOff, Topic.DANGER)).contains("RAWWATER-CLAMPS-182-410");
        assertThat(checks(signOff, Topic.SHORTFALLS)).contains("AC-DEVICE-RATING-183-320", "BATTERY-BLOCK-SPREAD");
        // The plate declares an overload, and no step of 110 % was run.
        assertThat(signOff.at(Topic.TRIAL)).singleElement()
            .satisfies(point -> assertThat(point.matter()).isEqualTo(Matter.LOADS_MISSING))
            .satisfies(point -> assertThat(point.facts()).containsExactly("110 %"));
        assertThat(told(signOff, Topic.INSPECTION)).containsExactly("FINDING_WITHOUT_PICTURE inspections[answer-4]",
            "FINDING_WITHOUT_PICTURE inspections[answer-5]");
        assertThat(signOff.at(Topic.REGISTRATION)).isEmpty();
    }

    @Test
    void ofTheRefittedYachtKnowsTheAcceptedShortfallAndTheBorderlineVacuum() {
        SignOff signOff = signOff(Handed.example("sailing-yacht"));

        assertThat(signOff.at(Topic.DANGER)).isEmpty();
        assertThat(checks(signOff, Topic.SHORTFALLS)).contains("EXHAUST-SUBMERGED-OUTLET-CREST", "EXHAUST-BACK-PRESSURE-DRIFT");
        assertThat(signOff.at(Topic.TRIAL)).isEmpty();
        assertThat(checks(signOff, Topic.TO_KNOW)).contains("FUEL-SEPARATOR-CLEARANCE", "FUEL-VACUUM-CLEAN");
        assertThat(told(signOff, Topic.TO_KNOW)).contains("INSTRUMENT_NOT_CALIBRATED instruments[instrument-5].calibratedOn");
    }

    @Test
    void ofAnEmptyRecordAsksForPlatesPartiesTrialAndPicturesWithoutDrowningThem() {
        SignOff signOff = signOff(Handed.empty());

        assertThat(told(signOff, Topic.REGISTRATION)).contains("NOT_ENTERED generatorSet.serialNumber", "NOT_ENTERED generatorSet.engineSerialNumber",
            "NOT_ENTERED generatorSet.alternatorSerialNumber", "NOT_ENTERED generatorSet.installedOn", "NOT_ENTERED vessel.identification",
            "NO_OWNER parties", "NO_INSTALLER parties");
        assertThat(told(signOff, Topic.TRIAL)).containsExactly("NO_TRIAL trial.date");
        assertThat(told(signOff, Topic.INSPECTION)).containsExactly("NO_PHOTOGRAPHS photographs");
        assertThat(told(signOff, Topic.IMPELLER)).containsExactly("IMPELLER_NOT_COUNTED rawWater.pump.impellerPiecesMissing");
        // More than a hundred checks of danger lack their system; they are told system by system.
        assertThat(signOff.count(Topic.DANGER)).isGreaterThan(100);
        assertThat(signOff.at(Topic.DANGER)).hasSizeLessThan(15);
    }

    @Test
    void countsChecksThatAreToldTogetherOneByOne() {
        OpenRecord open = Handed.empty();
        long untold = open.verdicts().evaluation().with(Standing.CANNOT_TELL).stream()
            .filter(verdict -> verdict.check().gravity() == Gravity.DANGER_TO_PEOPLE).count();
        assertThat(signOff(open).count(Topic.DANGER)).isEqualTo((int) untold);
    }

    // Single points ---------------------------------------------------------------------------------------------------

    @Test
    void tellsATextThatCannotBeReadOnceAndNotAsMissing() {
        OpenRecord open = Handed.empty();
        open.edits().typing(Handed.field(open, "generatorSet.ratedPower"), "").leaveUnread("eight-ish");
        SignOff signOff = signOff(open);
        assertThat(signOff.at(Topic.UNREAD)).singleElement().satisfies(point -> {
            assertThat(point.place()).contains("generatorSet.ratedPower");
            assertThat(point.facts()).containsExactly("eight-ish");
        });
        assertThat(told(signOff, Topic.REGISTRATION)).doesNotContain("NOT_ENTERED generatorSet.ratedPower");
    }

    @Test
    void asksForThePowerInKilowattOrInKilovoltampere() {
        OpenRecord open = Handed.empty();
        open.edits().set(Handed.field(open, "generatorSet.ratedApparentPower"), ApparentPower.valueOf("10 kVA"), "");
        assertThat(told(signOff(open), Topic.REGISTRATION)).doesNotContain("NOT_ENTERED generatorSet.ratedPower");
    }

    @Test
    void asksForTheContactOfTheOwnerAndTheLicenceOfTheInstaller() {
        OpenRecord open = Handed.example("motor-cruiser");
        open.edits().clear(Handed.field(open, "parties[party-1].contact"), "");
        open.edits().clear(Handed.field(open, "parties[party-2].licence"), "");
        assertThat(told(signOff(open), Topic.REGISTRATION)).containsExactly("NOT_ENTERED parties[party-1].contact",
            "NOT_ENTERED parties[party-2].licence");
    }

    @Test
    void asksAgainForATrialThatIsOlderThanTheInstallation() {
        OpenRecord open = Handed.example("motor-cruiser");
        LocalDate trial = open.record().getTrial().getDate();
        open.edits().set(Handed.field(open, "generatorSet.installedOn"), trial.plusDays(1), "");
        assertThat(signOff(open).at(Topic.REGISTRATION)).singleElement().satisfies(point -> {
            assertThat(point.matter()).isEqualTo(Matter.DAYS_CROSSED);
            assertThat(point.place()).contains("trial.date");
            assertThat(point.facts()).containsExactly(trial.toString(), trial.plusDays(1).toString(), "generatorSet.installedOn");
        });
    }

    @Test
    void asksAgainForADayInTheFuture() {
        OpenRecord open = Handed.example("motor-cruiser");
        open.edits().set(Handed.field(open, "trial.date"), Handed.TODAY.plusDays(1), "");
        assertThat(told(signOff(open), Topic.REGISTRATION)).containsExactly("FUTURE_DAY trial.date");
        open.edits().set(Handed.field(open, "trial.date"), Handed.TODAY, "");
        assertThat(signOff(open).at(Topic.REGISTRATION)).isEmpty();
    }

    @Test
    void wantsEveryPieceOfTheImpellerFound() {
        OpenRecord open = Handed.example("motor-cruiser");
        open.edits().set(Handed.field(open, "rawWater.pump.impellerPiecesMissing"), 3, "");
        open.edits().set(Handed.field(open, "rawWater.pump.impellerPiecesFound"), 2, "");
        SignOff signOff = signOff(open);
        assertThat(signOff.at(Topic.IMPELLER)).singleElement().satisfies(point -> assertThat(point.facts()).containsExactly("3", "2"));
        assertThat(checks(signOff, Topic.SHORTFALLS)).doesNotContain("RAWWATER-IMPELLER-PIECES");
        open.edits().set(Handed.field(open, "rawWater.pump.impellerPiecesFound"), 3, "");
        assertThat(signOff(open).at(Topic.IMPELLER)).isEmpty();
    }

    @Test
    void asksNobodyToCountTheVanesOfASetCooledByItsKeel() {
        OpenRecord open = Handed.empty();
        open.edits().set(Handed.field(open, "generatorSet.cooling"), Cooling.KEEL_COOLED, "");
        assertThat(signOff(open).at(Topic.IMPELLER)).isEmpty();
    }

    @Test
    void asksForTheSeaRunAndTellsThatWaterCameIn() {
        OpenRecord open = Handed.example("motor-cruiser");
        open.edits().set(Handed.field(open, "trial.seaRun.waterInMuffler"), Answer.YES, "");
        assertThat(told(signOff(open), Topic.TRIAL)).contains("SEA_RUN_WATER_CAME_IN trial.seaRun.waterInMuffler");
        open.edits().remove(List.of(open.record().getTrial().getSeaRun()), "");
        assertThat(told(signOff(open), Topic.TRIAL)).contains("NO_SEA_RUN trial.seaRun.date");
    }

    @Test
    void asksForAStartThatFiredAndForReadingsAtEachLoad() {
        OpenRecord open = Handed.example("passenger-boat");
        open.edits().remove(List.copyOf(open.record().getTrial().getAttempts()), "");
        open.edits().remove(List.copyOf(open.record().getTrial().getLoadSteps().getFirst().getReadings()), "");
        assertThat(signOff(open).at(Topic.TRIAL)).extracting(OpenPoint::matter)
            .contains(Matter.NO_START, Matter.LOAD_WITHOUT_READINGS);
    }

    @Test
    void isClearWhenNothingStandsInTheWay() {
        OpenRecord open = Handed.example("sailing-yacht");
        var points = new SignOff(signOff(open).at(Topic.TO_KNOW));
        assertThat(points.points()).isNotEmpty();
        assertThat(points.isClear()).isTrue();
        assertThat(points.hindered()).isEmpty();
    }

    @Test
    void isBarredByACheckThatBroke() {
        SignOff signOff = signOff(Handed.withBrokenCheck());
        assertThat(signOff.isBarred()).isTrue();
        assertThat(checks(signOff, Topic.PROGRAM)).containsExactly("SAMPLE-BROKEN");
    }

    @Test
    void tellsAPracticeThatIsNotAtHandWithoutBarringTheSignature() {
        OpenRecord open = Handed.example("sailing-yacht");
        var practices = new ArrayList<>(open.record().getPractices());
        practices.add("harbour-of-nowhere");
        open.edits().set(Handed.field(open, "practices"), practices, "");
        SignOff signOff = signOff(open);
        assertThat(signOff.at(Topic.PROGRAM)).singleElement().satisfies(point -> assertThat(point.facts()).containsExactly("harbour-of-nowhere"));
        assertThat(signOff.isBarred()).isFalse();
        assertThat(signOff.isClear()).isFalse();
    }
}

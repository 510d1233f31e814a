// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.Test;

import garboard.model.ExhaustPoint;
import garboard.model.Point;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;
import garboard.report.drawing.View;
import garboard.report.drawing.Words;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.session.drawing.DrawingState.Nudge;
import garboard.session.files.OpenedRecords;
import garboard.session.verdicts.VerdictKey;

class DrawingStateTest {

    private final OpenRecord open = OpenedRecords.of(OpenedRecords.example("sailing-yacht"), Optional.empty());
    private final DrawingState state = new DrawingState(open, Words.in(Locale.ENGLISH), new ViewMemory());

    private Point seat() {
        return open.record().getRawWater().getSiphonBreak().getVentSeat();
    }

    private Point crest() {
        return open.record().getExhaust().getCrest().getInsideBottom();
    }

    private Point pathAtCrest() {
        return open.record().getExhaust().getPath().stream().map(ExhaustPoint::getPosition).filter(at -> at.getX().si() == crest().getX().si())
            .findFirst().orElseThrow();
    }

    @Test
    void aDragIsOneStepAndKeepsUnitAndAccuracy() {
        Length before = seat().getZ();
        assertThat(before).hasToString("0.62 m \u00b10.01 m");
        PointMove move = state.move("siphonBreak", View.SIDE, UnitSystem.SI, "move").orElseThrow();
        for (int step = 1; step <= 30; step++) {
            move.drag(step * 0.004, OptionalDouble.empty(), 0.001);
        }
        assertThat(seat().getZ()).hasToString("0.74 m \u00b10.01 m"); // 0.62 + 30 x 0.004
        assertThat(seat().getX()).hasToString("-2.35 m \u00b10.01 m");
        assertThat(open.edits().undoLabel()).contains("move");
        open.edits().undo();
        assertThat(seat().getZ()).isEqualTo(before);
        assertThat(open.edits().canUndo()).isFalse();
    }

    @Test
    void withShiftItMovesAcrossTheDrawingToo() {
        PointMove side = state.move("siphonBreak", View.SIDE, UnitSystem.SI, "move").orElseThrow();
        side.drag(0.01, OptionalDouble.of(-0.05), 0.001);
        assertThat(seat().getX().si()).isCloseTo(-2.40, offset(1e-9));
        assertThat(seat().getY().si()).isCloseTo(0.06, offset(1e-9));
        side.drag(0.01, OptionalDouble.empty(), 0.001);
        assertThat(seat().getX()).as("let go of Shift").hasToString("-2.35 m \u00b10.01 m");
        PointMove cross = state.move("siphonBreak", View.CROSS, UnitSystem.SI, "move").orElseThrow();
        cross.drag(0, OptionalDouble.of(0.04), 0.001);
        assertThat(seat().getY().si()).isCloseTo(0.10, offset(1e-9));
        assertThat(seat().getZ().si()).isCloseTo(0.63, offset(1e-9));
    }

    @Test
    void givenUpItIsAsIfNothingHadBeen() {
        PointMove move = state.move("siphonBreak", View.SIDE, UnitSystem.SI, "move").orElseThrow();
        move.drag(0.2, OptionalDouble.of(0.3), 0.001);
        move.giveUp();
        assertThat(seat().getZ()).hasToString("0.62 m \u00b10.01 m");
        assertThat(seat().getX()).hasToString("-2.35 m \u00b10.01 m");
        assertThat(open.edits().canUndo()).isFalse();
        assertThat(open.edits().canRedo()).isFalse();
        assertThat(open.unsaved()).isFalse();
        PointMove again = state.move("siphonBreak", View.SIDE, UnitSystem.SI, "move again").orElseThrow();
        again.drag(0.1, OptionalDouble.empty(), 0.001);
        assertThat(seat().getZ()).hasToString("0.72 m \u00b10.01 m");
        assertThat(open.edits().undoLabel()).contains("move again");
    }

    @Test
    void givingUpTakesNothingBackThatWasDoneSince() {
        PointMove move = state.move("siphonBreak", View.SIDE, UnitSystem.SI, "move").orElseThrow();
        move.drag(0.2, OptionalDouble.empty(), 0.001);
        OpenedRecords.rename(open, "Wren");
        move.giveUp();
        assertThat(open.record().getVessel().getName()).isEqualTo("Wren");
        assertThat(seat().getZ().si()).isCloseTo(0.82, offset(1e-9));
    }

    @Test
    void whatStandsAtTheSamePlaceGoesWithIt() {
        assertThat(pathAtCrest().getZ().si()).isEqualTo(crest().getZ().si());
        PointMove move = state.move("crest", View.SIDE, UnitSystem.SI, "move").orElseThrow();
        assertThat(move.goingWithIt()).hasSize(1);
        move.drag(0.1, OptionalDouble.empty(), 0.001);
        assertThat(crest().getZ().si()).isCloseTo(0.70, offset(1e-9));
        assertThat(pathAtCrest().getZ()).hasToString("0.70 m"); // it was given as 0.60 m without an accuracy
        open.edits().undo();
        assertThat(pathAtCrest().getZ()).hasToString("0.60 m");
        assertThat(crest().getZ()).hasToString("0.60 m \u00b10.01 m");
    }

    @Test
    void theKeyboardMovesByMillimetresAndTens() {
        state.choose(Optional.of("siphonBreak"));
        state.nudge(new Nudge(1, 0, false), View.SIDE, UnitSystem.SI, "move");
        assertThat(seat().getZ()).hasToString("0.621 m \u00b10.01 m");
        state.nudge(new Nudge(1, 0, true), View.SIDE, UnitSystem.SI, "move");
        assertThat(seat().getZ()).hasToString("0.631 m \u00b10.01 m");
        state.nudge(new Nudge(0, -1, false), View.SIDE, UnitSystem.SI, "move");
        assertThat(seat().getX()).hasToString("-2.351 m \u00b10.01 m");
        open.edits().undo();
        assertThat(seat().getZ()).as("one step for all of it").hasToString("0.62 m \u00b10.01 m");
    }

    @Test
    void theKeyboardMovesByEighthsAndInchesWhereThePersonGaveInches() {
        OpenRecord cruiser = OpenedRecords.of(OpenedRecords.example("motor-cruiser"), Optional.empty());
        try (var drawing = new DrawingState(cruiser, Words.ENGLISH, new ViewMemory())) {
            drawing.choose(Optional.of("siphonBreak"));
            drawing.nudge(new Nudge(1, 0, false), View.SIDE, UnitSystem.SI, "move");
            Point seat = cruiser.record().getRawWater().getSiphonBreak().getVentSeat();
            assertThat(seat.getZ()).hasToString("11.625 in \u00b10.25 in"); // from 11.5 in
            drawing.nudge(new Nudge(1, 0, true), View.SIDE, UnitSystem.SI, "move");
            assertThat(seat.getZ()).hasToString("12.625 in \u00b10.25 in");
            drawing.nudge(new Nudge(1, 0, false), View.SIDE, UnitSystem.SI, "move");
            drawing.nudge(new Nudge(1, 0, false), View.SIDE, UnitSystem.SI, "move");
            drawing.nudge(new Nudge(1, 0, false), View.SIDE, UnitSystem.SI, "move");
            assertThat(seat.getZ()).as("no decimals left over from the eighths").hasToString("13.0 in \u00b10.25 in");
        }
    }

    @Test
    void thereIsNothingToMoveWithoutAHeight() {
        crest().setZ(null);
        assertThat(state.move("crest", View.SIDE, UnitSystem.SI, "move")).isEmpty();
        assertThat(state.move("hull", View.SIDE, UnitSystem.SI, "move")).isEmpty();
        state.choose(Optional.of("hull"));
        assertThat(state.nudge(new Nudge(1, 0, false), View.SIDE, UnitSystem.SI, "move")).isEmpty();
    }

    @Test
    void choosesThePartOfAFieldAndKeepsItOtherwise() {
        state.chooseOwnerOf("exhaust.outlet.bore");
        assertThat(state.chosen()).contains("outlet");
        state.chooseOwnerOf("vessel.beam");
        assertThat(state.chosen()).contains("outlet");
    }

    @Test
    void choosesThePartThatAVerdictIsAbout() {
        state.chooseSubjectOf(new VerdictKey("ANY-CHECK", "exhaust.crest"));
        assertThat(state.chosen()).contains("crest");
        state.chooseSubjectOf(new VerdictKey("ANY-CHECK", "startingBattery"));
        assertThat(state.chosen()).contains("crest");
    }

    @Test
    void tellsOfEditsAttitudesAndChoices() {
        var told = new AtomicInteger();
        state.onChange(changed -> told.incrementAndGet());
        state.attitude().set(10, 0, state.arrangement().water());
        assertThat(told.get()).isEqualTo(1);
        state.choose(Optional.of("crest"));
        state.choose(Optional.of("crest"));
        assertThat(told.get()).isEqualTo(2);
        double before = state.arrangement().part("crest").orElseThrow().z().orElseThrow();
        open.edits().set(garboard.session.Field.of(crest(), garboard.model.GarboardPackage.Literals.POINT__Z), Length.valueOf("0.9 m"), "Height");
        assertThat(told.get()).isGreaterThan(2);
        assertThat(state.arrangement().part("crest").orElseThrow().z()).hasValue(0.9).isNotEqualTo(OptionalDouble.of(before));
        state.close();
        int until = told.get();
        OpenedRecords.rename(open, "Wren");
        assertThat(told.get()).isEqualTo(until);
    }

    @Test
    void theWorstAttitudeIsAtTheGreatestHeelTowardsThePointsOwnSide() {
        state.attitude().worst(state.arrangement(), Optional.of("outlet"));
        // The outlet lies to starboard and aft: heel to starboard 30 deg and bow up 2 deg, the angles the example is designed for.
        assertThat(state.attitude().heel()).isCloseTo(30, offset(1e-9));
        assertThat(state.attitude().trim()).isCloseTo(2, offset(1e-9));
        state.attitude().upright(state.arrangement().water());
        assertThat(state.attitude().heel()).isZero();
    }

    @Test
    void withoutAChosenPointTheLowestIsMeant() {
        assertThat(AttitudeChoice.pointInQuestion(state.arrangement(), Optional.of("hull"))).map(part -> part.id()).contains("outlet");
        OpenRecord nothing = OpenedRecords.empty();
        try (var drawing = new DrawingState(nothing, Words.ENGLISH, new ViewMemory())) {
            assertThat(drawing.attitude().worst(drawing.arrangement(), Optional.empty())).isFalse();
        }
    }

    @Test
    void heelGoesNoFartherThanMakesSense() {
        state.attitude().set(500, -500, state.arrangement().water());
        assertThat(state.attitude().heel()).isCloseTo(45, offset(1e-9)); // half as much again as the 30 deg designed for
        assertThat(state.attitude().trim()).isCloseTo(-10, offset(1e-9));
    }

    @Test
    void theStopSaysWhichCircuitIsMeantAndWhichViewIsShown() {
        state.goTo(Stop.EXHAUST);
        assertThat(state.view()).isEqualTo(View.RUNS);
        assertThat(state.showing(UnitSystem.SI, false).about()).isPresent();
        state.choose(View.CROSS);
        state.goTo(Stop.VESSEL);
        assertThat(state.view()).isEqualTo(View.SIDE);
        assertThat(state.showing(UnitSystem.SI, false).about()).isEmpty();
        state.goTo(Stop.EXHAUST);
        assertThat(state.view()).isEqualTo(View.CROSS);
    }
}

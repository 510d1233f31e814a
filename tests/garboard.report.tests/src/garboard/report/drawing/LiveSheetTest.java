// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.RecordPath;
import garboard.report.DrawnSample;

class LiveSheetTest {

    private final CommissioningRecord sample = DrawnSample.record();

    @Test
    void marksLieAsFarApartAsThePointsDo() {
        LiveSheet sheet = LiveSample.sheet(LiveSample.twoPoints(0.7, -0.3), View.SIDE, 120, 60);
        Point2D seat = LiveSample.spot(sheet, "siphonBreak").mark().orElseThrow();
        Point2D pickUp = LiveSample.spot(sheet, "pickUp").mark().orElseThrow();
        double scale = sheet.scaleAt(seat.getX(), seat.getY()).orElseThrow().metresUp();
        // 0.7 m above and 0.3 m below the waterline are 1 m apart; up is up
        assertThat((pickUp.getY() - seat.getY()) * scale).isCloseTo(1, offset(1e-9));
        assertThat(seat.getX()).isEqualTo(pickUp.getX());
    }

    @Test
    void elevationsHaveOneScaleBothWaysAndRunsAreNotMovedAlong() {
        LiveSheet side = LiveSample.sheet(sample, View.SIDE, 120, 60);
        Point2D at = LiveSample.spot(side, "crest").mark().orElseThrow();
        LiveSheet.Scale scale = side.scaleAt(at.getX(), at.getY()).orElseThrow();
        assertThat(scale.metresAcross()).hasValue(scale.metresUp());
        LiveSheet runs = LiveSample.sheet(sample, View.RUNS, 120, 60);
        Point2D on = runs.spots().getFirst().mark().orElseThrow();
        assertThat(runs.scaleAt(on.getX(), on.getY()).orElseThrow().metresAcross()).isEmpty();
    }

    @Test
    void aPressOnAMarkOrANameFindsThePartAndTheFieldOfItsHeight() {
        LiveSheet sheet = LiveSample.sheet(sample, View.SIDE, 140, 60);
        Spot crest = LiveSample.spot(sheet, "crest");
        Point2D at = crest.mark().orElseThrow();
        assertThat(sheet.spotAt(at.getX() + 1, at.getY() - 1)).map(Spot::id).contains("crest");
        assertThat(crest.field()).isEqualTo("exhaust.crest.insideBottom.z");
        assertThat(crest.words()).hasValueSatisfying(box ->
            assertThat(sheet.spotAt(box.getCenterX(), box.getCenterY())).map(Spot::id).contains("crest"));
        assertThat(sheet.spotAt(-50, -50)).isEmpty();
    }

    @Test
    void namesLieOnNothingAndWithinTheSheet() {
        for (View view : View.values()) {
            for (double[] size : new double[][] {{90, 40}, {144, 52}, {150, 60}, {260, 90}, {100, 140}}) {
                LiveSheet sheet = LiveSample.sheet(sample, view, size[0], size[1]);
                List<Spot> named = sheet.spots().stream().filter(spot -> spot.words().isPresent() && spot.mark().isPresent()).toList();
                for (Spot one : named) {
                    var box = one.words().orElseThrow();
                    assertThat(box.getX()).isGreaterThanOrEqualTo(0);
                    assertThat(box.getMaxX()).isLessThanOrEqualTo(size[0]);
                    assertThat(box.getMaxY()).isLessThanOrEqualTo(size[1]);
                    for (Spot other : named) {
                        boolean sameDrawing = other != one && sheet.views().size() == 1;
                        assertThat(sameDrawing && box.intersects(other.words().orElseThrow())).as(view + " " + one.name() + ", " + other.name()).isFalse();
                        assertThat(sameDrawing && box.contains(other.mark().orElseThrow())).as(one.name() + " on " + other.name()).isFalse();
                    }
                }
            }
        }
    }

    @Test
    void theChosenPartIsNamedHoweverSmallTheSheet() {
        Showing showing = LiveSample.showing(sample, 0, 0);
        for (String id : List.of("fuelPump", "muffler", "strainer")) {
            var chosen = new Showing(showing.arrangement(), showing.attitude(), showing.about(), Optional.of(id), false, showing.figures(), showing.words());
            LiveSheet sheet = LiveSheet.of(chosen, View.SIDE, 90, 40, new TypewriterBoard(), Optional.empty(), false);
            var board = new TypewriterBoard();
            sheet.paint(board, Inks.PAPER, new Emphasis(Optional.of(id), false, Optional.empty()));
            assertThat(board.texts()).contains(Words.ENGLISH.get("short." + id));
        }
    }

    @Test
    void showsTwoDrawingsWhereThereIsRoom() {
        assertThat(LiveSample.sheet(sample, View.SIDE, 120, 50).views()).containsExactly(View.SIDE);
        assertThat(LiveSample.sheet(sample, View.CROSS, 240, 60).views()).containsExactly(View.SIDE, View.CROSS);
        assertThat(LiveSample.sheet(sample, View.RUNS, 100, 140).views()).containsExactly(View.SIDE, View.RUNS);
    }

    @Test
    void eachPartIsGoneThroughOnceThoughItIsDrawnTwice() {
        LiveSheet sheet = LiveSample.sheet(sample, View.SIDE, 260, 80);
        assertThat(sheet.spots()).extracting(Spot::id).doesNotHaveDuplicates().contains("siphonBreak", "fuelPump");
    }

    @Test
    void keepsWhatItShowsWhileAPartIsMoved() {
        CommissioningRecord record = LiveSample.twoPoints(0.5, -0.3);
        LiveSheet before = LiveSample.sheet(record, View.SIDE, 120, 60);
        double y = LiveSample.spot(before, "pickUp").mark().orElseThrow().getY();
        record.getRawWater().getSiphonBreak().setVentSeat(LiveSample.point(0, 0, 2.5));
        LiveSheet held = LiveSheet.of(LiveSample.showing(record, 0, 0), View.SIDE, 120, 60, new TypewriterBoard(), Optional.of(before), true);
        assertThat(LiveSample.spot(held, "pickUp").mark().orElseThrow().getY()).isEqualTo(y);
        LiveSheet let = LiveSheet.of(LiveSample.showing(record, 0, 0), View.SIDE, 120, 60, new TypewriterBoard(), Optional.of(held), false);
        assertThat(LiveSample.spot(let, "siphonBreak").mark().orElseThrow().getY()).as("the moved part is on the sheet again").isPositive();
    }

    @Test
    void anEmptyRecordGivesASketchWhereEveryPlaceLeadsToItsField() {
        CommissioningRecord empty = LiveSample.empty();
        for (View view : View.values()) {
            LiveSheet sheet = LiveSample.sheet(empty, view, 140, 60);
            assertThat(sheet.spots()).as(view.name()).isNotEmpty().allSatisfy(spot -> {
                assertThat(sheet.spotAt(spot.mark().orElseThrow().getX(), spot.mark().orElseThrow().getY())).isPresent();
                assertThat(RecordPath.reach(LiveSample.empty(), spot.field())).as(spot.field()).isPresent();
            });
            assertThat(sheet.inWords()).contains("only a sketch");
        }
        assertThat(LiveSample.sheet(empty, View.SIDE, 140, 60).spots()).extracting(Spot::id).contains("siphonBreak", "hull", "heel", "fuelTank");
    }

    @Test
    void saysWhatIsNotDrawnYet() {
        CommissioningRecord record = LiveSample.twoPoints(0.5, -0.3);
        record.getRawWater().getPickUp().getPosition().setX(null);
        LiveSheet sheet = LiveSample.sheet(record, View.SIDE, 140, 60);
        Spot lacking = LiveSample.spot(sheet, "pickUp");
        assertThat(lacking.mark()).isEmpty();
        assertThat(lacking.field()).isEqualTo("rawWater.pickUp.position.x");
        var board = new TypewriterBoard();
        sheet.paint(board, Inks.PAPER, Emphasis.NONE);
        assertThat(board.texts()).contains("Pick-up (x)");
    }

    @Test
    void writesTheHeightOfEachPointThatKeepsTheSeaOutInTheAttitudeShown() {
        CommissioningRecord record = LiveSample.twoPoints(1, -0.3);
        record.getRawWater().getSiphonBreak().setVentSeat(LiveSample.point(0, 0.6, 1));
        LiveSheet sheet = LiveSheet.of(LiveSample.showing(record, 30, 0), View.CROSS, 140, 60, new TypewriterBoard(), Optional.empty(), false);
        var board = new TypewriterBoard();
        sheet.paint(board, Inks.PAPER, Emphasis.NONE);
        // at 30 deg to starboard: 1 m x cos 30 - 0.6 m x sin 30 = 0.866 - 0.3 = 566 mm
        assertThat(board.texts()).contains("Siphon break 566 mm", "Above water, 30° heel to starboard:");
    }

    @Test
    void arrowsGoToTheNeighbourInTheirDirection() {
        LiveSheet sheet = LiveSample.sheet(LiveSample.twoPoints(0.7, -0.3), View.SIDE, 120, 60);
        Spot seat = LiveSample.spot(sheet, "siphonBreak");
        assertThat(sheet.beside(seat, 0, 1)).map(Spot::id).contains("pickUp");
        assertThat(sheet.beside(LiveSample.spot(sheet, "pickUp"), 0, -1)).map(Spot::id).contains("siphonBreak");
        assertThat(sheet.beside(seat, 0, -1)).isEmpty();
    }

    @Test
    void theClearancePlotGivesTheHeelThatStandsAtAPlace() {
        CommissioningRecord record = LiveSample.twoPoints(0.7, -0.3);
        LiveSheet sheet = LiveSample.sheet(record, View.CLEARANCE, 120, 60);
        double x = LiveSample.spot(sheet, "siphonBreak").mark().orElseThrow().getX();
        assertThat(sheet.heelAt(x, 30)).hasValueCloseTo(0.0, offset(1e-9)); // the mark stands at the heel that is shown
        assertThat(LiveSample.sheet(record, View.SIDE, 120, 60).heelAt(x, 30)).isEmpty();
    }

    @Test
    void showsTheRunOfTheCircuitThatThePersonWorksOn() {
        Showing showing = LiveSample.showing(sample, 0, 0);
        for (var circuit : List.of(PlacedPart.Circuit.RAW_WATER, PlacedPart.Circuit.EXHAUST)) {
            var about = new Showing(showing.arrangement(), showing.attitude(), Optional.of(circuit), Optional.empty(), false, showing.figures(), showing.words());
            LiveSheet runs = LiveSheet.of(about, View.RUNS, 120, 50, new TypewriterBoard(), Optional.empty(), false);
            assertThat(runs.inWords()).startsWith(circuit == PlacedPart.Circuit.RAW_WATER ? "Raw water: heights" : "Exhaust: heights");
        }
    }

    @Test
    void otherInksAreUsedThroughout() {
        LiveSheet sheet = LiveSample.sheet(sample, View.SIDE, 140, 60);
        var board = new TypewriterBoard();
        sheet.paint(board, ink -> 0x1000 + ink.ordinal(), new Emphasis(Optional.of("crest"), true, Optional.of("outlet")));
        assertThat(board.inks()).isNotEmpty().allMatch(rgb -> rgb >= 0x1000 && rgb < 0x1000 + Ink.values().length);
        assertThat(board.inks()).contains(0x1000 + Ink.CHOSEN.ordinal(), 0x1000 + Ink.FALLS_SHORT.ordinal());
    }

    @Test
    void staysCalmInAnySize() {
        for (View view : View.values()) {
            for (double[] size : new double[][] {{0.2, 0.2}, {5, 200}, {400, 3}, {30, 20}}) {
                LiveSample.sheet(sample, view, size[0], size[1]).paint(new TypewriterBoard(), Inks.PAPER, Emphasis.NONE);
                LiveSample.sheet(LiveSample.empty(), view, size[0], size[1]).paint(new TypewriterBoard(), Inks.PAPER, Emphasis.NONE);
            }
        }
    }
}

// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__LINES;

import java.util.List;
import java.util.Optional;

import garboard.checks.FeaturePath;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.CommissioningRecord;
import garboard.model.FuelLineRun;
import garboard.physics.fuel.FuelLine;
import garboard.physics.pipe.PipeRun;
import garboard.practice.Figures;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.VolumeFlow;

/** The lines from the tank to the pump, through which the fuel is sucked. */
final class SuctionLines {

    private SuctionLines() {
    }

    /** The suction lines of the record; to be gone on from with {@link FeaturePath#then}. Reads the function of each line. */
    static FeaturePath lines() {
        return path(FUEL_SUPPLY__LINES).where(FuelLineRun.class, SuctionLines::isSuction);
    }

    /** What {@link #lines()} decides by. */
    static FeaturePath function() {
        return path(FUEL_SUPPLY__LINES, FUEL_LINE_RUN__FUNCTION);
    }

    static boolean isSuction(FuelLineRun line) {
        return switch (line.getFunction()) {
            case TANK_TO_ENGINE, TANK_TO_SEPARATOR, SEPARATOR_TO_PUMP -> true;
            default -> false;
        };
    }

    static List<FuelLineRun> of(CommissioningRecord record) {
        return record.getFuelSupply().getLines().stream().filter(SuctionLines::isSuction).toList();
    }

    /** Drop of the pump's flow in all of them together, cold fuel. */
    static PressureDifference drop(Situation<?> s) {
        return dropWithBoresOfAtLeast(Length.of(0), s);
    }

    /** The same with every line of less than this bore replaced by one of this bore. */
    static PressureDifference dropWithBoresOfAtLeast(Length bore, Situation<?> s) {
        VolumeFlow flow = s.record().getFuelSupply().getPumpFlow();
        double sumPa = 0;
        for (FuelLineRun line : of(s.record())) {
            Length actual = line.getBore().isLessThan(bore) ? bore : line.getBore();
            sumPa += FuelLine.drop(PipeRun.ofBore(actual).withLength(line.getLength()), flow, FuelFigures.cold(s)).si();
        }
        return PressureDifference.of(sumPa);
    }

    /** The smallest hose bore with which the lines drop no more than this, and the lines to be widened to it. */
    static Optional<Remedy> widen(Situation<?> s, PressureDifference most) {
        return FuelHoseBore.all().stream().filter(bore -> !dropWithBoresOfAtLeast(bore, s).isMoreThan(most)).findFirst()
            .map(bore -> {
                Remedy remedy = Remedy.of("Fit lines of at least " + Figures.both(bore) + " bore from tank to pump: they drop "
                    + Figures.both(dropWithBoresOfAtLeast(bore, s)));
                for (FuelLineRun line : of(s.record())) {
                    if (line.getBore().isLessThan(bore)) {
                        remedy = remedy.setting(line, FUEL_LINE_RUN__BORE, bore);
                    }
                }
                return remedy;
            });
    }
}

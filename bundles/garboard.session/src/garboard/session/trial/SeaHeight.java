// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.checks.Limit;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustRun;
import garboard.model.Point;
import garboard.model.RawWaterCircuit;
import garboard.model.SeaRun;
import garboard.model.Trial;
import garboard.model.Vessel;
import garboard.physics.OutOfRangeException;
import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.geometry.HeeledHeight;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/**
 * How high a part that keeps the sea out stood above the water in the worst of the attitudes seen on the sea run: each heel with each trim, and
 * upright. The sinkage of the vessel counts where it is entered.
 *
 * @param part which one
 * @param atRest height above the loaded waterline, where it is entered
 * @param lowest lowest height and the attitude of it; nothing when the place or every angle is not entered
 * @param missing keys of the coordinates that are not entered
 */
public record SeaHeight(Part part, Optional<Length> atRest, Optional<HeeledHeight.HeightAt> lowest, List<String> missing) {

    /** What is looked at, with the key of its place. */
    public enum Part {
        SIPHON_BREAK("rawWater.siphonBreak.ventSeat", "SIPHON-HEIGHT-HEELED"), CREST("exhaust.crest.insideBottom", "EXHAUST-CREST-HEIGHT-HEELED"),
        OUTLET("exhaust.outlet.insideBottom", "EXHAUST-OUTLET-HEELED");

        private final String key;
        private final String check;

        Part(String key, String check) {
            this.key = key;
            this.check = check;
        }

        /** {@return the key of its place} */
        public String key() {
            return key;
        }

        private Optional<Point> place(CommissioningRecord record) {
            Optional<ExhaustRun> exhaust = Optional.ofNullable(record.getExhaust());
            return switch (this) {
                case SIPHON_BREAK -> Optional.ofNullable(record.getRawWater()).map(RawWaterCircuit::getSiphonBreak).map(found -> found.getVentSeat());
                case CREST -> exhaust.map(ExhaustRun::getCrest).map(found -> found.getInsideBottom());
                case OUTLET -> exhaust.map(ExhaustRun::getOutlet).map(found -> found.getInsideBottom());
            };
        }
    }

    /** {@return the height above the water that a check asks of the part in the attitude to design for, where it could tell one} */
    public Optional<Length> wanted(Evaluation evaluation) {
        return evaluation.verdicts().stream().filter(verdict -> verdict.check().id().equals(part.check)).map(Verdict::limit).flatMap(Optional::stream)
            .map(Limit::value).filter(Length.class::isInstance).map(Length.class::cast).findFirst();
    }

    public static List<SeaHeight> of(CommissioningRecord record) {
        List<Attitude> seen = seen(record);
        return List.of(of(Part.SIPHON_BREAK, record, seen), of(Part.CREST, record, seen), of(Part.OUTLET, record, seen));
    }

    /** {@return the attitudes that the boat was seen in, without any when no angle is entered} */
    static List<Attitude> seen(CommissioningRecord record) {
        Optional<SeaRun> run = Optional.ofNullable(record.getTrial()).map(Trial::getSeaRun);
        List<Angle> heels = angles(run.map(SeaRun::getHeelStarboard), run.map(SeaRun::getHeelPort));
        List<Angle> trims = angles(run.map(SeaRun::getTrimUp), run.map(SeaRun::getTrimDown));
        if (heels.size() + trims.size() == 2) {
            return List.of();
        }
        Length sinkage = Optional.ofNullable(record.getVessel()).map(Vessel::getSinkage).filter(rise -> rise.si() >= 0).orElse(Length.of(0));
        var attitudes = new ArrayList<Attitude>();
        try {
            heels.forEach(heel -> trims.forEach(trim -> attitudes.add(new Attitude(heel, trim, sinkage))));
        } catch (OutOfRangeException capsized) {
            return List.of(); // 260 degrees of heel: the field says so
        }
        return attitudes;
    }

    /** None, and one angle each way where it is entered. */
    private static List<Angle> angles(Optional<Angle> positive, Optional<Angle> negative) {
        var angles = new ArrayList<>(List.of(Angle.of(0)));
        positive.map(Angle::si).map(Math::abs).ifPresent(angle -> angles.add(Angle.of(angle)));
        negative.map(Angle::si).map(Math::abs).ifPresent(angle -> angles.add(Angle.of(-angle)));
        return angles;
    }

    private static SeaHeight of(Part part, CommissioningRecord record, List<Attitude> seen) {
        Optional<Point> place = part.place(record);
        var missing = new ArrayList<String>();
        note(place.map(Point::getX), part.key + ".x", missing);
        note(place.map(Point::getY), part.key + ".y", missing);
        note(place.map(Point::getZ), part.key + ".z", missing);
        Optional<HeeledHeight.HeightAt> lowest = missing.isEmpty() ? lowest(place.get(), seen) : Optional.empty();
        return new SeaHeight(part, place.map(Point::getZ), lowest, List.copyOf(missing));
    }

    private static Optional<HeeledHeight.HeightAt> lowest(Point place, List<Attitude> seen) {
        var point = new BoatPoint(place.getX(), place.getY(), place.getZ());
        return seen.stream().map(attitude -> new HeeledHeight.HeightAt(HeeledHeight.of(point, attitude), attitude))
            .min(Comparator.comparingDouble(found -> found.height().si()));
    }

    private static void note(Optional<Length> coordinate, String key, List<String> missing) {
        if (coordinate.isEmpty()) {
            missing.add(key);
        }
    }
}
